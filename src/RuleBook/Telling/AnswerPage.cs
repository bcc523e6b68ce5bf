using System.Collections.Immutable;

namespace RuleBook.Telling;

/// <summary>
/// Where an answer is written: a console, a web page. Text is shown as it is, never as markup, so that every writer says the same
/// sentences.
/// </summary>
public abstract class AnswerPage
{
    /// <summary>The first line; <paramref name="colour"/> may support the words and never replaces them.</summary>
    public abstract void Title(string text, VerdictColour colour = VerdictColour.None);

    /// <summary>A heading.</summary>
    public abstract void Heading(string text);

    /// <summary>A line of its own.</summary>
    public abstract void Line(string text);

    /// <summary>A line with a label before it, the texts of all rows under each other.</summary>
    /// <param name="label">The label.</param>
    /// <param name="text">What is said of it.</param>
    /// <param name="width">Columns that labels take where letters stand in columns.</param>
    public virtual void Row(string label, string text, int width = 13) => Item($"{label.TrimStart()}: {text}", "", 0);

    /// <summary>A line with a mark before it: <c>ok</c>, <c>x</c>, <c>?</c>, <c>!</c>, <c>-</c>, a box to tick, or none.</summary>
    public abstract void Item(string text, string mark = "-", int depth = 1);

    /// <summary>As an item, less loud.</summary>
    public abstract void Aside(string text, int depth = 2);

    /// <summary>A table; every row has as many cells as there are columns.</summary>
    /// <param name="columns">Headings.</param>
    /// <param name="rows">In order.</param>
    /// <param name="numbersFrom">Index of the first column that is set to the right; none unless given.</param>
    public abstract void Table(ImmutableArray<string> columns, IEnumerable<ImmutableArray<string>> rows, int numbersFrom = int.MaxValue);
}

/// <summary>The colour that stands beside a verdict's words.</summary>
public enum VerdictColour
{
    /// <summary>None.</summary>
    None,

    /// <summary>Allowed without a certificate.</summary>
    Free,

    /// <summary>Allowed with a certificate or an approval.</summary>
    Certified,

    /// <summary>Not allowed.</summary>
    Prohibited,

    /// <summary>Undecided.</summary>
    Open,
}
