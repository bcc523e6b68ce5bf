using System.Collections.Immutable;
using RuleBook.Law;
using RuleBook.Text;

namespace RuleBook.Authoring.Changes;

/// <summary>One rule in two books, whatever it is called in each; null where a book does not have it.</summary>
internal sealed record RulePair(Rule? Before, Rule? After)
{
    public Rule Either => After ?? Before!;

    public Mark Mark => Either.Mark;

    /// <summary>The rules of a topic in both books; an alias on either side joins them.</summary>
    public static ImmutableArray<RulePair> Of(Jurisdiction before, Jurisdiction after, string topic)
    {
        var left = before.Rules.Where(rule => rule.Topic == topic).ToList();
        var pairs = ImmutableArray.CreateBuilder<RulePair>();
        foreach (var rule in after.Rules.Where(rule => rule.Topic == topic))
        {
            var same =
                left.Find(old => old.Name == rule.Name)
                ?? left.Find(old => rule.Aliases.Contains(old.Name) || old.Aliases.Contains(rule.Name));
            if (same is not null)
                left.Remove(same);
            pairs.Add(new RulePair(same, rule));
        }

        return [.. pairs, .. left.Select(rule => new RulePair(rule, null))];
    }
}
