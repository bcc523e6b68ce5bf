using System.Numerics;
using RuleBook.Law;
using RuleBook.Units;

namespace RuleBook.Tables;

public sealed partial class DecisionTable
{
    /// <summary>
    /// The pathways possible for what is known, without allocating once rows have lain in the same cells: one where all is known that the
    /// rules ask for and established what they say, otherwise from the best to the worst. Topics that the row does not touch are not
    /// judged.
    /// </summary>
    /// <param name="row">A row of this table.</param>
    public Outcome Judge(Row row)
    {
        var cells = row.Cells;
        var (touched, verdict) = (row.Touched, Free);
        for (var left = touched.Topics; left != 0; left &= left - 1)
            verdict = verdict.And(LookUp(BitOperations.TrailingZeroCount(left), cells, touched.Own));
        return verdict;
    }

    /// <summary>As <see cref="Judge(Row)"/>, on topics chosen.</summary>
    internal Outcome Judge(ReadOnlySpan<ulong> row, Touched touched)
    {
        var watch = default(NoWatch);
        return Judge(row, touched, ref watch);
    }

    internal Outcome Judge<TWatch>(ReadOnlySpan<ulong> row, Touched touched, ref TWatch watch)
        where TWatch : struct, IWatch, allows ref struct
    {
        var verdict = Free;
        for (var left = touched.Topics; left != 0; left &= left - 1)
            verdict = verdict.And(JudgeTopic(BitOperations.TrailingZeroCount(left), row, touched.Own, ref watch));
        return verdict;
    }

    /// <summary>What a topic gives, looked up where a row has lain in the same cells before.</summary>
    private Outcome LookUp(int topic, ReadOnlySpan<ulong> row, ulong own)
    {
        var verdicts = verdictsOfTopic[topic] ??= new VerdictsByCell(TestsOn(topic), everything);
        var (at, watch) = (verdicts.IndexOf(row), default(NoWatch));
        if (at < 0)
            return JudgeTopic(topic, row, own, ref watch);
        ref var known = ref verdicts.Known[at];
        if (known == 0)
            known = (byte)(JudgeTopic(topic, row, own, ref watch).Pack() | VerdictsByCell.Judged);
        return Outcome.Unpack(known);
    }

    private Outcome JudgeTopic<TWatch>(int topic, ReadOnlySpan<ulong> row, ulong own, ref TWatch watch)
        where TWatch : struct, IWatch, allows ref struct
    {
        var verdict = Free;
        ref readonly var line = ref topics[topic];
        var (may, must) = TWatch.Watches ? (ulong.MaxValue, 0) : line.Bind(row);
        var (bound, unmet) = (false, own & ownOfTopic[topic]);
        for (var i = 0; i < line.Rules.Length; i++)
        {
            var told = i < TopicLine.Told;
            if (told && (may >> i & 1) == 0)
                continue;
            ref readonly var rule = ref rules[line.Rules[i]];
            var result =
                told && (must >> i & 1) != 0 && rule.VersionColumn == 0
                    ? Bound(rule.FirstVersion, row, ref watch)
                    : Judge(in rule, row, ref watch);
            if (result.Binds == Truth.No)
                continue;
            bound |= result.Binds == Truth.Yes;
            unmet &= ~result.Speaks;
            verdict = verdict.And(result.Outcome);
        }

        return bound && unmet == 0 ? verdict : verdict.And(Outcome.Open);
    }

    /// <summary>What one rule gives.</summary>
    /// <param name="rule">Index of the rule in <see cref="RuleIds"/>.</param>
    /// <param name="row">A row of this table.</param>
    /// <exception cref="IndexOutOfRangeException">The table has no such rule.</exception>
    public RuleResult Judge(int rule, Row row) => Judge(rule, row.Cells);

    internal RuleResult Judge(int rule, ReadOnlySpan<ulong> row)
    {
        var watch = default(NoWatch);
        return Judge(in rules[rule], row, ref watch);
    }

    /// <summary>What one rule gives, and what it hangs on.</summary>
    internal RuleResult Judge<TWatch>(int rule, ReadOnlySpan<ulong> row, ref TWatch watch)
        where TWatch : struct, IWatch, allows ref struct => Judge(in rules[rule], row, ref watch);

    private RuleResult Judge<TWatch>(ref readonly RuleLine rule, ReadOnlySpan<ulong> row, ref TWatch watch)
        where TWatch : struct, IWatch, allows ref struct
    {
        var possible = rule.VersionColumn == 0 ? 1 : row[rule.VersionColumn];
        if (TWatch.Watches && !BitOperations.IsPow2(possible))
            watch.Add(rule.VersionColumn);
        var (binds, speaks) = (Truth.No, 0ul);
        for (var left = possible; left != 0; left &= left - 1)
        {
            ref readonly var version = ref versions[rule.FirstVersion + BitOperations.TrailingZeroCount(left)];
            var own = Binds(in version, row);
            if (own > binds)
                binds = own;
            if (own == Truth.Unknown)
                TellBinding(in version, row, ref watch);
            speaks |= version.Speaks;
        }

        if (binds == Truth.No)
            return new RuleResult(Truth.No, Free);
        var outcome = default(Outcome);
        for (var left = possible; left != 0; left &= left - 1)
        {
            var given = JudgeVersion(rule.FirstVersion + BitOperations.TrailingZeroCount(left), row, ref watch);
            outcome = left == possible ? given : outcome.Or(given);
        }

        return binds == Truth.Yes ? new RuleResult(binds, outcome) { Speaks = speaks } : new RuleResult(binds, outcome.Or(Free));
    }

