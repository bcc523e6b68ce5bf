using System.Buffers;
using System.Globalization;
using System.Text;
using System.Text.Json;
using RuleBook.Text;

namespace RuleBook.Cli.Fleets;

/// <summary>Rows with their answers as text: CSV with the columns appended, or NDJSON with the job and the answer side by side.</summary>
/// <param name="columns">The columns; null of NDJSON.</param>
/// <param name="against">Whether the verdict of an earlier book is appended too.</param>
internal sealed class FleetWriter(FleetColumns? columns, bool against)
{
    public const string LineEnd = "\r\n";

    /// <summary>The header; empty of NDJSON.</summary>
    public string Header =>
        columns is null ? "" : Csv.Row([.. columns.Header, .. Answered.Columns, .. against ? [Answered.Before] : Array.Empty<string>()]);

    /// <summary>A row, and how many of its cells a spreadsheet would have run.</summary>
    /// <param name="row">The row.</param>
    /// <param name="answer">Its answer.</param>
    /// <param name="before">That of an earlier book; null where none is asked, or it could not read the row.</param>
    public (string Text, int Defused) Row(FleetRow row, Answered answer, Answered? before)
    {
        if (columns is null)
            return ($"{{\"job\":{row.Cells[0].Trim()},\"answer\":{Json(answer, before)}}}\n", 0);
        return (
            string.Concat(string.Join(',', row.Cells.Select(Csv.Cell)), ",", End(answer, before)),
            row.Cells.Count(IsDefused) + answer.Defused
        );
    }

    private string End(Answered answer, Answered? before) =>
        against ? $"{answer.Line},{before?.Verdict ?? FleetEffect.Unreadable}{LineEnd}" : answer.Line + LineEnd;

    /// <summary>The header of what could not be read.</summary>
    public static string RejectedHeader => Csv.Row(["row", "line", "column", "header", "reason", "tip"]);

    /// <summary>Why a row could not be read.</summary>
    public string Rejected(FleetRow row, Problem wrong) =>
        Csv.Row([
            Figure(row.Number),
            Figure(row.Line),
            Figure(wrong.Mark.Column),
            columns is not null && wrong.Mark.Column <= columns.Header.Length ? columns.Header[wrong.Mark.Column - 1] : "",
            wrong.Text,
            wrong.Tip,
        ]);

    /// <summary>Whether a spreadsheet would have run the cell.</summary>
    public static bool IsDefused(string cell) => cell.Length > 0 && cell[0] != '\'' && Csv.Cell(cell).TrimStart('"') is ['\'', ..];

    private string Json(Answered answer, Answered? before)
    {
        var buffer = new ArrayBufferWriter<byte>();
        using (var json = new Utf8JsonWriter(buffer))
        {
            json.WriteStartObject();
            for (var at = 0; at < Answered.Columns.Length; at++)
                json.WriteString(Answered.Columns[at], answer.Cells[at]);
            if (against)
                json.WriteString(Answered.Before, before?.Verdict ?? FleetEffect.Unreadable);
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(buffer.WrittenSpan);
    }

    private static string Figure(long number) => number.ToString(CultureInfo.InvariantCulture);
}
