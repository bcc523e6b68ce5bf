using System.Collections.Immutable;
using Fractions;
using RuleBook.Authoring.Walk;
using RuleBook.InForce;
using RuleBook.Law;

namespace RuleBook.Authoring.Pinning;

/// <summary>A point at which a change of a rule shows.</summary>
/// <param name="Witness">The point.</param>
/// <param name="Before">What the rule gives there as it is.</param>
/// <param name="After">What it gives with the change.</param>
internal sealed record ChangedPoint(Witness Witness, RuleAnswer Before, RuleAnswer After);

/// <summary>
/// Looks for a point at which a change of a rule shows: every cell of every stretch of days on which its versions differ.
/// </summary>
internal static class RuleEffect
{
    /// <summary>
    /// A point, on the first such day the one nearest to a vehicle as built; null when each rule reached gives the same everywhere.
    /// </summary>
    /// <param name="before">The book as it is.</param>
    /// <param name="change">The change.</param>
    public static ChangedPoint? Find(Book before, RuleChange change) => Find(before, change, AreAlike);

    /// <summary>The same by visiting every point.</summary>
    internal static ChangedPoint? FindPlainly(Book before, RuleChange change) => Find(before, change, (_, _, _) => false);

    private static ChangedPoint? Find(Book before, RuleChange change, Func<Vocabulary, RuleOnDay[], Focus, bool> alike)
    {
        var stretches = change.Reached.SelectMany(rule => RuleOnDay.Of(before, change.Book, rule)).ToArray();
        return alike(before.Vocabulary, stretches, change.Focus)
            ? null
            : stretches.SelectMany(stretch => Differences(before.Vocabulary, stretch, change.Focus, NearestFirst)).FirstOrDefault();
    }

    /// <summary>
    /// Whether the versions give the same of every vehicle, bound by the rule or not: then they do so under every rule that adopts them,
    /// and a content that many adopt is looked at once.
    /// </summary>
    private static bool AreAlike(Vocabulary vocabulary, RuleOnDay[] stretches, Focus focus) =>
        stretches.Any(stretch => stretch.OtherVehicles)
            ? stretches.All(stretch => Alike.Everywhere(vocabulary, stretch.Old, stretch.Now))
            : RuleOnDay
                .SayingOther(stretches)
                .Select(stretch => stretch.OfEveryVehicle)
                .All(stretch => AreAlike(vocabulary, stretch, focus));

    private static bool AreAlike(Vocabulary vocabulary, RuleOnDay stretch, Focus focus) =>
        Alike.Everywhere(vocabulary, stretch.Old, stretch.Now) || !Differences(vocabulary, stretch, focus, space => space.Points).Any();

    private static IEnumerable<ChangedPoint> Differences(
        Vocabulary vocabulary,
        RuleOnDay stretch,
        Focus focus,
        Func<Space, IEnumerable<Fraction[]>> points
    )
    {
        ImmutableArray<ResolvedVersion> versions = [.. stretch.Old, .. stretch.Now];
        var space = new Space(vocabulary, stretch.Rule.Jurisdiction, stretch.Day, versions, Within(stretch, focus));
        var sense = new CategorySense(vocabulary, space.Axes, versions);
        var vehicles = space.Words.Where(words => focus is not OnWord only || words.GetValueOrDefault(only.Fact) == only.Word).ToArray();
        var at = new PointRow(vocabulary, space.Axes, [stretch.Old, stretch.Now]);
        foreach (var point in points(space))
        {
            at.Put(point);
            foreach (var words in vehicles.Where(words => sense.Possible(words, point)))
            {
                at.Put(words);
                if (Differ() is { } all)
                    yield return new ChangedPoint(space.Witness(words, point), all.Before, all.After);
                foreach (var condition in space.Conditions)
                {
                    at.NotShown(condition, true);
                    var without = Differ();
                    at.NotShown(condition, false);
                    if (without is { } shown)
                        yield return new ChangedPoint(space.Witness(words, point, condition), shown.Before, shown.After);
                }
            }
        }

        (RuleAnswer Before, RuleAnswer After)? Differ()
        {
            var row = at.Row.Cells;
            var (before, after) = (RuleAnswer.Of(at.Table, 0, row), RuleAnswer.Of(at.Table, 1, row));
            return before == after ? null : (before, after);
        }
    }

    private static IEnumerable<Fraction[]> NearestFirst(Space space) =>
        space.Points.OrderBy(point => space.Witness(ImmutableDictionary<string, string>.Empty, point).Weight);

    /// <summary>Only where the versions count the measure alike, and take it as it is, can the rest be left out.</summary>
    private static Func<Axes, SumRange?>? Within(RuleOnDay stretch, Focus focus)
    {
        var versions = stretch.Old.Concat(stretch.Now).Where(version => version.Content is Stated).ToArray();
        return
            focus is OnMeasure between
            && versions.Length > 0
            && versions.All(version => !OnMeasure.Moves(version) && version.Parts.SequenceEqual(versions[0].Parts))
            ? axes => axes.Between(between.Measure, versions[0], between.Low, between.High)
            : null;
    }
}
