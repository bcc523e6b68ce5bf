using System.Collections.Immutable;
using RuleBook.Authoring.AllCores;
using RuleBook.Law;

namespace RuleBook.Authoring.Changes;

/// <summary>
/// Which answers change between two books: by cells, not by text. What is only worded otherwise changes nothing; what no answer shows is
/// told beside them.
/// </summary>
public static class BookChanges
{
    /// <summary>Compares two books.</summary>
    /// <param name="before">The old book.</param>
    /// <param name="after">The new book.</param>
    /// <param name="progress">Told the id of a jurisdiction before a topic of it is compared; by several threads.</param>
    public static ChangeReport Between(Book before, Book after, Action<string>? progress = null)
    {
        if (before.Digest == after.Digest)
            return new ChangeReport([], []);
        var vocabulary = Words.Of(before, after);
        var places = after.Jurisdictions.Select(now => (Now: now, Old: Counterpart(before, now))).ToArray();
        var compared = places.SelectMany(pair => Topics(pair.Old, pair.Now).Select(topic => (pair.Old, pair.Now, Topic: topic))).ToArray();
        var reports = InOrder.Each(
            compared,
            each =>
            {
                progress?.Invoke(each.Now.Id);
                return (each.Now, Report: new TopicComparison(before, after, each.Old!, each.Now, each.Topic, vocabulary).Run());
            }
        );
        var answers = ImmutableArray.CreateBuilder<AnswerChange>();
        var remarks = ImmutableArray.CreateBuilder<Remark>();
        foreach (var (now, old) in places)
        {
            if (old is null)
            {
                remarks.Add(
                    new Remark(
                        RemarkKind.JurisdictionAdded,
                        now.Id,
                        now.Name,
                        now.Id,
                        null,
                        "only the new book has this jurisdiction",
                        now.Mark
                    )
                );
                continue;
            }

            foreach (var (_, report) in reports.Where(each => each.Now == now))
            {
                answers.AddRange(report.Answers);
                remarks.AddRange(report.Remarks);
            }

            remarks.AddRange(Remarks.Of(before, after, old, now));
        }

        foreach (var old in before.Jurisdictions.Where(old => places.All(pair => pair.Old?.Id != old.Id)))
            remarks.Add(
                new Remark(
                    RemarkKind.JurisdictionRemoved,
                    old.Id,
                    old.Name,
                    old.Id,
                    null,
                    "only the old book has this jurisdiction",
                    old.Mark
                )
            );
        remarks.AddRange(WordRemarks.Of(before, after));
        return new ChangeReport(
            answers.ToImmutable(),
            [
                .. remarks.OrderBy(remark =>
                    remark.Kind is RemarkKind.Other or RemarkKind.Evidence ? remark.Kind : RemarkKind.JurisdictionAdded
                ),
            ]
        );
    }

    private static IEnumerable<string> Topics(Jurisdiction? old, Jurisdiction now) =>
        old is null ? [] : old.Rules.Concat(now.Rules).Select(rule => rule.Topic).Distinct().Order(StringComparer.Ordinal);

    private static Jurisdiction? Counterpart(Book before, Jurisdiction now) =>
        before.Jurisdiction(now.Id) ?? now.Aliases.Select(before.Jurisdiction).FirstOrDefault(found => found is not null);
}
