using RuleBook.Site.Forms;

namespace RuleBook.Site.Tests.Forms;

/// <summary>The form of the check page for the invented book, as its description and the vocabulary have it.</summary>
public sealed class InventedFormTests
{
    /// <summary>By hand from <c>site-templates/form.json</c>: of the two places only the north registers vehicles.</summary>
    [Fact]
    public void The_first_part_asks_where_and_when() =>
        string.Join('\n', Lines(FormReader.Read(InventedBook.Site)[0]))
            .ShouldBe(
                """
                Where and when, open
                job: job number or name, text; not known
                registered-in: registered in, choice; The nation: xa-n The north; choose
                on: as on the day, day; not known
                Different days for work, certification and inspection: Given instead of the one day above.
                dates.work: work, day; not known -> words.html#measure.altered
                dates.certification: certification, day; not known
                dates.inspection: inspection, day; not known
                Certifier, and where the vehicle is driven
                certifier.name: certifier, text; not known
                certifier.appointed-in, 0 of appointment: Where the certifier is appointed
                - : appointed in, choice; The nation: xa-n The north; choose
                held, 0 of paper: Papers held already: From here or from before a move. None makes the verdict easier.
                - paper: what it is called, text; not known
                - issued-in: issued in, choice; The nation: xa-n The north; choose
                - number: number, text; not known
                - day: day, month or year, text; not known
                - codes: modification code, text; not known
                travels-through, 0 of state driven through: Driven through
                - : driven through, choice; The nation: xa-n The north; choose
                """
            );

    /// <summary>Titles, values and units of the vocabulary; each leads to its definition.</summary>
    [Theory]
    [InlineData("vehicle.four-wheel-drive: four-wheel drive, choice; : yes yes, no no; not known -> words.html#fact.four-wheel-drive")]
    [InlineData("modification.suspension-lift: suspension lift, mm, amount;  -> words.html#measure.suspension-lift")]
    [InlineData(
        "shown.lane-change-test: lane-change test passed, choice; : yes met, no not met; to be shown -> "
            + "words.html#condition.lane-change-test"
    )]
    [InlineData("vehicle.tyres, 1 of placard size: Tyre sizes on the placard")]
    [InlineData("- : size, tyre, 265/65R17 112S; not known")]
    [InlineData("vehicle.ratings.gvm: GVM, maker's, kg, amount; not known -> words.html#measure.gvm")]
    [InlineData("measured.after.mass-state: mass state, after, choice; : tare tare, unladen unladen, loaded loaded; choose")]
    public void What_the_book_has_a_word_for_is_asked_for_in_its_words(string line) =>
        FormReader.Read(InventedBook.Site).SelectMany(Lines).ShouldContain(line);

    private static IEnumerable<string> Lines(FormPart part) =>
        part
            .Items.SelectMany(item =>
                item switch
                {
                    { Field: { } field } => [Line(field)],
                    { Rows: { } rows } =>
                    [
                        $"{rows.Path}, {rows.Start} of {rows.One}: {rows.Label}{Note(rows.Note)}",
                        .. rows.Columns.Select(column => $"- {Line(column)}"),
                    ],
                    { Grid: { } grid } => grid.Rows.SelectMany(row => row.Cells).Select(Line),
                    { Part: { } inner } => Lines(inner),
                    _ => Array.Empty<string>(),
                }
            )
            .Prepend($"{part.Title}{(part.Open ? ", open" : "")}{Note(part.Note)}");

    private static string Line(FormField field) =>
        $"{field.Path}: {field.Full}, {field.Input}{(field.Hint.Length > 0 ? ", " : "")}{field.Hint}; "
        + string.Concat(
            field.Choices.Select(group => $"{group.Name}: {string.Join(", ", group.Choices.Select(each => $"{each.Value} {each.Text}"))}; ")
        )
        + field.Empty
        + (field.Url.Length > 0 ? $" -> {field.Url}" : "");

    private static string Note(string note) => note.Length > 0 ? $": {note}" : "";
}
