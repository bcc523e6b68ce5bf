using RuleBook.Reading;
using RuleBook.Rules;

namespace RuleBook.Authoring.Pinning;

/// <summary>A book with one rule changed by the smallest step that matters.</summary>
/// <param name="From">The rule as it is.</param>
/// <param name="To">The rule with the change.</param>
/// <param name="Mark">Where the thing changed is written.</param>
/// <param name="What">What is changed.</param>
/// <param name="Becomes">What it becomes.</param>
/// <param name="Focus">Where alone it can be felt.</param>
/// <param name="Book">The whole book with the change.</param>
internal sealed record RuleChange(Rule From, Rule To, Mark Mark, string What, string Becomes, Focus Focus, Book Book)
{
    /// <summary>Every change of every rule chosen; changes of one thing follow one another.</summary>
    public static IEnumerable<RuleChange> Of(Book book, Func<Rule, bool> chosen)
    {
        var variants = new RuleVariants(book.Vocabulary);
        return book.Jurisdictions.SelectMany((place, at) => place.Rules.SelectMany((rule, i) => (chosen(rule) ? variants.Of(rule) : [])
            .Select(variant => new RuleChange(
                rule, variant.Value, variant.Mark, variant.What, variant.To, variant.Focus,
                book with { Jurisdictions = book.Jurisdictions.SetItem(at, place with { Rules = place.Rules.SetItem(i, variant.Value) }) }))));
    }
}
