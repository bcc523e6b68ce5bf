namespace RuleBook.Site.Forms;

/// <summary>A part of the form for a job.</summary>
/// <param name="Title">What it asks for.</param>
/// <param name="Open">Always in sight; others are opened by whoever needs them.</param>
/// <param name="Note">What to know before filling it in; empty for nothing.</param>
/// <param name="Items">In the order in which they are asked for.</param>
internal sealed record FormPart(string Title, bool Open, string Note, FormItem[] Items);

/// <summary>One of the four: a field, rows to add to, a grid, or a part inside.</summary>
internal sealed record FormItem(FormField? Field = null, FormRows? Rows = null, FormGrid? Grid = null, FormPart? Part = null);

/// <summary>Where one value is typed or chosen.</summary>
/// <param name="Path">
/// Where it stands in the job; in a column of rows, the key in each row, which may be empty where a row is one text.
/// </param>
/// <param name="Label">What a reader calls it.</param>
/// <param name="Input">text, day, when (a day, month or year as text), tyre, amount or choice.</param>
/// <param name="Unit">The unit of an amount that is typed as a bare number.</param>
/// <param name="Hint">An example.</param>
/// <param name="Choices">What may be chosen, in groups; a group without a name stands by itself.</param>
/// <param name="Empty">What choosing nothing means.</param>
/// <param name="Url">To its definition; empty for none.</param>
internal sealed record FormField(
    string Path,
    string Label,
    string Input,
    string Unit,
    string Hint,
    ChoiceGroup[] Choices,
    string Empty,
    string Url
)
{
    /// <summary>The label with the unit: <c>mass, kg</c>.</summary>
    public string Full => Unit.Length == 0 ? Label : $"{Label}, {Unit}";
}

/// <summary>Some of what may be chosen.</summary>
internal sealed record ChoiceGroup(string Name, Choice[] Choices);

/// <summary>One thing that may be chosen.</summary>
internal sealed record Choice(string Value, string Text);

/// <summary>A list of the job, to which rows are added.</summary>
/// <param name="Path">Where the list stands in the job.</param>
/// <param name="Label">What its rows are together.</param>
/// <param name="One">What one row is.</param>
/// <param name="Start">How many empty rows stand ready.</param>
/// <param name="Note">What to know; empty for nothing.</param>
/// <param name="Columns">The fields of a row.</param>
internal sealed record FormRows(string Path, string Label, string One, int Start, string Note, FormField[] Columns);

/// <summary>The same values for several things, side by side.</summary>
internal sealed record FormGrid(string Label, string Note, string[] Columns, FormGridRow[] Rows);

/// <summary>A value for each of the columns.</summary>
internal sealed record FormGridRow(string Label, string Unit, FormField[] Cells);
