namespace RuleBook.Law;

/// <summary>
/// A measure as a share of another one, where a rule bounds it so: <c>{ share: 60 %, of: wheelbase }</c>. It is a measure of its own, in
/// per cent; two measures that a rule compares are a share of 100 %.
/// </summary>
/// <param name="Part">The measure that is bounded.</param>
/// <param name="Whole">The measure of which it is a share.</param>
internal sealed record MeasureShare(string Part, string Whole)
{
    /// <summary>The name of the measure: <c>rear-overhang-per-wheelbase</c>.</summary>
    public string Name => $"{Part}-per-{Whole}";
}
