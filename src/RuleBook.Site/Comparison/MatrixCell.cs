namespace RuleBook.Site.Comparison;

/// <summary>One line of a cell: one alternative, or one answer.</summary>
/// <param name="Kind">limit, none, not-established, not-regulated, or the pathway's word where a pathway is the answer.</param>
/// <param name="Name">Letter and name of the alternative; empty where there is only one.</param>
/// <param name="Text">What it says.</param>
/// <param name="When">What must be so beside; empty where nothing must.</param>
internal sealed record MatrixLine(string Kind, string Name, string Text, string When)
{
    public static MatrixLine NotEstablished { get; } = new("not-established", "", "not established", "");

    /// <summary>An answer in words, or that it is not established.</summary>
    public static MatrixLine Of(string? text) => string.IsNullOrEmpty(text) ? NotEstablished : new MatrixLine("limit", "", text, "");
}

/// <summary>A state's answer to a question.</summary>
/// <param name="Lines">At least one.</param>
/// <param name="Standing">How it is known, in three words; empty where nothing is said that could be known.</param>
/// <param name="Where">The name of the view of its clause; empty where it leads to <paramref name="Url"/> instead.</param>
/// <param name="Url">To what it stands on.</param>
internal sealed record MatrixCell(MatrixLine[] Lines, string Standing, string Where, string Url)
{
    /// <summary>Whether it says nothing but that nobody has established it.</summary>
    public bool Open => Lines is [var line] && line == MatrixLine.NotEstablished && Standing.Length == 0 && Where.Length == 0;

    /// <summary>The same for two cells that read the same.</summary>
    public string Text { get; } =
        string.Join('\n', [.. Lines.Select(line => string.Join('\t', line.Kind, line.Name, line.Text, line.When)), Standing, Where, Url]);
}

/// <summary>A question: a column.</summary>
internal sealed record Question(string Id, string Title);

/// <summary>A rule of a state before some of the vehicles: a row.</summary>
/// <param name="Place">Id of the state.</param>
/// <param name="Name">Its name.</param>
/// <param name="Url">To its page.</param>
/// <param name="About">What the rule is on; empty where there is none.</param>
/// <param name="Vehicles">Which of the vehicles it is for, by their places in the list with a space between two; <c>*</c> for all.</param>
/// <param name="Cells">In the order of the questions.</param>
internal sealed record MatrixRow(string Place, string Name, string Url, string About, string Vehicles, MatrixCell[] Cells)
{
    /// <summary>Whether it is for the vehicle that a page shows first.</summary>
    public bool First { get; init; }
}

/// <summary>A topic: questions by states.</summary>
internal sealed record Matrix(string Id, string Title, string Url, Question[] Questions, MatrixRow[] Rows);
