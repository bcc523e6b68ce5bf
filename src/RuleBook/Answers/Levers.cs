using System.Collections.Immutable;
using System.Globalization;
using System.Numerics;
using Fractions;
using RuleBook.Facts;
using RuleBook.Jobs;
using RuleBook.Law;
using RuleBook.Physics.Masses;
using RuleBook.Text;
using RuleBook.Units;

namespace RuleBook.Answers;

/// <summary>
/// The changes that could mend a job, of each lever the least first. Each is tried afterwards: nothing here promises anything.
/// </summary>
internal sealed class Levers(Book book, Job job, Jurisdiction place, Assessment now)
{
    private const string Accessories = "modification.accessories";

    private const int MostItems = 12;

    /// <summary>How far inside an open end a figure is proposed, mm: what the trade reads on a tape.</summary>
    private static readonly Fraction Inside = 1;

    private static readonly Unit Mm = Unit.Base(Dimension.Length);
    private static readonly Unit Kg = Unit.Base(Dimension.Mass);

    private Mapping Written => job.Written!;

    /// <summary>Every change, lever by lever, each lever's least first.</summary>
    public IEnumerable<RemedyChange> All() =>
        Lifts(KnownWords.SuspensionLift, RemedyLever.SuspensionLift)
            .Concat(Lifts(KnownWords.BodyLift, RemedyLever.BodyLift))
            .Concat(Lifts(FactSet.TyreGrowth, RemedyLever.Tyres))
            .Concat(Tyres())
            .Concat(ConstantLoads())
            .Concat(Gvm())
            .Concat(LeftOff())
            .Concat(Trailer())
            .Concat(BallLoad())
            .Concat(Days());

    /// <summary>Exactly to the ends of what a pathway allows, then to nothing.</summary>
    private IEnumerable<RemedyChange> Lifts(string measure, RemedyLever lever)
    {
        if (!job.Measures.TryGetValue(measure, out var stated) || stated.Base.IsZero)
            return [];
        var path = book.Vocabulary.Measures[measure].Job;
        if (Margins.Of(book, job, place, measure) is not { } margin)
            return [];
        var sign = stated.Base.IsNegative ? -1 : 1;
        return (sign < 0 ? margin.Downward : margin.Reaches)
            .Where(reach => reach.Certain is { Kind: ReachKind.UpTo })
            .Select(reach => reach.Certain.Closed ? reach.Certain.Value!.Value : reach.Certain.Value!.Value - Inside)
            .Append(Fraction.Zero)
            .Where(value => !value.IsNegative && value < stated.Base.Abs())
            .Distinct()
            .OrderByDescending(value => value)
            .Select(value => Setting(lever, path, stated.ToString(), Text(sign * value, Mm, down: true), stated.Base.Abs() - value, Mm));
    }

    /// <summary>
    /// The placard's sizes, then the listed ones for the rims at hand; those nearest to the tyre planned first. Where the tyre planned has
    /// a load index, a listed size gets that of the placard's strongest tyre: one that carries less is no remedy.
    /// </summary>
    private IEnumerable<RemedyChange> Tyres()
    {
        if (
            job.FittedTyre is not { } fitted
            || Written.Find("modification") is not Mapping modification
            || modification.Find("tyres") is not Scalar typed
        )
            return [];
        var now = Physics.Tyres.TyreGrowth.Of(fitted, job.PlacardTyres, Physics.Tyres.DiameterBasis.Handbook).Growth.Amount;
        var strongest = fitted.LoadIndex is null ? null : job.PlacardTyres.MaxBy(size => size.LoadIndex?.Kilograms ?? Fraction.Zero);
        var service = strongest?.ToString()[strongest.Designation.Length..] ?? "";
        return SizeFits
            .Of(book, job, place)
            .Where(fit => fit.SameRim && fit.Growth.Growth.Amount <= now)
            .Select(fit => (fit.Growth, Size: Placard(fit.Size) ?? fit.Size.Designation + service))
            .Where(fit => fit.Size != fitted.ToString())
            .OrderBy(fit => now - fit.Growth.Growth.Amount)
            .Select(fit => Setting(RemedyLever.Tyres, "modification.tyres", typed.Text, fit.Size, now - fit.Growth.Growth.Amount, Mm));

        string? Placard(Physics.Tyres.TyreSize size) =>
            job.PlacardTyres.FirstOrDefault(each => each.Designation == size.Designation)?.ToString();
    }