    /// <summary>What a rule with one version gives where it is known to bind.</summary>
    private RuleResult Bound<TWatch>(int version, ReadOnlySpan<ulong> row, ref TWatch watch)
        where TWatch : struct, IWatch, allows ref struct =>
        new(Truth.Yes, JudgeVersion(version, row, ref watch)) { Speaks = versions[version].Speaks };

    /// <summary>
    /// The pathways that a version can give. Where nobody has established what holds beyond the tiers, it is more onerous than those
    /// exceeded, but never for that alone prohibited.
    /// </summary>
    internal Outcome JudgeVersion<TWatch>(int at, ReadOnlySpan<ulong> row, ref TWatch watch)
        where TWatch : struct, IWatch, allows ref struct
    {
        ref readonly var version = ref versions[at];
        if (version.Kind == VersionKind.NotRegulated)
            return Free;
        if (version.Kind == VersionKind.NotEstablished)
            return Outcome.Open;
        var (best, worst) = (Pathway.Prohibited, Pathway.NoCertificate);
        var exceeded = Pathway.NoCertificate;
        for (var i = version.FirstTier; i < version.EndTier; i++)
        {
            ref readonly var tier = ref tiers[i];
            var when = All(tier.When, row);
            var holds = when == Truth.No ? Truth.No : when.And(All(tier.Within, row));
            if (holds == Truth.No)
            {
                if (tier.Pathway == Pathway.Prohibited)
                    continue;
                if (when == Truth.Yes)
                    exceeded = tier.Pathway < Pathway.Approval ? tier.Pathway + 1 : Pathway.Approval;
                else if (when == Truth.Unknown && version.Beyond is null)
                    Tell(tier.When, row, ref watch);
                continue;
            }

            if (tier.Pathway < best)
                best = tier.Pathway;
            if (tier.Pathway > worst)
                worst = tier.Pathway;
            if (holds == Truth.Yes)
                return new Outcome(best, worst);
            Tell(tier.When, row, ref watch);
            Tell(tier.Within, row, ref watch);
        }

        var (least, most) = (version.Beyond ?? exceeded, version.Beyond ?? Pathway.Prohibited);
        return new Outcome(least < best ? least : best, most > worst ? most : worst);
    }

    /// <summary>As <see cref="Judge(Row)"/>, as narrow as trying every value of what is not known makes it.</summary>
    /// <param name="row">A row of this table.</param>
    public Outcome Complete(Row row) => new Completion(this, row, row.Touched).Outcome;

    /// <summary>Whether the rule of a version binds.</summary>
    internal Truth Binds(int version, ReadOnlySpan<ulong> row) => Binds(in versions[version], row);

    /// <summary>Whether the rule of a version binds, and what that hangs on.</summary>
    internal Truth Binds<TWatch>(int version, ReadOnlySpan<ulong> row, ref TWatch watch)
        where TWatch : struct, IWatch, allows ref struct
    {
        var binds = Binds(version, row);
        if (binds == Truth.Unknown)
            TellBinding(in versions[version], row, ref watch);
        return binds;
    }

    /// <summary>A vehicle is bound that meets one of the descriptions.</summary>
    private Truth Binds(ref readonly VersionLine version, ReadOnlySpan<ulong> row)
    {
        var binds = All(version.For, row);
        for (var i = 0; i < version.OrFor.Length && binds != Truth.Yes; i++)
            if (All(version.OrFor[i], row) is var other && other > binds)
                binds = other;
        return binds;
    }

    private void TellBinding<TWatch>(ref readonly VersionLine version, ReadOnlySpan<ulong> row, ref TWatch watch)
        where TWatch : struct, IWatch, allows ref struct
    {
        if (!TWatch.Watches)
            return;
        if (version.OrFor.Length == 0 || All(version.For, row) == Truth.Unknown)
            Tell(version.For, row, ref watch);
        foreach (var other in version.OrFor)
            if (All(other, row) == Truth.Unknown)
                Tell(other, row, ref watch);
    }

    /// <summary>Whether a tier of a version is open: its facts, its limits and its conditions.</summary>
    internal Truth Holds(int version, int tier, ReadOnlySpan<ulong> row)
    {
        ref readonly var line = ref tiers[versions[version].FirstTier + tier];
        var when = All(line.When, row);
        return when == Truth.No ? Truth.No : when.And(All(line.Within, row));
    }

    /// <summary>Whether the facts hold that open a tier at all.</summary>
    internal Truth When(int version, int tier, ReadOnlySpan<ulong> row) => All(tiers[versions[version].FirstTier + tier].When, row);

    private static Outcome Free => new(Pathway.NoCertificate, Pathway.NoCertificate);
}
