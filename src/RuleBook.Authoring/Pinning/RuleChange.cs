using System.Collections.Immutable;
using RuleBook.Jobs;
using RuleBook.Law;
using RuleBook.Tables;
using RuleBook.Text;

namespace RuleBook.Authoring.Pinning;

/// <summary>A book with one rule changed.</summary>
internal sealed record RuleChange(Book Book, Rule Rule, Mark Mark, string What, string Becomes, Focus Focus, ImmutableArray<string> Reached)
    : BookEdit(Book, Rule.Id, Mark, What, Becomes)
{
    public override IEnumerable<string> Places => Reached.Select(rule => rule.Split('/')[0]).Distinct();

    public override string Topic => Rule.Topic;

    /// <summary>Of a rule of use a case sees only what it says of the rule itself.</summary>
    public override bool NoticedByAny(IEnumerable<PreparedCase> cases)
    {
        if (Book.Vocabulary.Topics[Rule.Topic].OfUse)
            return cases.Any(one => one.NamesAny(Reached) && one.FailsOnUse(Book));
        var known = new Dictionary<(DecisionTable, JobDates), RulesChanged?>();
        return cases.Any(one => one.Notices(this, known));
    }

    /// <summary>Those that say what the rule gives, and of these those on which the change can be felt.</summary>
    public override IEnumerable<PreparedCase> Likeliest(IEnumerable<PreparedCase> cases)
    {
        var naming = cases.ToLookup(one => one.NamesAny(Reached));
        foreach (var names in (bool[])[true, false])
        {
            var on = naming[names].ToLookup(one => Focus.IsOn(one.Facts));
            foreach (var one in on[true].Concat(on[false]))
                yield return one;
        }
    }

    public override Unpinned? Effect(Book before) =>
        RuleEffect.Find(before, this) is { } shown
            ? new Unpinned(Subject, Mark, What, Becomes, shown.Witness, shown.Before.ToString(), shown.After.ToString())
        : Rule.DecidedBy != Book.Rule(Rule.Id)!.DecidedBy ? DecidedByChange.Effect(this, Rule.Jurisdiction, [Rule])
        : null;

    /// <summary>Every change of every rule chosen.</summary>
    public static IEnumerable<RuleChange> Of(Book book, Func<Rule, bool> chosen, Adopters adopters)
    {
        var variants = new RuleVariants(book.Vocabulary);
        return book.Jurisdictions.SelectMany(
            (place, at) =>
                place.Rules.SelectMany(
                    (rule, i) =>
                        (chosen(rule) ? variants.Of(rule) : []).Select(variant => new RuleChange(
                            book with
                            {
                                Jurisdictions = book.Jurisdictions.SetItem(
                                    at,
                                    place with
                                    {
                                        Rules = place.Rules.SetItem(i, variant.Value),
                                    }
                                ),
                            },
                            rule,
                            variant.Mark,
                            variant.What,
                            variant.To,
                            variant.Focus,
                            adopters.Of(rule.Id)
                        ))
                )
        );
    }
}
