using System.Collections.Immutable;
using RuleBook.InForce;
using RuleBook.Law;

namespace RuleBook.Authoring.Checks;

/// <summary>What an adoption takes over.</summary>
internal static class Adopted
{
    /// <summary>
    /// Every tier that the adopted rule has or had in a version that may be meant, before this adoption's own exceptions.
    /// </summary>
    internal static ImmutableArray<Tier> Tiers(Inspected book, Adoption adoption) =>
        book.AdoptedTiers.TryGetValue((adoption.Rule, adoption.AsOf), out var known)
            ? known
            : book.AdoptedTiers[(adoption.Rule, adoption.AsOf)] = [.. Follow(book, adoption).SelectMany(taken => taken.Tiers)];

    /// <summary>The same, each limit as far as the tolerance or step of the adopted rule lets it reach.</summary>
    internal static ImmutableArray<Tier> Reaching(Inspected book, Adoption adoption) =>
        [
            .. Follow(book, adoption)
                .SelectMany(taken =>
                    taken.Measured is { } measured
                        ? ((Stated)Allowance.Apply(new Stated(taken.Tiers, null), measured, book.Book.Vocabulary)).Tiers
                        : taken.Tiers
                ),
        ];

    /// <summary>The tiers of each version that is taken over, on the way to the rule that states them, and how they are measured.</summary>
    private static IEnumerable<(ImmutableArray<Tier> Tiers, Measured? Measured)> Follow(Inspected book, Adoption adoption)
    {
        var (seen, open) = (new HashSet<(string Rule, DateOnly? Day)>(), new Stack<(Adoption, Measured?)>([(adoption, null)]));
        while (open.TryPop(out var next))
        {
            var (taken, outer) = next;
            if (!seen.Add((taken.Rule, taken.AsOf)) || book.Book.Rule(taken.Rule) is not { } rule)
                continue;
            foreach (var version in Versions(rule, taken.AsOf))
            {
                var measured = outer ?? version.Measured;
                if (version.Content is Stated stated)
                    yield return (stated.Tiers, measured);
                if (version.Content is not Adoption further)
                    continue;
                yield return ([.. further.Exceptions.Select(change => change.Added).OfType<Tier>()], measured);
                open.Push((further, measured));
            }
        }
    }

    /// <summary>What holds beyond the tiers in every version that may be meant, where it is established.</summary>
    internal static IEnumerable<Pathway> Beyond(Inspected book, Adoption adoption)
    {
        var (seen, open) = (new HashSet<(string Rule, DateOnly? Day)>(), new Stack<Adoption>([adoption]));
        while (open.TryPop(out var next))
            if (seen.Add((next.Rule, next.AsOf)) && book.Book.Rule(next.Rule) is { } rule)
                foreach (var version in Versions(rule, next.AsOf))
                    if (version.Content is Stated { Beyond: { } beyond })
                        yield return beyond;
                    else if (version.Content is Adoption further)
                        open.Push(further);
    }

    /// <summary>The versions that may be in force on the day; all that decide where no day is given.</summary>
    internal static IEnumerable<RuleVersion> Versions(Rule rule, DateOnly? day)
    {
        var versions = rule.Versions.Where(version => version.Decides).ToArray();
        if (day is not { } known)
            return versions;
        Timeline.Span[] spans = [.. versions.Select(version => new Timeline.Span(version.From, version.InForceBy, version.Until))];
        return Timeline.At(spans, known).Where(index => index >= 0).Select(index => versions[index]);
    }
}
