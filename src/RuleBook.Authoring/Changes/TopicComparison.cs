using System.Collections.Immutable;
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
    private readonly Dictionary<string, ImmutableArray<CandidateGroup>> known = [];
    private readonly Dictionary<string, Remark> notShown = [];
    private readonly HashSet<RulePair> reworded = [];

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
        var answers = new List<AnswerChange>();
        for (var i = 0; i < days.Length; i++)
            foreach (var change in Vehicles.Joined(On(days[i], first: i == 0), vocabulary))
                Add(answers, change with { Until = i + 1 < days.Length ? days[i + 1] : null }, days[i]);
        return new ChangeReport(
            [.. answers],
            [.. notShown.Values, .. WithoutAnswer(days, [.. answers.Select(change => change.Rule), .. notShown.Keys])]
        );
    }

    /// <summary>
    /// What a rule says otherwise although no answer differs: a figure that the others imply, a tier behind what is not established.
    /// </summary>
    private IEnumerable<Remark> WithoutAnswer(DateOnly[] days, HashSet<string> told) =>
        from pair in pairs
        where reworded.Contains(pair) && pair is { Before: not null, After: not null } && !told.Contains(pair.Either.Id)
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

    private IEnumerable<AnswerChange> On(DateOnly day, bool first)
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
        if (differing.Length == 0 && otherWords.IsEmpty)
            return [];
        RulePair[] rules = [.. differing.Select(each => each.pair)];
        reworded.UnionWith(rules);
        var key = string.Join('\n', differing.Select(each => $"{each.pair.Either.Id}\n{each.old}\n{each.now}"));
        if (!known.TryGetValue(key, out var groups))
            known[key] = groups = [.. Together(rules).SelectMany(some => Groups(some, day)), .. OfWords(day)];
        return Shown(groups, rules, day, first);
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

    private IEnumerable<AnswerChange> Shown(ImmutableArray<CandidateGroup> groups, RulePair[] rules, DateOnly day, bool first)
    {
        var found = new List<(CandidateGroup Group, Confirmed Confirmed)>();
        foreach (var group in groups)
        {
            var onDay = group with { Witnesses = [.. group.Witnesses.Select(witness => witness with { Day = day })] };
            if (confirmation.First(onDay, out var tried) is { } confirmed)
                found.Add((group, confirmed));
            else if (!tried)
                NotShown(rules, day, onDay.Witnesses[0], first);
        }

        return found
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
    }

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

    private void NotShown(RulePair[] rules, DateOnly day, Witness witness, bool first)
    {
        var (pair, mark) = Deciding.Of(rules, before, after, witness);
        notShown.TryAdd(
            pair.Either.Id,
            new Remark(
                RemarkKind.NotShown,
                place.Id,
                place.Name,
                pair.Either.Id,
                first ? null : day,
                $"the limits differ, and no job file was found that shows it: {WitnessWords.Of(witness, vocabulary)}",
                mark
            )
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
}
