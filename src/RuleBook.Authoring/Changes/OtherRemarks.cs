using RuleBook.Answers;
using RuleBook.Authoring.Resolved;
using RuleBook.InForce;
using RuleBook.Law;

namespace RuleBook.Authoring.Changes;

/// <summary>
/// What no verdict shows: a rule that came or went, its codes and whom to ask, what it rests on, what holds for a place as a whole.
/// </summary>
internal static class OtherRemarks
{
    public static IEnumerable<Remark> Of(Book before, Book after, Jurisdiction old, Jurisdiction now)
    {
        Remark At(RemarkKind kind, string about, Text.Mark mark, Said said) =>
            new(kind, now.Id, now.Name, about, said.From, said.Text, mark);

        var (left, right) = (new RuleStatements(before, after), new RuleStatements(after, after));
        foreach (
            var pair in old
                .Rules.Concat(now.Rules)
                .Select(rule => rule.Topic)
                .Distinct()
                .Order(StringComparer.Ordinal)
                .SelectMany(topic => RulePair.Of(old, now, topic))
        )
            if (pair is not { Before: { } was, After: { } rule })
                yield return At(
                    RemarkKind.Other,
                    pair.Either.Id,
                    pair.Mark,
                    new Said(
                        null,
                        pair.After is null
                            ? "the id has vanished, only the old book has this rule: keep it among the 'aliases' of what it became"
                            : "only the new book has this rule"
                    )
                );
            else
            {
                if (Tiers(was).Except(Tiers(rule)).ToArray() is { Length: > 0 } gone)
                    yield return At(
                        RemarkKind.Other,
                        rule.Id,
                        rule.Mark,
                        new Said(
                            null,
                            $"no version has a tier {string.Join(" or ", gone.Select(name => $"'{name}'"))} any more: what names it "
                                + "finds nothing"
                        )
                    );
                DateOnly[] days = [.. DayEdges.Of(before, [was]).Concat(DayEdges.Of(after, [rule])).Distinct().Order()];
                if (Said.Differently(days, day => left.Beside(was, day), day => right.Beside(rule, day)) is { } beside)
                    yield return At(RemarkKind.Other, rule.Id, rule.Mark, beside);
                if (Said.Differently(days, day => left.Evidence(was, day), day => right.Evidence(rule, day)) is { } evidence)
                    yield return At(RemarkKind.Evidence, rule.Id, rule.Mark, evidence);
            }

        if (Said.Differently(Place(old, before.Vocabulary), Place(now, after.Vocabulary)) is { } place)
            yield return At(RemarkKind.Other, now.Id, now.Mark, place);
        foreach (var source in now.Sources)
            if (before.Source(old.Id, source.Id) is { } earlier && Said.Differently(Standing(earlier), Standing(source)) is { } standing)
                yield return At(RemarkKind.Evidence, $"{now.Id}/{source.Id}", source.Mark, standing);
    }

    /// <summary>The names by which an exception, a change or a citation may know its tiers.</summary>
    private static IEnumerable<string> Tiers(Rule rule) =>
        rule
            .Versions.Select(version => version.Content)
            .SelectMany(content =>
                content switch
                {
                    Stated stated => stated.Tiers.Select(tier => tier.Name),
                    Adoption adoption => adoption.Exceptions.Select(change => change.Added?.Name).OfType<string>(),
                    _ => [],
                }
            );

    private static IEnumerable<string> Place(Jurisdiction place, Vocabulary vocabulary) =>
        [
            place.Registers ? "registers vehicles" : $"registers no vehicles: {place.RegistersNote}",
            $"within {place.Within ?? "nothing"}",
            $"to ask: {place.Ask.Name} {place.Ask.Url}",
            .. place.Coverage.Select(coverage => $"{coverage.Topic} {coverage.State}"),
            .. place.Cautions.Select(caution => $"caution where {LimitWords.Of(caution.When, vocabulary)}: {caution.Text.Trim()}"),
        ];

    private static IEnumerable<string> Standing(Source source) =>
        [
            Wording.Of(source.ReadAs),
            $"edition {source.Edition}",
            $"dated {source.Dated}",
            source.PartsRead is { } parts ? $"read in parts: {string.Join(", ", parts)}" : "read as a whole",
            source.HasClauses ? "with clauses" : "without clauses",
            $"compared {source.Checked}",
            $"again after {source.RecheckAfter}",
        ];
}
