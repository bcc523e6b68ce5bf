using System.Collections.Immutable;
using RuleBook.Telling;
using RuleBook.Text;
using Spectre.Console;
using ConsoleText = Spectre.Console.Text;

namespace RuleBook.Cli.Answers;

/// <summary>
/// Headings and wrapped lines on a console of any width. All text is shown as it is, never as markup, and nothing in it acts.
/// </summary>
internal sealed class Page(IAnsiConsole console) : AnswerPage
{
    private static readonly Style Strong = new(decoration: Decoration.Bold);
    private static readonly Style Quiet = new(decoration: Decoration.Dim);

    /// <summary>Writes an answer to a console, as <see cref="Answer"/> asks for it.</summary>
    public static string? Write(IAnsiConsole console, Action<AnswerPage> write)
    {
        write(new Page(console));
        return null;
    }

    public int Width => console.Profile.Width;

    public override void Title(string text, VerdictColour colour = VerdictColour.None) =>
        Title(
            text,
            colour switch
            {
                VerdictColour.Free => Color.Green,
                VerdictColour.Certified => Color.Blue,
                VerdictColour.Prohibited => Color.Red,
                VerdictColour.Open => Color.Yellow,
                _ => null,
            }
        );

    public override void Table(ImmutableArray<string> columns, IEnumerable<ImmutableArray<string>> rows, int numbersFrom = int.MaxValue)
    {
        var table = new Table { Border = TableBorder.Simple, Expand = false };
        for (var i = 0; i < columns.Length; i++)
        {
            var column = new TableColumn(new ConsoleText(Visible.Of(columns[i])));
            table.AddColumn(i >= numbersFrom ? column.RightAligned() : column);
        }

        foreach (var row in rows)
            table.AddRow(row.Select(cell => new ConsoleText(Visible.Of(cell))));
        console.Write(table);
    }

    public void Title(string text, Color? colour) =>
        console.Write(new ConsoleText(Visible.Of(text) + "\n", new Style(colour, decoration: Decoration.Bold)));

    public override void Heading(string text)
    {
        console.WriteLine();
        console.Write(new ConsoleText(Visible.Of(text) + "\n", Strong));
    }

    public override void Line(string text) => console.Write(new ConsoleText(Visible.Of(text) + "\n"));

    public override void Row(string label, string text, int width = 13)
    {
        var grid = new Grid { Expand = false };
        grid.AddColumn(
            new GridColumn
            {
                Padding = new Padding(0),
                Width = width,
                NoWrap = true,
            }
        );
        grid.AddColumn(new GridColumn { Padding = new Padding(0) });
        grid.AddRow(new ConsoleText(Visible.Of(label), Strong), new ConsoleText(Visible.Of(text)));
        console.Write(grid);
    }

    /// <summary>A line with a mark before it; later lines hang under the text.</summary>
    public override void Item(string text, string mark = "-", int depth = 1) => Hang(text, mark, depth, Style.Plain);

    /// <summary>As an item, less loud.</summary>
    public override void Aside(string text, int depth = 2) => Hang(text, "", depth, Quiet);

    /// <summary>A job as YAML, line for line.</summary>
    public void Lines(string yaml, int depth)
    {
        foreach (var line in yaml.TrimEnd('\n').Split('\n'))
            Hang(line, "", depth, Quiet);
    }

    public void Write(Spectre.Console.Rendering.IRenderable thing) => console.Write(thing);

    private void Hang(string text, string mark, int depth, Style style)
    {
        var indent = Math.Min(2 * depth, Math.Max(0, Width / 8));
        var grid = new Grid { Expand = false };
        var before = indent + (mark.Length > 0 ? mark.Length + 1 : 0);
        grid.AddColumn(
            new GridColumn
            {
                Padding = new Padding(0),
                Width = before,
                NoWrap = true,
            }
        );
        grid.AddColumn(new GridColumn { Padding = new Padding(0) });
        grid.AddRow(new ConsoleText(new string(' ', indent) + mark, style), new ConsoleText(Visible.Of(text), style));
        console.Write(grid);
    }
}
