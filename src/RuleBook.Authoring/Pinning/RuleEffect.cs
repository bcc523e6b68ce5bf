using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using RuleBook.Authoring.Walk;
using RuleBook.Evaluation;
using RuleBook.Rules;

namespace RuleBook.Authoring.Pinning;

/// <summary>A point at which a change of a rule shows.</summary>
/// <param name="Witness">The point.</param>
/// <param name="Before">What the rule gives there as it is.</param>
/// <param name="After">What it gives with the change.</param>
internal sealed record Shown(Witness Witness, RuleAnswer Before, RuleAnswer After);

/// <summary>Looks for a point at which a change of a rule shows: every cell of every stretch of days on which its versions differ.</summary>
internal static class RuleEffect
{
    /// <summary>A point, on the first such day the one nearest to a vehicle as built; null when the rule gives the same everywhere.</summary>
    /// <param name="before">The book as it is.</param>
    /// <param name="change">The change.</param>
    /// <param name="rule">Full id of the rule to look at: the one changed, or one that adopts it.</param>
    public static Shown? Find(Book before, RuleChange change, string rule)
    {
        var (old, now) = (before.Rule(rule)!, change.Book.Rule(rule)!);
        return Stretches(before, old, change.Book, now)
            .SelectMany(stretch => Differences(before.Vocabulary, old, stretch, change.Focus))
            .FirstOrDefault();
    }

    /// <summary>The days on which something else is in force, each pair of contents once.</summary>
    private static IEnumerable<Stretch> Stretches(Book before, Rule old, Book after, Rule now) => DayEdges.Of(before, [old]).Concat(DayEdges.Of(after, [now])).Distinct().Order()
        .Select(day => new Stretch(day, Resolver.Resolve(before, old, day), Resolver.Resolve(after, now, day)))
        .Where(stretch => stretch.Differ)
        .DistinctBy(stretch => stretch.Key);

    private static IEnumerable<Shown> Differences(Vocabulary vocabulary, Rule rule, Stretch stretch, Focus focus)
    {
        var space = new Space(vocabulary, rule.Jurisdiction, stretch.Day, [.. stretch.Old, .. stretch.Now], Within(stretch, focus));
        var vehicles = space.Words.Where(words => focus is not OnWord only || words.GetValueOrDefault(only.Fact) == only.Word).ToArray();
        var tiers = ChangedTiers.Between(stretch.Old, stretch.Now);
        foreach (var point in space.Points.OrderBy(point => space.Witness(ImmutableDictionary<string, string>.Empty, point).Weight))
        {
            var measures = space.Facts(ImmutableDictionary<string, string>.Empty, point);
            foreach (var words in vehicles)
            {
                var facts = measures with { Words = words };
                if (tiers?.Bear(facts) == false) continue;
                if (Differ(facts) is { } all) yield return new Shown(space.Witness(words, point), all.Before, all.After);
                foreach (var condition in space.Conditions)
                    if (Differ(Space.NotShown(facts, condition)) is { } without)
                        yield return new Shown(space.Witness(words, point, condition), without.Before, without.After);
            }
        }

        (RuleAnswer Before, RuleAnswer After)? Differ(FactSet facts)
        {
            var (before, after) = (RuleAnswer.Of(stretch.Old, facts), RuleAnswer.Of(stretch.Now, facts));
            return before == after ? null : (before, after);
        }
    }

    /// <summary>Only where the versions count the measure alike can the rest be left out.</summary>
    private static Func<Axes, Slab?>? Within(Stretch stretch, Focus focus)
    {
        var versions = stretch.Old.Concat(stretch.Now).Where(version => version.Content is Stated).ToArray();
        return focus is OnMeasure between && versions.Length > 0 && versions.All(version => version.Parts.SequenceEqual(versions[0].Parts))
            ? axes => axes.Between(between.Measure, versions[0], between.Low, between.High)
            : null;
    }

    private sealed record Stretch(DateOnly Day, ImmutableArray<ResolvedVersion> Old, ImmutableArray<ResolvedVersion> Now)
    {
        /// <summary>Two stretches with one key give the same; contents are compared by identity, so that some may be looked at twice.</summary>
        public (string, string) Key => (Text(Old), Text(Now));

        public bool Differ => Key.Item1 != Key.Item2;

        private static string Text(ImmutableArray<ResolvedVersion> versions) => string.Join(
            ' ', versions.Select(version => $"{Identity(version.Content)} {RuntimeHelpers.GetHashCode(version.Rule.For)} {string.Join(',', version.Parts)}"));

        private static string Identity(Content content) => content is Stated ? $"{RuntimeHelpers.GetHashCode(content)}" : content.GetType().Name;
    }
}
