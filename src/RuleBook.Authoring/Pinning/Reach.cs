using System.Collections.Immutable;
using RuleBook.Rules;

namespace RuleBook.Authoring.Pinning;

/// <summary>Where a change of a rule can be felt: in its jurisdiction, and wherever the rule is adopted, directly or through others.</summary>
internal sealed class Reach
{
    private readonly ILookup<string, string> adopters;

    public Reach(Book book) => adopters = book.Jurisdictions
        .SelectMany(place => place.Rules)
        .SelectMany(rule => rule.Versions.Select(version => version.Content).OfType<Adoption>().Select(adoption => (Adopted: book.Rule(adoption.Rule)?.Id ?? adoption.Rule, By: rule.Id)))
        .Distinct()
        .ToLookup(pair => pair.Adopted, pair => pair.By);

    /// <summary>The full ids of the rules that a change of <paramref name="rule"/> reaches, itself among them.</summary>
    public ImmutableHashSet<string> Of(string rule)
    {
        var reached = ImmutableHashSet.CreateBuilder<string>();
        var open = new Stack<string>([rule]);
        while (open.TryPop(out var id))
            if (reached.Add(id))
                foreach (var adopter in adopters[id])
                    open.Push(adopter);
        return reached.ToImmutable();
    }
}