    /// <summary>Over each axle that the springs raise, as much as the prediction with its uncertainty asks for.</summary>
    private IEnumerable<RemedyChange> ConstantLoads()
    {
        if (now.Heights is not { } heights || job.Plan.WheelbaseMm is not { } wheelbase)
            yield break;
        foreach (var axle in heights.Predicted)
        foreach (var need in axle.Needs.OrderByDescending(need => need.LimitMm))
        {
            if (axle.Lift.MassToComeDownTo(need.LimitMm - axle.UncertaintyMm) is not { IsPositive: true } least)
                continue;
            var mass = Up(least);
            var at = axle.Lift.Axle == Axle.Front ? Fraction.Zero : wheelbase;
            yield return new RemedyChange(
                RemedyLever.ConstantLoad,
                Accessories,
                null,
                Text(mass, Kg),
                [axle.Lift.Axle == Axle.Front ? "front axle" : "rear axle"],
                mass,
                Kg
            )
            {
                Apply = written => WithItems(written, items => items.Add(Item(Text(mass, Kg), Text(at, Mm)))),
            };
        }
    }

    /// <summary>The least that carries the job; or, where more was asked for than axles and tyres carry, what they carry.</summary>
    private IEnumerable<RemedyChange> Gvm()
    {
        const string path = "modification.ratings.gvm";
        Blocker[] ofGvm = [.. now.Blockers.Where(blocker => blocker.Subject == KnownWords.Gvm)];
        var (asked, stated) = (job.Plan.Rerated?.GvmKg, job.Plan.Ratings.GvmKg);
        var needed = ofGvm.Where(blocker => blocker.Kind is BlockerKind.OverRating or BlockerKind.RefusedRating).ToArray();
        var from = (asked ?? stated) is { } kg ? Text(kg, Kg) : null;
        if (needed.Length > 0 && !needed.Any(blocker => blocker.AtLeast))
        {
            var to = Up(needed.Max(blocker => blocker.Value!.Value));
            yield return Setting(RemedyLever.Gvm, path, from, Text(to, Kg), (to - (stated ?? to)).Abs(), Kg);
        }

        if (ofGvm.FirstOrDefault(blocker => blocker.Kind == BlockerKind.NotCertifiable) is { Limit: { } most })
            yield return Setting(RemedyLever.Gvm, path, from, Text(Down(most), Kg), (asked - Down(most))?.Abs(), Kg);
    }

    /// <summary>
    /// The fewest accessories, then the least mass; what has no mass is never left off, for nobody knows what that would save.
    /// </summary>
    private IEnumerable<RemedyChange> LeftOff()
    {
        Blocker[] over = [.. now.Blockers.Where(blocker => blocker.Kind is BlockerKind.OverRating or BlockerKind.RefusedRating)];
        if (over.Length == 0)
            return [];
        var least = over.Where(blocker => blocker.Subject == KnownWords.Gvm)
            .Select(blocker => blocker.Over!.Value)
            .DefaultIfEmpty(Fraction.Zero)
            .Max();
        MassItem[] items =
        [
            .. job
                .Plan.Items.Where(item =>
                    item.Path.StartsWith(Accessories + "[", StringComparison.Ordinal) && item.MassKg is { IsPositive: true }
                )
                .OrderByDescending(item => item.MassKg)
                .Take(MostItems),
        ];
        return Sets(items)
            .Select(set => (set, mass: set.Aggregate(Fraction.Zero, (sum, item) => sum + item.MassKg!.Value)))
            .Where(each => each.mass >= least)
            .OrderBy(each => each.set.Length)
            .ThenBy(each => each.mass)
            .Select(each => new RemedyChange(
                RemedyLever.Accessories,
                Accessories,
                null,
                null,
                [.. each.set.Select(item => item.Name)],
                each.mass,
                Kg
            )
            {
                Apply = written =>
                    WithItems(
                        written,
                        items =>
                            [
                                .. items.Where(
                                    (_, at) =>
                                        !each.set.Any(item =>
                                            item.Path == string.Create(CultureInfo.InvariantCulture, $"{Accessories}[{at}]")
                                        )
                                ),
                            ]
                    ),
            });
    }

    private static IEnumerable<MassItem[]> Sets(MassItem[] items)
    {
        for (var first = 0; first < items.Length; first++)
        {
            yield return [items[first]];
            for (var second = first + 1; second < items.Length; second++)
            {
                yield return [items[first], items[second]];
                for (var third = second + 1; third < items.Length; third++)
                    yield return [items[first], items[second], items[third]];
            }
        }
    }

