using RuleBook.Authoring.Inspecting;
using RuleBook.Authoring.Packing;
using RuleBook.Authoring.Records;
using RuleBook.Jobs;
using RuleBook.Jobs.Reading;
using RuleBook.Law;
using RuleBook.Text;
using RuleBook.Yaml;

namespace RuleBook.Cli.Commands;

/// <summary>Opens the book and the job that a command is given.</summary>
internal static class Inputs
{
    /// <summary>The folder of the book: as given, or the nearest one upward from here or from the command.</summary>
    /// <exception cref="InputException">There is none.</exception>
    public static string BookFolder(string? given, Surroundings surroundings) =>
        Paths.Given("--book", given)
        ?? Found(surroundings)
        ?? throw new InputException(
            Problem.Error("not-a-book", new Mark(surroundings.Folder, 1, 1), "no book is here or above", "name its folder with --book")
        );

    /// <summary>
    /// The book: a packed file, or a folder. The command's own packed book stands for the folder it was packed from while nothing there has
    /// changed.
    /// </summary>
    /// <exception cref="InputException">It has errors; all of them are listed.</exception>
    public static Book Book(string? given, Surroundings surroundings)
    {
        Paths.Given("--book", given);
        if (File.Exists(given))
            return PackedBook.Read(Bytes(given), given).Open();
        var packed = OwnPacked();
        if (packed is not null && given is null && Found(surroundings) is null)
            return packed.OpenOwn();
        var folder = Authoring.Books.BookFolder.Load(BookFolder(given, surroundings));
        return packed?.Digest == folder.Digest && folder.Problems.IsEmpty ? packed.OpenOwn() : BookReading.Open(folder);
    }

    /// <summary>A packed book's bytes, no more of them than a book may have.</summary>
    internal static byte[] Bytes(string file) =>
        new FileInfo(file).Length <= Authoring.Books.BookFolder.MostBytes
            ? File.ReadAllBytes(file)
            : throw new InputException(
                Problem.Error(
                    "too-large",
                    new Mark(file, 1, 1),
                    "the file is larger than any book",
                    "check that this is the file you meant"
                )
            );

    /// <summary>The book that was packed when the command was built; null where there is none.</summary>
    private static PackedBook? OwnPacked()
    {
        var file = Path.Combine(AppContext.BaseDirectory, "book" + PackedBook.Extension);
        return File.Exists(file) ? PackedBook.Read(File.ReadAllBytes(file), file) : null;
    }

    /// <summary>A kept answer.</summary>
    /// <exception cref="InputException">It is none, or of a newer format.</exception>
    public static SavedRecord Record(string path) => SavedRecord.Read(YamlText.FileText(Paths.Given("RECORD", path)!, path), path);

    /// <summary>The job with the changes asked for.</summary>
    /// <exception cref="InputException">It cannot be read; every problem is listed.</exception>
    public static Job Job(string path, Book book, string? on, IReadOnlyList<string> changes, Surroundings surroundings) =>
        JobReader.Read(JobNode(path, on, changes, surroundings), book);

    /// <summary>The same as it is typed, with the changes asked for and the day on which it is asked.</summary>
    /// <exception cref="InputException">It is no job.</exception>
    public static Mapping JobNode(string path, string? on, IReadOnlyList<string> changes, Surroundings surroundings)
    {
        Paths.Given("JOB", path);
        var node = path == "-" ? YamlText.Read(Console.OpenStandardInput(), "standard input") : YamlText.ReadFile(path);
        if (node is not Mapping root)
            throw new InputException(
                Problem.Error("wrong-shape", node.Mark, "a job is keys with values", "start with 'registered-in:' and 'vehicle:'")
            );
        foreach (var change in changes)
        {
            var at = change.IndexOf('=', StringComparison.Ordinal);
            if (at < 1)
                throw new InputException(
                    Problem.Error(
                        "wrong-shape",
                        new Mark("--set", 1, 1),
                        $"'{change}' is not PATH=VALUE",
                        "write --set vehicle.stability-control=no"
                    )
                );
            root = NodeEdit.Set(root, change[..at], change[(at + 1)..]);
        }

        if (Choices.Day("--on", on) is { } day)
            return SavedRecord.AsOn(root, day);
        return root.Find("on") is null && root.Find("dates") is null ? SavedRecord.AsOn(root, surroundings.Today) : root;
    }

    private static string? Found(Surroundings surroundings) =>
        Upward(surroundings.Folder)
            .Concat(Upward(AppContext.BaseDirectory))
            .FirstOrDefault(folder => Directory.Exists(Path.Combine(folder, "jurisdictions")));

    private static IEnumerable<string> Upward(string from)
    {
        for (var folder = new DirectoryInfo(from); folder is not null; folder = folder.Parent)
            yield return folder.FullName;
    }
}
