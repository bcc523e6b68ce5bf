using System.Collections.Immutable;
using Fractions;
using RuleBook.InForce;
using RuleBook.Law;

namespace RuleBook.Authoring.Walk;

/// <summary>
/// Everything that can be asked of some versions on one day: words by class, a grid of measures, conditions shown or not.
/// </summary>
internal sealed class Space
{
    private readonly string jurisdiction;
    private readonly DateOnly day;

    public Space(
        Vocabulary vocabulary,
        string jurisdiction,
        DateOnly day,
        IReadOnlyList<ResolvedVersion> versions,
        Func<Axes, SumRange?>? within = null
    )
    {
        this.jurisdiction = jurisdiction;
        this.day = day;
        Axes = Axes.Of(versions, vocabulary);
        var grid = new Grid(Axes);
        Words = [.. WordClasses.Of(versions, vocabulary)];
        Conditions =
        [
            .. versions
                .SelectMany(version => version.Content is Stated stated ? stated.Tiers.SelectMany(tier => tier.Provided) : [])
                .Distinct()
                .Order(StringComparer.Ordinal),
        ];
        var possible = TyreSense.Possible(Axes);
        Points = [.. grid.Points(within?.Invoke(Axes)).Where(point => possible(point))];
    }

    public Axes Axes { get; }

    public ImmutableArray<ImmutableDictionary<string, string>> Words { get; }

    public ImmutableArray<string> Conditions { get; }

    public ImmutableArray<Fraction[]> Points { get; }

    /// <summary>
    /// By axis and point, the index behind the last of the points that have the same value on this and every earlier axis.
    /// </summary>
    public int[][] Alike()
    {
        int[][] ends = [.. Axes.Measures.Select(_ => new int[Points.Length])];
        for (var i = Points.Length - 1; i >= 0; i--)
        {
            var same = i + 1 < Points.Length;
            for (var axis = 0; axis < ends.Length; axis++)
            {
                same = same && Points[i][axis] == Points[i + 1][axis];
                ends[axis][i] = same ? ends[axis][i + 1] : i + 1;
            }
        }

        return ends;
    }

    public Witness Witness(ImmutableDictionary<string, string> words, Fraction[] point, params ImmutableArray<string> notShown) =>
        new(jurisdiction, day, words, [.. point.Select((value, axis) => KeyValuePair.Create(Axes.Measures[axis], value))], notShown);
}
