using System.Collections.Immutable;
using RuleBook.Law;

namespace RuleBook.Authoring.Pinning;

/// <summary>Where a change of a rule can be felt: in the rule itself, and wherever it is adopted, directly or through others.</summary>
internal sealed class Adopters(Book book)
{
    private readonly ILookup<string, string> by = book
        .Jurisdictions.SelectMany(place => place.Rules)
        .SelectMany(rule =>
            rule.Versions.Select(version => version.Content)
                .OfType<Adoption>()
                .Select(adoption => (Adopted: book.Rule(adoption.Rule)?.Id ?? adoption.Rule, By: rule.Id))
        )
        .Distinct()
        .ToLookup(pair => pair.Adopted, pair => pair.By);

    /// <summary>The full ids of the rules that a change of <paramref name="rule"/> reaches, itself first.</summary>
    public ImmutableArray<string> Of(string rule)
    {
        var reached = ImmutableArray.Create(rule);
        for (var i = 0; i < reached.Length; i++)
            reached = reached.AddRange(by[reached[i]].Where(adopter => !reached.Contains(adopter)));
        return reached;
    }
}
