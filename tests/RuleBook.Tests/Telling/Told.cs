using System.Collections.Immutable;
using RuleBook.Telling;

namespace RuleBook.Tests.Telling;

/// <summary>Keeps what is told, a line each: headings end with a colon, a row is its label, a bar and its text.</summary>
internal sealed class Told : AnswerPage
{
    public List<string> Lines { get; } = [];

    public override void Title(string text, VerdictColour colour = VerdictColour.None) => Lines.Add(text);

    public override void Heading(string text) => Lines.Add(text + ":");

    public override void Line(string text) => Lines.Add(text);

    public override void Row(string label, string text, int width = 13) => Lines.Add($"{label}|{text}");

    public override void Item(string text, string mark = "-", int depth = 1) => Lines.Add($"{mark} {text}");

    public override void Aside(string text, int depth = 2) => Lines.Add(text);

    public override void Table(ImmutableArray<string> columns, IEnumerable<ImmutableArray<string>> rows, int numbersFrom = int.MaxValue) =>
        Lines.AddRange(rows.Prepend(columns).Select(row => string.Join("|", row)));
}
