using System.Collections.Immutable;
using Fractions;
using RuleBook.Facts;
using RuleBook.Jobs;
using RuleBook.Law;
using RuleBook.Physics.Tyres;
using RuleBook.Tables;

namespace RuleBook.Answers;

/// <summary>
/// Finds exactly how far a measure may go: between two edges of the rules' limits nothing changes, so the edges and one witness between
/// each two stand for every value from zero up, and from zero down where a measure may be negative.
/// </summary>
internal static class Margins
{
    /// <summary>The measures that are looked at.</summary>
    public static ImmutableArray<string> Measures { get; } = [KnownWords.SuspensionLift, KnownWords.BodyLift, FactSet.TyreGrowth];

    private static readonly ImmutableArray<string> Growths =
    [
        FactSet.TyreGrowth,
        FactSet.TyreLift,
        KnownWords.TyreGrowthPercent,
        KnownWords.TyreReduction,
        KnownWords.TyreReductionPercent,
    ];

    /// <summary>How far one measure may go, by the rules of the topics that it touches; null where the book has no such measure.</summary>
    /// <param name="book">The book.</param>
    /// <param name="job">The job.</param>
    /// <param name="place">The jurisdiction that decides.</param>
    /// <param name="measure">One of <see cref="Measures"/>.</param>
    public static Margin? Of(Book book, Job job, Jurisdiction place, string measure)
    {
        if (!book.Vocabulary.Measures.TryGetValue(measure, out var known))
            return null;
        var judged = Judgement.About(book, job, place, DiameterBasis.Handbook, measure);
        var facts = judged.Facts;
        var shares = GrowthShares.Of(job, DiameterBasis.Handbook);
        var free = Without(facts, measure);
        ImmutableArray<Fraction> edges =
        [
            .. judged.Edges(free).Select(edge => InTermsOf(measure, edge.Measure, edge.Value, shares)).OfType<Fraction>().Distinct(),
        ];
        var open = new HashSet<string>(StringComparer.Ordinal);
        ImmutableArray<PathwayReach> Towards(int sign)
        {
            ImmutableArray<Fraction> passed = [.. edges.Select(edge => sign * edge).Where(edge => edge.IsPositive).Order()];
            FactSet[] tried = [.. Witnesses(passed).Select(value => With(free, measure, sign * value, shares))];
            Outcome[] outcomes = [.. tried.Select(judged.With)];
            foreach (var undecided in tried.Where((_, at) => !outcomes[at].Decided))
                open.UnionWith(judged.Open(undecided).Where(each => each.Kind != OpeningKind.Version).Select(each => each.Name));
            return
            [
                .. new[] { Pathway.NoCertificate, Pathway.Certificate, Pathway.Approval }.Select(pathway => new PathwayReach(
                    pathway,
                    Upto(passed, outcomes, outcome => outcome.Worst <= pathway),
                    Upto(passed, outcomes, outcome => outcome.Best <= pathway)
                )),
            ];
        }

        return new Margin(known, facts.Measure(measure, FactSet.PartsOf(null)).Exact, Towards(1))
        {
            Downward = known.BelowZero == BelowZero.Stated ? Towards(-1) : [],
            Open = [.. open],
        };
    }

    /// <summary>Zero, then by turns a point inside each stretch and the edge that ends it, then a point beyond the last edge.</summary>
    private static IEnumerable<Fraction> Witnesses(ImmutableArray<Fraction> edges)
    {
        yield return Fraction.Zero;
        for (var i = 0; i < edges.Length; i++)
        {
            yield return ((i == 0 ? Fraction.Zero : edges[i - 1]) + edges[i]) / 2;
            yield return edges[i];
        }

        yield return (edges.IsEmpty ? Fraction.Zero : edges[^1]) + 1;
    }

    private static Reach Upto(ImmutableArray<Fraction> edges, Outcome[] outcomes, Func<Outcome, bool> within)
    {
        var held = outcomes.TakeWhile(within).Count();
        if (held == 0)
            return Reach.None;
        if (held == outcomes.Length)
            return Reach.Unlimited;
        var last = held - 1;
        return last % 2 == 0
            ? new Reach(ReachKind.UpTo, last == 0 ? Fraction.Zero : edges[(last / 2) - 1], true)
            : new Reach(ReachKind.UpTo, edges[last / 2], false);
    }

    private static FactSet Without(FactSet facts, string measure) => facts.Without(measure == FactSet.TyreGrowth ? Growths : [measure]);

    private static FactSet With(FactSet facts, string measure, Fraction value, GrowthShares? shares)
    {
        var known = facts.With(measure, value, "tried");
        if (measure != FactSet.TyreGrowth)
            return known;
        if (shares is not null)
            return shares.From(value).Aggregate(known, (all, each) => all.With(each.Measure, each.Value, "tried"));
        return value.IsZero ? Growths.Skip(2).Aggregate(known, (all, name) => all.With(name, Fraction.Zero, "tried")) : known;
    }

    /// <summary>The value of the measure at which another one that follows from it reaches its edge.</summary>
    private static Fraction? InTermsOf(string measure, string of, Fraction edge, GrowthShares? shares) =>
        of == measure ? edge
        : measure == FactSet.TyreGrowth ? shares?.GrowthAt(of, edge)
        : null;
}
