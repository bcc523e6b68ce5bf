using System.Buffers;
using System.Text;
using System.Text.Json;
using RuleBook.Text;

namespace RuleBook.Browser;

/// <summary>What the evaluator tells the page.</summary>
internal static class PageJson
{
    /// <summary>The most problems that the page lists.</summary>
    private const int MostProblems = 100;

    /// <summary>An answer, or the problems of the job, or <c>{ "failure" }</c>: whatever happens, the page is told.</summary>
    public static string Whole(string job, Func<string> answer)
    {
        try
        {
            return answer();
        }
        catch (InputException refused)
        {
            return Problems(JsonPaths.Placed(job, refused.Problems));
        }
        catch (Exception failure)
        {
            return Write(json => json.WriteString("failure", $"{failure.GetType().Name}: {failure.Message}"));
        }
    }

    public static string Of(PageBlocks page) => Write(json => Write(json, page));

    public static void Write(Utf8JsonWriter json, PageBlocks page)
    {
        json.WriteStartArray("blocks");
        foreach (var block in page.Blocks)
            Write(json, block);
        json.WriteEndArray();
    }

    public static string Problems(IReadOnlyList<Problem> problems) =>
        Write(json =>
        {
            json.WriteNumber("unlisted", Math.Max(0, problems.Count - MostProblems));
            json.WriteStartArray("problems");
            foreach (var problem in problems.Take(MostProblems))
            {
                json.WriteStartObject();
                json.WriteString("at", problem.Mark.File);
                json.WriteString("text", problem.Text);
                json.WriteString("tip", problem.Tip);
                json.WriteEndObject();
            }

            json.WriteEndArray();
        });

    private static void Write(Utf8JsonWriter json, Block block)
    {
        json.WriteStartObject();
        json.WriteString("kind", block.Kind);
        json.WriteString("text", block.Text);
        json.WriteString("mark", block.Mark);
        json.WriteNumber("depth", block.Depth);
        if (block.Kind == "table")
        {
            json.WriteNumber("numbers-from", block.NumbersFrom);
            json.WriteStartArray("columns");
            foreach (var column in block.Columns)
                json.WriteStringValue(column);
            json.WriteEndArray();
            json.WriteStartArray("rows");
            foreach (var row in block.Rows)
            {
                json.WriteStartArray();
                foreach (var cell in row)
                    json.WriteStringValue(cell);
                json.WriteEndArray();
            }

            json.WriteEndArray();
        }

        json.WriteEndObject();
    }

    public static string Write(Action<Utf8JsonWriter> write)
    {
        var buffer = new ArrayBufferWriter<byte>();
        using (var json = new Utf8JsonWriter(buffer))
        {
            json.WriteStartObject();
            write(json);
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(buffer.WrittenSpan);
    }
}
