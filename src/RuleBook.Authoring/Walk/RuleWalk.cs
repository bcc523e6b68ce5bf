using System.Collections.Immutable;
using Fractions;
using RuleBook.Answers;
using RuleBook.Law;
using RuleBook.Tables;
using RuleBook.Text;
using RuleBook.Units;

namespace RuleBook.Authoring.Walk;

/// <summary>Walks one rule on one day.</summary>
internal sealed class RuleWalk
{
    private readonly Slice slice;
    private readonly Rule rule;
    private readonly Space space;
    private readonly PointRow at;

    /// <summary>Where each tier reached is written, and what opens it: alternatives are written in one place.</summary>
    private readonly HashSet<(Mark Mark, Predicate When)> reached;

    private readonly Dictionary<FaultKind, WalkFault> faults = [];
    private long cells;
    private long partial;

    public RuleWalk(Vocabulary vocabulary, Slice slice, Rule rule, HashSet<(Mark, Predicate)> reached)
    {
        this.slice = slice;
        this.rule = rule;
        this.reached = reached;
        space = new Space(vocabulary, slice.Jurisdiction, slice.Day, [.. slice.Versions]);
        at = new PointRow(vocabulary, space.Axes, slice.Rules);
    }

    private Outcome? Outcome => slice.Judge(at.Table, at.Row);

    public WalkReport Walk()
    {
        foreach (var words in space.Words)
        foreach (var point in space.Points)
        {
            at.Put(words);
            at.Put(point);
            var outcome = Outcome;
            Visit();
            Compare(words, point, outcome);
            Unknown(words, point, outcome);
            foreach (var condition in space.Conditions)
            {
                at.NotShown(condition, true);
                Visit();
                at.NotShown(condition, false);
            }
        }

        return new WalkReport(0, 1, cells, 0, partial, [.. faults.Values]);
    }

    /// <summary>A tier is reached where it may hold and none before it surely does.</summary>
    private void Visit()
    {
        cells++;
        var row = at.Row.Cells;
        for (var version = 0; version < at.Table.Versions.Length; version++)
        {
            if (at.Table.Binds(version, row) == Truth.No || at.Table.Version(version).Content is not Stated stated)
                continue;
            for (var tier = 0; tier < stated.Tiers.Length; tier++)
            {
                var holds = at.Table.Holds(version, tier, row);
                if (holds != Truth.No)
                    reached.Add((stated.Tiers[tier].Mark, stated.Tiers[tier].When));
                if (holds == Truth.Yes)
                    break;
            }
        }
    }

    /// <summary>
    /// Away from the vehicle as built no answer may get easier, the other axes kept; where other parts of a total go the other way, they
    /// may make up for each other, so such points are left out. What is not a change (a mass class, a height over the ground) may well
    /// allow more.
    /// </summary>
    private void Compare(ImmutableDictionary<string, string> words, Fraction[] point, Outcome? outcome)
    {
        if (outcome is not { } here)
            return;
        for (var axis = 0; axis < point.Length; axis++)
        {
            if (!IsChange(space.Axes.Measures[axis]) || point[axis].IsZero || Opposed(point, axis))
                continue;
            at.Put(axis, point[axis].IsPositive ? Max(point[axis] - space.Axes.Step(axis)) : Min(point[axis] + space.Axes.Step(axis)));
            var nearer = Outcome;
            at.Put(axis, point[axis]);
            if (nearer is not { } there || (there.Best <= here.Best && there.Worst <= here.Worst))
                continue;
            Add(
                FaultKind.Easier,
                $"{space.Axes.Measures[axis].Title} grows, and the answer goes from '{Wording.Of(there)}' to '{Wording.Of(here)}'",
                space.Witness(words, point)
            );
        }
    }

    /// <summary>What is answered without a fact has to leave room for what is answered with it.</summary>
    private void Unknown(ImmutableDictionary<string, string> words, Fraction[] point, Outcome? outcome)
    {
        if (outcome is not { } known)
            return;
        foreach (var word in words.Keys)
        {
            at.Put(words.Remove(word));
            Covers(Outcome, word);
        }

        at.Put(words);
        for (var axis = 0; axis < point.Length; axis++)
        {
            at.Put(axis, null);
            Covers(Outcome, space.Axes.Measures[axis].Name);
            at.Put(axis, point[axis]);
        }

        void Covers(Outcome? open, string what)
        {
            partial++;
            if (open is { } wide && (wide.Best > known.Best || wide.Worst < known.Worst))
                Add(
                    FaultKind.Contradiction,
                    $"without {what} the answer is {Wording.Of(wide)}, with it {Wording.Of(known)}",
                    space.Witness(words, point)
                );
        }
    }

    private bool Opposed(Fraction[] point, int axis)
    {
        foreach (var plane in space.Axes.Planes.Where(plane => plane.On(axis)))
            for (var other = 0; other < point.Length; other++)
                if (other != axis && plane.On(other) && point[other].Numerator.Sign == -point[axis].Numerator.Sign)
                    return true;
        return false;
    }

    private void Add(FaultKind kind, string text, Witness witness)
    {
        if (!faults.TryGetValue(kind, out var known) || witness.Weight.CompareTo(known.Witness!.Weight) < 0)
            faults[kind] = new WalkFault(kind, rule.Id, rule.Mark, text, witness);
    }

    private static bool IsChange(Measure measure) => measure is { IsDate: false, IfAbsent.IsZero: true };

    private static Fraction Max(Fraction value) => value.IsNegative ? Fraction.Zero : value;

    private static Fraction Min(Fraction value) => value.IsPositive ? Fraction.Zero : value;
}
