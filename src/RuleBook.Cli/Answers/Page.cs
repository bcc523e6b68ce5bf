using Spectre.Console;

namespace RuleBook.Cli.Answers;

/// <summary>Headings and wrapped lines on a console of any width. All text is shown as it is, never as markup.</summary>
internal sealed class Page(IAnsiConsole console)
{
    private static readonly Style Strong = new(decoration: Decoration.Bold);
    private static readonly Style Quiet = new(decoration: Decoration.Dim);

    public int Width => console.Profile.Width;

    public void Title(string text, Color? colour = null) => console.Write(new Text(text + "\n", new Style(colour, decoration: Decoration.Bold)));

    public void Heading(string text)
    {
        console.WriteLine();
        console.Write(new Text(text + "\n", Strong));
    }

    public void Line(string text) => console.Write(new Text(text + "\n"));

    /// <summary>A line with a mark before it; later lines hang under the text.</summary>
    public void Item(string text, string mark = "-", int depth = 1) => Hang(text, mark, depth, Style.Plain);

    /// <summary>As an item, less loud.</summary>
    public void Aside(string text, int depth = 2) => Hang(text, "", depth, Quiet);

    public void Write(Spectre.Console.Rendering.IRenderable thing) => console.Write(thing);

    private void Hang(string text, string mark, int depth, Style style)
    {
        var indent = Math.Min(2 * depth, Math.Max(0, Width / 8));
        var grid = new Grid { Expand = false };
        var before = indent + (mark.Length > 0 ? mark.Length + 1 : 0);
        grid.AddColumn(new GridColumn { Padding = new Padding(0), Width = before, NoWrap = true });
        grid.AddColumn(new GridColumn { Padding = new Padding(0) });
        grid.AddRow(new Text(new string(' ', indent) + mark, style), new Text(text, style));
        console.Write(grid);
    }
}
