using RuleBook.Reading;
using RuleBook.Rules;

namespace RuleBook.Authoring.Pinning;

/// <summary>A book with one rule changed by the smallest step that matters.</summary>
/// <param name="Rule">Full id of the rule.</param>
/// <param name="Mark">Where the thing changed is written.</param>
/// <param name="What">What is changed.</param>
/// <param name="To">What it becomes.</param>
/// <param name="Book">The whole book with the change.</param>
public sealed record Mutation(string Rule, Mark Mark, string What, string To, Book Book)
{
    /// <summary>Every change of every rule chosen; changes of one thing follow one another.</summary>
    internal static IEnumerable<Mutation> Of(Book book, Func<Rule, bool> chosen)
    {
        var variants = new RuleVariants(book.Vocabulary);
        for (var i = 0; i < book.Jurisdictions.Length; i++)
        {
            var (at, place) = (i, book.Jurisdictions[i]);
            var changed = place.Rules
                .OfEach(rule => chosen(rule) ? variants.Of(rule) : [])
                .Select(variant => (variant, Rule: Changed(place, variant.Value)));
            foreach (var (variant, rule) in changed)
                yield return new Mutation(rule.Id, variant.Mark, variant.What, variant.To, book with { Jurisdictions = book.Jurisdictions.SetItem(at, place with { Rules = variant.Value }) });
        }
    }

    private static Rule Changed(Jurisdiction place, System.Collections.Immutable.ImmutableArray<Rule> rules) =>
        rules.Where((rule, i) => !ReferenceEquals(rule, place.Rules[i])).Single();
}
