using System.Collections.Immutable;
using RuleBook.Authoring.AllCores;
using RuleBook.Authoring.Resolved;
using RuleBook.Authoring.Walk;
using RuleBook.InForce;
using RuleBook.Law;

namespace RuleBook.Authoring.Changes;

/// <summary>Compares two books on one topic of one jurisdiction: only the rules whose meaning differs on a day, and only then.</summary>
internal sealed class TopicComparison
{
    private readonly Book before;
    private readonly Book after;
    private readonly Jurisdiction place;
    private readonly Topic topic;
    private readonly Vocabulary vocabulary;
    private readonly Confirmation confirmation;
    private readonly ImmutableArray<RulePair> pairs;
    private readonly ImmutableArray<string> otherWords;

    public TopicComparison(Book before, Book after, Jurisdiction old, Jurisdiction now, string topic, Vocabulary vocabulary)
    {
        this.before = before;
        this.after = after;
        this.vocabulary = vocabulary;
        place = now;
        this.topic = vocabulary.Topics[topic];
        confirmation = new Confirmation(before, after, old, now, this.topic, vocabulary);
        pairs = RulePair.Of(old, now, topic);
        otherWords = Words.Differing(before.Vocabulary, after.Vocabulary, topic);
    }

    public ChangeReport Run()
    {
        if (pairs.IsEmpty)
            return new ChangeReport([], []);
        DateOnly[] days =
        [
            .. DayEdges
                .Of(before, pairs.Select(pair => pair.Before).OfType<Rule>())
                .Concat(DayEdges.Of(after, pairs.Select(pair => pair.After).OfType<Rule>()))
                .Distinct()
                .Order(),
        ];
        var differences = InOrder.Each(days, Differing);
        var groups = InOrder
            .Each([.. differences.DistinctBy(each => each.Meaning)], each => (each.Meaning, Groups: Groups(each)))
            .ToDictionary(each => each.Meaning, each => each.Groups);
        var found = InOrder.Each(differences, each => Shown(each, groups[each.Meaning], first: each.Day == days[0]));
        var answers = new List<AnswerChange>();
        foreach (var (i, onDay) in found.Index())
        foreach (var change in onDay.Answers)
            Add(answers, change with { Until = i + 1 < days.Length ? days[i + 1] : null }, days[i]);
        Remark[] notShown = [.. found.SelectMany(onDay => onDay.NotShown).DistinctBy(remark => remark.About)];
        HashSet<string> told = [.. answers.Select(change => change.Rule), .. notShown.Select(remark => remark.About)];
        var untold = differences.SelectMany(each => each.Rules).Where(pair => !told.Contains(pair.Either.Id));
        return new ChangeReport([.. answers], [.. notShown, .. WithoutAnswer(days, untold)]);
    }

    /// <summary>
    /// What a rule says otherwise although no answer differs: a figure that the others imply, a tier behind what is not established.
    /// </summary>
    private IEnumerable<Remark> WithoutAnswer(DateOnly[] days, IEnumerable<RulePair> reworded) =>
        from pair in pairs.Intersect(reworded)
        where pair is { Before: not null, After: not null }
        let said = Said.Differently(
            days,
            day => NormalForm.Of(before, pair.Before, day, vocabulary).Split('\n'),
            day => NormalForm.Of(after, pair.After, day, vocabulary).Split('\n')
        )
        where said is not null
        select new Remark(
            RemarkKind.Other,
            place.Id,
            place.Name,
            pair.Either.Id,
            said.From,
            $"it reads otherwise, and no answer differs: {said.Text}",
            pair.Mark
        );

    /// <summary>A change that goes on from the stretch of days before is told once.</summary>
    private static void Add(List<AnswerChange> answers, AnswerChange change, DateOnly day)
    {
        var same = answers.FindIndex(other =>
            other.Until == day
            && other.Before == change.Before
            && other.After == change.After
            && other.Rule == change.Rule
            && other.Witness.Says == change.Witness.Says
            && other.Furthest?.Says == change.Furthest?.Says
            && Same(other.Vehicles, change.Vehicles)
        );
        if (same < 0)
            answers.Add(change);
        else
            answers[same] = answers[same] with { Until = change.Until };
    }

    private static bool Same(ImmutableArray<VehicleWord> left, ImmutableArray<VehicleWord> right) =>
        left.Length == right.Length
        && left.Zip(right).All(pair => pair.First.Fact == pair.Second.Fact && pair.First.Words.SequenceEqual(pair.Second.Words));

    private Difference Differing(DateOnly day)
    {
        var differing = pairs
            .Select(pair =>
                (
                    pair,
                    old: NormalForm.Of(before, SpelledOut(before, pair.Before), day, vocabulary),
                    now: NormalForm.Of(after, SpelledOut(after, pair.After), day, vocabulary)
                )
            )
            .Where(each => each.old != each.now)
            .ToArray();
        return new Difference(
            day,
            [.. differing.Select(each => each.pair)],
            string.Join('\n', differing.Select(each => $"{each.pair.Either.Id}\n{each.old}\n{each.now}"))
        );
    }

    private ImmutableArray<CandidateGroup> Groups(Difference difference) =>
        [.. Together(difference.Rules).SelectMany(rules => Groups(rules, difference.Day)), .. OfWords(difference.Day)];

