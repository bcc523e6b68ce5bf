using System.Collections.Immutable;
using Fractions;
using RuleBook.Facts;
using RuleBook.Jobs;
using RuleBook.Law;
using RuleBook.Physics.Tyres;
using RuleBook.Tables;

namespace RuleBook.Answers;

/// <summary>
/// Tells which jobs get the same answer. Jobs that differ only in plain measures, which nothing but the rules reads, are one to the law as
/// long as every such measure and every sum that it is part of lies in the same cell; only what is left to the limits differs, and
/// <see cref="Tightest"/> tells that.
/// </summary>
internal sealed class SameCells
{
    private readonly FactSet facts;
    private readonly ImmutableArray<string> measures;
    private readonly ImmutableArray<Place> places;

    private SameCells(FactSet facts, ImmutableArray<string> measures, ImmutableArray<Place> places) =>
        (this.facts, this.measures, this.places) = (facts, measures, places);

    /// <summary>
    /// Whether nothing but the rules reads a measure: it is stated as such, no mass, height or tyre is computed from it, and no condition
    /// fails by it.
    /// </summary>
    public static bool IsPlain(Measure measure, Vocabulary vocabulary) =>
        measure is { IsDate: false, IsDerived: false, InShares: false }
        && measure.Job.Split('.') is ["modification" or "measured", _]
        && !KnownWords.ComputedFrom.Contains(measure.Name)
        && !VocabularyIndex.Of(vocabulary).Decided.Any(condition => condition.FailsOver?.Measure == measure.Name);

    /// <summary>The jobs like this one.</summary>
    /// <param name="book">The book.</param>
    /// <param name="job">One of them.</param>
    /// <param name="measures">The measures in which they differ: plain ones, each stated by the job.</param>
    /// <returns>Null where their answers may differ though all cells are the same.</returns>
    public static SameCells? Of(Book book, Job job, ImmutableArray<string> measures)
    {
        if (
            job.Plan is { TellsLift: true } or { WheelOffset: not null }
            || !job.TravelsThrough.IsEmpty
            || book.Jurisdiction(job.RegisteredIn) is not { } place
        )
            return null;
        var tables = TableBook.Of(book);
        var judged = new Judgement(book, job, place, DiameterBasis.Handbook);
        // Where the basis of tyre diameters turns the answer, that is told too.
        var byNominal = JobFacts.Of(job, book.Vocabulary, job.Dates.For(place.DecidedBy), DiameterBasis.Nominal);
        var places = ImmutableArray.CreateBuilder<Place>();
        var keys = (UInt128)1;
        foreach (
            var table in (DecisionTable[])
                [judged.Table, tables.OfUse(place, false, place, job.Dates), tables.OfUse(place, true, place, job.Dates)]
        )
        {
            // The version to come has cells of its own.
            if (table.InForce.SelectMany(rule => rule.Candidates).Any(version => Cautions.LooksAhead(version, place)))
                return null;
            var (row, nominal) = (table.NewRow(), table.NewRow());
            row.Set(judged.Facts);
            nominal.Set(byNominal);
            foreach (var axis in table.Axes)
            {
                var (terms, rest) = Terms(axis, row, measures);
                if (terms.IsEmpty)
                    continue;
                var nominalRest = Terms(axis, nominal, measures).Fixed;
                if (!rest.IsExact || !nominalRest.IsExact)
                    return null;
                var turns = rest.Low!.Value.CompareTo(nominalRest.Low!.Value) != 0;
                foreach (var each in turns ? (ReadOnlySpan<Exact>)[rest.Low.Value, nominalRest.Low.Value] : [rest.Low.Value])
                {
                    if (keys > UInt128.MaxValue / (UInt128)axis.Cells)
                        return null;
                    keys *= (UInt128)axis.Cells;
                    places.Add(new Place(axis, each, terms));
                }
            }
        }

        return new SameCells(judged.Facts, measures, places.ToImmutable());
    }

    /// <summary>The same in whole numbers; null where something does not lie on their grid.</summary>
    public GridCells? OnGrid() => GridCells.Of(facts, measures, places.Select(place => (place.Axis, place.Rest, place.Terms)));

    /// <summary>The cells in which the values lie, as one number: the same number, the same answer.</summary>
    /// <param name="values">A value in base units for each measure, in their order.</param>
    public UInt128 Key(ReadOnlySpan<Fraction> values)
    {
        var key = UInt128.Zero;
        foreach (var place in places)
        {
            var value = place.Rest;
            foreach (var (at, factor) in place.Terms)
                value += Exact.Of(values[at]) * factor;
            key = key * (UInt128)place.Axis.Cells + (UInt128)place.Axis.Place(value);
        }

        return key;
    }

    /// <summary>The limit to which one of the jobs comes nearest; null where there is none.</summary>
    /// <param name="limits">The limits of a job in the same cells, with what their versions count towards a total.</param>
    /// <param name="values">A value in base units for each measure, in their order.</param>
    public LimitCheck? Tightest(IEnumerable<(LimitCheck Check, ImmutableArray<string> Parts)> limits, ReadOnlySpan<Fraction> values)
    {
        var known = facts;
        for (var at = 0; at < measures.Length; at++)
            known = known.With(measures[at], values[at], "");
        return TightestLimits
            .Of(limits.Select(limit => limit.Check with { Value = known.Measure(limit.Check.Measure.Name, limit.Parts) }))
            .FirstOrDefault();
    }

    /// <summary>The measures that bear on an axis, and what else is added up on it.</summary>
    private static (ImmutableArray<(int At, Exact Factor)> Parts, ExactRange Fixed) Terms(
        Axis axis,
        Row row,
        ImmutableArray<string> measures
    )
    {
        var (terms, rest) = (ImmutableArray.CreateBuilder<(int, Exact)>(), new ExactRange(new Exact(0)));
        Add(axis.Sum, new Exact(1), row, measures, terms, ref rest);
        return (terms.ToImmutable(), rest);
    }

    private static void Add(
        MeasureSum sum,
        Exact factor,
        Row row,
        ImmutableArray<string> measures,
        ImmutableArray<(int, Exact)>.Builder terms,
        ref ExactRange rest
    )
    {
        if (measures.IndexOf(sum.Name) is >= 0 and var at)
            terms.Add((at, factor));
        else if (sum.Terms.Length == 0 || row.IsStated(sum))
            rest += row.Known(sum) * factor;
        else
            foreach (var term in sum.Terms)
                Add(term.Part, term.Factor * factor, row, measures, terms, ref rest);
    }

    /// <summary>An axis on which the measures bear.</summary>
    private readonly record struct Place(Axis Axis, Exact Rest, ImmutableArray<(int At, Exact Factor)> Terms);
}
