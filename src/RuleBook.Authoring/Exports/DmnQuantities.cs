using System.Collections.Immutable;
using System.Globalization;
using RuleBook.Law;
using RuleBook.Tables;

namespace RuleBook.Authoring.Exports;

/// <summary>A quantity that follows from others unless it is stated, as an expression of FEEL.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Text">The expression.</param>
/// <param name="Reads">The names that it reads.</param>
internal sealed record DmnExpression(string Name, string Text, ImmutableArray<string> Reads);

/// <summary>
/// What is known of each measure, from <c>low</c> to <c>high</c>: as it is stated, or added up from its parts, or what the category says of
/// a GVM.
/// </summary>
internal static class DmnQuantities
{
    /// <summary>As many decimals as half of an exported number has; engines that reckon in binary are brought back to it.</summary>
    private const int Places = Decimals.Places + 1;

    public static ImmutableArray<string> Ends { get; } = ["low", "high"];

    /// <summary>The name by which a table reads one end of a quantity.</summary>
    public static string Reference(DecisionTable table, MeasureSum sum, string end) =>
        $"{(Follows(table, sum) ? "known_" : "")}{DmnTable.Name(sum.Name)}_{end}";

    /// <summary>The expressions of a quantity and of all that it is added up from, both ends of each.</summary>
    public static IEnumerable<DmnExpression> Of(DecisionTable table, MeasureSum sum) =>
        Follows(table, sum) ? [.. sum.Terms.SelectMany(term => Of(table, term.Part)), .. Ends.Select(end => Of(table, sum, end))] : [];

    private static bool Follows(DecisionTable table, MeasureSum sum) => sum.Terms.Length > 0 || table.MeasureOf(sum.Slot) == KnownWords.Gvm;

    private static DmnExpression Of(DecisionTable table, MeasureSum sum, string end)
    {
        var stated = DmnTable.Name(table.MeasureOf(sum.Slot));
        var (text, reads) = sum.Terms.Length > 0 ? Sum(table, sum, end) : Implied(table.Vocabulary, end);
        return new DmnExpression(
            Reference(table, sum, end),
            $"if {stated}_low = null and {stated}_high = null then {text} else {stated}_{end}",
            [$"{stated}_low", $"{stated}_high", .. reads]
        );
    }

    private static (string Text, IEnumerable<string> Reads) Sum(DecisionTable table, MeasureSum sum, string end)
    {
        string[] reads = [.. sum.Terms.Select(term => Reference(table, term.Part, end))];
        var parts = sum.Terms.Zip(reads, (term, read) => term.Factor.Value == 1 ? read : $"{Decimals.Of(term.Factor.Value)} * {read}");
        var missing = string.Join(" or ", reads.Select(read => $"{read} = null"));
        return (
            string.Create(CultureInfo.InvariantCulture, $"(if {missing} then null else decimal({string.Join(" + ", parts)}, {Places}))"),
            reads
        );
    }

    private static (string Text, IEnumerable<string> Reads) Implied(Vocabulary vocabulary, string end)
    {
        var category = DmnTable.Name(KnownWords.Category);
        var words =
            from pair in vocabulary.CategoryGvms.OrderBy(pair => pair.Key, StringComparer.Ordinal)
            let bound = end == "high" ? pair.Value.AtMost
            : pair.Value.Over is { } over ? over + 1
            : null // a rating is whole kilograms
            where bound is not null
            select $"if {category} = \"{pair.Key}\" then {Decimals.Of(bound.Value)} else ";
        return ($"({string.Concat(words)}null)", [category]);
    }
}
