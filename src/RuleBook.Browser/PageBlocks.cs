using System.Collections.Immutable;
using RuleBook.Telling;

namespace RuleBook.Browser;

/// <summary>One piece of an answer: title, heading, line, row (its label as the mark), item, aside or table.</summary>
internal sealed record Block(
    string Kind,
    string Text,
    string Mark,
    int Depth,
    ImmutableArray<string> Columns,
    ImmutableArray<ImmutableArray<string>> Rows,
    int NumbersFrom
)
{
    public static Block Of(string kind, string text, string mark = "", int depth = 0) => new(kind, text, mark, depth, [], [], int.MaxValue);
}

/// <summary>Collects an answer as blocks for the page to show.</summary>
internal sealed class PageBlocks : AnswerPage
{
    public List<Block> Blocks { get; } = [];

    public override void Title(string text, VerdictColour colour = VerdictColour.None) => Blocks.Add(Block.Of("title", text));

    public override void Heading(string text) => Blocks.Add(Block.Of("heading", text));

    public override void Line(string text) => Blocks.Add(Block.Of("line", text));

    public override void Row(string label, string text, int width = 13) => Blocks.Add(Block.Of("row", text, label.TrimStart()));

    public override void Item(string text, string mark = "-", int depth = 1) => Blocks.Add(Block.Of("item", text, mark.Trim(), depth));

    public override void Aside(string text, int depth = 2) => Blocks.Add(Block.Of("aside", text, "", depth));

    public override void Table(ImmutableArray<string> columns, IEnumerable<ImmutableArray<string>> rows, int numbersFrom = int.MaxValue) =>
        Blocks.Add(new Block("table", "", "", 0, columns, [.. rows], numbersFrom));
}
