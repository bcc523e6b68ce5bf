using System.Text;
using System.Text.Encodings.Web;
using System.Text.Unicode;

namespace RuleBook.Telling.Sheets;

/// <summary>Writes HTML; whatever is text is escaped.</summary>
internal sealed class Markup
{
    private static readonly HtmlEncoder Escape = HtmlEncoder.Create(UnicodeRanges.All);

    private readonly StringBuilder text = new();

    /// <summary>Markup that the code has, as it is.</summary>
    public Markup Raw(string markup)
    {
        text.Append(markup).Append('\n');
        return this;
    }

    /// <summary>An element with text in it.</summary>
    /// <param name="tag">Its name, with attributes that the code has.</param>
    /// <param name="content">The text.</param>
    public Markup Element(string tag, string content)
    {
        text.Append(Written(tag, content)).Append('\n');
        return this;
    }

    /// <summary>A list; nothing where it would be empty.</summary>
    public Markup List(IEnumerable<string> items, string list = "ul")
    {
        string[] all = [.. items];
        if (all.Length == 0)
            return this;
        Raw($"<{list}>");
        foreach (var each in all)
            Element("li", each);
        return Raw("</ul>");
    }

    /// <summary>A table with a head that print repeats.</summary>
    public Markup Table(string table, string[] columns, IEnumerable<(string Row, string[] Cells)> rows)
    {
        Raw($"<{table}>")
            .Raw($"<thead><tr>{string.Concat(columns.Select(column => Written("th scope=\"col\"", column)))}</tr></thead>")
            .Raw("<tbody>");
        foreach (var (row, cells) in rows)
            Raw($"<{row}>{string.Concat(cells)}</tr>");
        return Raw("</tbody>").Raw("</table>");
    }

    public override string ToString() => text.ToString();

    /// <summary>An element as text.</summary>
    public static string Written(string tag, string content) => $"<{tag}>{Escape.Encode(content)}</{tag.Split(' ')[0]}>";
}
