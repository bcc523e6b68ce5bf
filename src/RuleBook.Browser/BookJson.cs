using System.Text;
using System.Text.Json;
using RuleBook.Law;
using RuleBook.Law.Reading;
using RuleBook.Text;

namespace RuleBook.Browser;

/// <summary>Reads a book from the JSON that the site carries: its digest, and the nodes of its files.</summary>
internal static class BookJson
{
    /// <exception cref="InputException">It is not a sound book.</exception>
    public static Book Read(string json)
    {
        var files = new List<BookFile>();
        var digest = "";
        var reader = new Utf8JsonReader(Encoding.UTF8.GetBytes(json), new JsonReaderOptions { MaxDepth = 80 });
        reader.Read();
        while (reader.Read() && reader.TokenType == JsonTokenType.PropertyName)
        {
            var key = reader.GetString()!;
            reader.Read();
            if (key == "digest")
                digest = reader.GetString()!;
            else
                while (reader.Read() && reader.TokenType == JsonTokenType.PropertyName)
                    files.Add(File(ref reader));
        }

        var problems = new List<Problem>();
        var book = BookReader.Read(files, digest, problems);
        return problems.Exists(problem => problem.Severity == Severity.Error) ? throw new InputException(problems) : book;
    }

    private static BookFile File(ref Utf8JsonReader reader)
    {
        var path = reader.GetString()!;
        reader.Read();
        return new BookFile(path, JsonNodes.Read(ref reader, path));
    }
}
