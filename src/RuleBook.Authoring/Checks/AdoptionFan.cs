using RuleBook.InForce;
using RuleBook.Law;
using RuleBook.Text;

namespace RuleBook.Authoring.Checks;

/// <summary>An adoption behind which so many versions may stand that nobody could follow them.</summary>
internal static class AdoptionFan
{
    /// <summary>The most versions that may be in force at once, counted through every adoption.</summary>
    internal const int Most = 64;

    /// <summary>How far a chain is followed; it is refused long before.</summary>
    private const int Deepest = 500;

    internal static readonly CheckInfo Info = new(
        "adoption-fan",
        "an adoption leads to too many versions, or too far",
        "Each version whose dates are known in part only stands for several, and each adoption multiplies them: no answer could be "
            + "told apart.",
        "give the dates more exactly, or state the rule in full"
    );

    internal static IEnumerable<Problem> Find(Inspected book)
    {
        var known = new Dictionary<string, (int Versions, int Steps)>(StringComparer.Ordinal);
        foreach (var (rule, _, adoption) in book.Adoptions)
            if (Reach(book.Book, rule, known, 0) is var (versions, steps) && (versions > Most || steps > Resolver.LongestChain))
                yield return Info.At(
                    book.Value(adoption.Mark, "rule"),
                    versions > Most
                        ? $"through '{adoption.Rule}' more than {Most} versions may be in force on one day"
                        : $"'{adoption.Rule}' adopts in turn, more than {Resolver.LongestChain} steps far"
                );
    }

    /// <summary>
    /// How many versions may be in force on the worst day, and how many adoptions follow one another; a circle ends where it closes.
    /// </summary>
    private static (int Versions, int Steps) Reach(Book book, Rule rule, Dictionary<string, (int Versions, int Steps)> known, int depth)
    {
        if (depth > Deepest)
            return (1, Resolver.LongestChain + 1);
        if (known.TryGetValue(rule.Id, out var reached))
            return reached;
        known[rule.Id] = (1, 0);
        var versions = rule.Versions.Where(version => version.Decides).ToArray();
        var behind = Array.ConvertAll(
            versions,
            version =>
                version.Content is Adoption adoption && book.Rule(adoption.Rule) is { } adopted
                    ? Reach(book, adopted, known, depth + 1)
                    : (Versions: 1, Steps: -1)
        );
        Timeline.Span[] spans = [.. versions.Select(version => new Timeline.Span(version.From, version.InForceBy, version.Until))];
        var days = versions
            .SelectMany(version =>
                new[] { version.From?.Earliest, version.From?.Latest, version.InForceBy?.Earliest, version.Until?.Earliest }
            )
            .OfType<DateOnly>();
        var most = days.Distinct().Select(day => Timeline.At(spans, day).Sum(i => i < 0 ? 1 : behind[i].Versions)).DefaultIfEmpty(1).Max();
        return known[rule.Id] = (Math.Min(most, Most + 1), behind.Select(each => each.Steps + 1).DefaultIfEmpty(0).Max());
    }
}