    private OnDay Shown(Difference difference, ImmutableArray<CandidateGroup> groups, bool first)
    {
        var (day, rules, _) = difference;
        var tried = InOrder.Each(groups, group => Tried(group, day));
        return new OnDay(
            [.. Vehicles.Joined(Shown(tried, rules, day, first), vocabulary)],
            [.. tried.Where(each => !each.Tried).Select(each => NotShown(rules, each.Group.Witnesses[0] with { Day = day }, first))]
        );
    }

    /// <summary>
    /// Rules that both books have for the same vehicles are compared one by one; those that come, go or share vehicles out anew, together.
    /// </summary>
    private IEnumerable<RulePair[]> Together(RulePair[] rules)
    {
        var apart = rules.ToLookup(pair =>
            pair is { Before: { } old, After: { } now } && LimitWords.Of(old.For, vocabulary) == LimitWords.Of(now.For, vocabulary)
        );
        return apart[false].Any()
            ? apart[true].Select(pair => new[] { pair }).Append([.. apart[false]])
            : apart[true].Select(pair => new[] { pair });
    }

    private ImmutableArray<CandidateGroup> Groups(RulePair[] rules, DateOnly day) =>
        Candidates.Of(vocabulary, topic, Slice(before, day, rules, pair => pair.Before), Slice(after, day, rules, pair => pair.After));

    private ImmutableArray<CandidateGroup> OfWords(DateOnly day) =>
        otherWords.IsEmpty ? [] : Candidates.OfMeasures(vocabulary, Slice(after, day, [.. pairs], pair => pair.After), otherWords);

    private (CandidateGroup Group, Confirmed? Confirmed, bool Tried) Tried(CandidateGroup group, DateOnly day)
    {
        var onDay = group with { Witnesses = [.. group.Witnesses.Select(witness => witness with { Day = day })] };
        var confirmed = confirmation.First(onDay, out var tried);
        return (group, confirmed, tried);
    }

    private IEnumerable<AnswerChange> Shown(
        IEnumerable<(CandidateGroup Group, Confirmed? Confirmed, bool Tried)> tried,
        RulePair[] rules,
        DateOnly day,
        bool first
    ) =>
        tried
            .Where(each => each.Confirmed is not null)
            .Select(each => (each.Group, Confirmed: each.Confirmed!))
            .GroupBy(each =>
                (
                    string.Join('|', each.Group.Vehicles.Select(pair => $"{pair.Key} {string.Join(',', pair.Value)}")),
                    each.Confirmed.Before,
                    each.Confirmed.After
                )
            )
            .Select(same => same.OrderBy(each => each.Confirmed.Witness.Weight).First())
            .OrderByDescending(each => each.Confirmed.Decided)
            .ThenBy(each =>
                (each.Confirmed.Before.Best, each.Confirmed.Before.Worst, each.Confirmed.After.Best, each.Confirmed.After.Worst)
            )
            .Select(each => Change(each.Group, each.Confirmed, rules, day, first));

    private AnswerChange Change(CandidateGroup group, Confirmed confirmed, RulePair[] rules, DateOnly day, bool first)
    {
        var (pair, mark) = Deciding.Of(rules.Length > 0 ? rules : [.. pairs], before, after, confirmed.Witness);
        return new AnswerChange(
            place.Id,
            place.Name,
            topic.Name,
            topic.Title,
            first ? null : day,
            null,
            [.. group.Vehicles.Select(words => new VehicleWord(words.Key, vocabulary.Facts[words.Key].Title, words.Value))],
            confirmed.Before,
            confirmed.After,
            pair.Either.Id,
            mark,
            pair.After is null,
            new ShownJob(confirmed.Job, confirmed.Says, day),
            confirmation.Furthest(group, confirmed, day) is { } furthest ? new ShownJob(furthest.Job, furthest.Says, day) : null
        );
    }

    private Remark NotShown(RulePair[] rules, Witness witness, bool first)
    {
        var (pair, mark) = Deciding.Of(rules, before, after, witness);
        return new Remark(
            RemarkKind.NotShown,
            place.Id,
            place.Name,
            pair.Either.Id,
            first ? null : witness.Day,
            $"the limits differ, and no job file was found that shows it: {WitnessWords.Of(witness, vocabulary)}",
            mark
        );
    }

    private Slice Slice(Book book, DateOnly day, RulePair[] rules, Func<RulePair, Rule?> side) =>
        new(
            place.Id,
            topic.Name,
            day,
            [.. rules.Select(pair => SpelledOut(book, side(pair))).OfType<Rule>().Select(rule => Resolver.Resolve(book, rule, day))]
        );

    private Rule? SpelledOut(Book book, Rule? rule) =>
        rule is null ? null : Words.SpelledOut(rule, book.Vocabulary, ReferenceEquals(book, before) ? after.Vocabulary : before.Vocabulary);

    /// <param name="Day">The day.</param>
    /// <param name="Rules">The rules that read otherwise on it.</param>
    /// <param name="Meaning">How they read before and after: the same wherever the same answers differ.</param>
    private sealed record Difference(DateOnly Day, RulePair[] Rules, string Meaning);

    /// <param name="Answers">What is answered otherwise on the day.</param>
    /// <param name="NotShown">Limits that differ and that no job shows.</param>
    private sealed record OnDay(ImmutableArray<AnswerChange> Answers, ImmutableArray<Remark> NotShown);
}