    private IEnumerable<RemedyChange> Trailer()
    {
        if (
            !job.Measures.TryGetValue(KnownWords.TrailerMass, out var mass)
            || Written.Find("trailer") is not Mapping trailer
            || trailer.Find("mass") is not Scalar typed
        )
            yield break;
        var over = now
            .Blockers.Where(blocker => LoadSubjects.OfTrailer.Contains(blocker.Subject) && blocker.Over is not null)
            .Select(blocker => blocker.Over!.Value)
            .DefaultIfEmpty(Fraction.Zero)
            .Max();
        var to = Down(mass.Base - over);
        if (over.IsPositive && to.IsPositive)
            yield return Setting(RemedyLever.Trailer, "trailer.mass", typed.Text, Text(to, Kg), mass.Base - to, Kg);
    }

    /// <summary>On the ball one kilogram loads the rear axle with more than one: the lever of the overhang is counted.</summary>
    private IEnumerable<RemedyChange> BallLoad()
    {
        if (
            Written.Find("trailer") is not Mapping trailer
            || trailer.Find("ball-load") is not Scalar typed
            || job.Plan.Trailer?.BallKg is not { } ball
        )
            yield break;
        var share = job.Plan is { WheelbaseMm: { } wheelbase, BallBehindRearAxleMm: { } arm }
            ? wheelbase / (wheelbase + arm)
            : Fraction.One;
        var over = now
            .Blockers.Where(blocker =>
                LoadSubjects.OfBall.Contains(blocker.Subject) && blocker.State is "planned" or "weighed" && blocker.Over is not null
            )
            .Select(blocker =>
                blocker.Subject.StartsWith(KnownWords.RearAxle, StringComparison.Ordinal)
                    ? blocker.Over!.Value * share
                    : blocker.Over!.Value
            )
            .DefaultIfEmpty(Fraction.Zero)
            .Max();
        var to = Down(ball - over);
        if (over.IsPositive && !to.IsNegative)
            yield return Setting(RemedyLever.BallLoad, "trailer.ball-load", typed.Text, Text(to, Kg), ball - to, Kg);
    }

    /// <summary>The days to come on which a version of a rule of the place begins.</summary>
    private IEnumerable<RemedyChange> Days() =>
        place
            .Rules.SelectMany(rule => rule.Versions)
            .Select(version => version.From?.Latest)
            .OfType<DateOnly>()
            .Where(day => day > now.On)
            .Distinct()
            .Order()
            .Select(day => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture))
            .Select(day => new RemedyChange(
                RemedyLever.Day,
                "on",
                now.On.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture),
                day,
                [],
                null,
                null
            )
            {
                Apply = written => NodeEdit.Set(NodeEdit.Remove(written, "dates"), "on", day),
            });

    private static RemedyChange Setting(RemedyLever lever, string path, string? from, string to, Fraction? cost, Unit unit) =>
        new(lever, path, from, to, [], cost, unit) { Apply = written => NodeEdit.Set(written, path, to) };

    private static Mapping WithItems(Mapping written, Func<ImmutableArray<Node>, ImmutableArray<Node>> change)
    {
        var modification = written.Find("modification") as Mapping ?? new Mapping([], written.Mark);
        var items = modification.Find("accessories") as Sequence ?? new Sequence([], written.Mark);
        return Put(written, "modification", Put(modification, "accessories", items with { Items = change(items.Items) }));
    }

    private static Mapping Put(Mapping at, string key, Node value)
    {
        var entry = KeyValuePair.Create(new Scalar(key, value.Mark), value);
        return at.Find(key) is null
            ? at with
            {
                Entries = at.Entries.Add(entry),
            }
            : at with
            {
                Entries = [.. at.Entries.Select(each => each.Key.Text == key ? entry : each)],
            };
    }

    private static Mapping Item(string mass, string behind)
    {
        var mark = new Mark("remedy", 1, 1);
        KeyValuePair<Scalar, Node> Entry(string key, string text) => new(new Scalar(key, mark), new Scalar(text, mark));
        return new Mapping([Entry("name", "constant load"), Entry("mass", mass), Entry("behind-front-axle", behind)], mark);
    }

    /// <summary>As it would be typed: exact where it has few decimals, otherwise the next figure inside.</summary>
    private static string Text(Fraction value, Unit unit, bool down = false)
    {
        var shown = Numbers.Show(value);
        return down && Fraction.FromDecimal(decimal.Parse(shown, CultureInfo.InvariantCulture)).Abs() > value.Abs()
            ? $"{Numbers.Show(new Fraction(BigInteger.Divide((value * 1000).Numerator, (value * 1000).Denominator)) / 1000)} {unit.Symbol}"
            : $"{shown} {unit.Symbol}";
    }

    private static Fraction Up(Fraction value) => -Down(-value);

    private static Fraction Down(Fraction value) =>
        new(BigInteger.DivRem(value.Numerator, value.Denominator, out var rest) - (rest.Sign < 0 ? 1 : 0));
}
