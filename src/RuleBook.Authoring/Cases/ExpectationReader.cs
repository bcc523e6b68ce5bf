using System.Collections.Immutable;
using RuleBook.Law;
using RuleBook.Law.Reading;
using RuleBook.Tables;
using RuleBook.Text;
using RuleBook.Units;

namespace RuleBook.Authoring.Cases;

/// <summary>Reads what a case expects and why.</summary>
internal static class ExpectationReader
{
    public static Expectation Read(Fields fields, Book book, string topic)
    {
        var undecided = fields.Node("verdict") is Scalar { Text: "undecided" };
        var verdict = undecided ? null : LimitReader.ReadPathway(fields, "verdict");
        var between = fields.List<PathwayWord>(
            "between",
            node => LimitReader.PathwayOf(fields, node) is { } pathway ? new PathwayWord(pathway) : null
        );
        var expectation = new Expectation(
            between.Length == 2 ? new Outcome(between[0].Pathway, between[1].Pathway)
                : verdict is { } one ? new Outcome(one, one)
                : null,
            undecided,
            fields.Text("decides"),
            fields.Has("asks") ? fields.Texts("asks") : null,
            fields.Has("conditions") ? fields.Texts("conditions") : null,
            fields.Nested("findings") is { } findings ? ReadFindings(findings, book, topic) : null,
            fields.Nested("conditions-of") is { } rules ? ReadLists(rules, book, topic, book.Vocabulary.Conditions.Keys) : null,
            fields.Nested("codes-of") is { } coded ? ReadLists(coded, book, topic) : null,
            fields.Nested("warning-only") is { } warned ? ReadTruths(warned, book, topic) : null,
            fields.Has("issued") ? fields.Texts("issued") : null,
            fields.Text("certifier"),
            ReadSteps(fields),
            ReadTruth(fields, "may-certify"),
            fields.Mark
        );
        if (
            fields.Has("verdict")
                ? fields.Has("between")
                : !fields.Has("between") && expectation is { Findings: null, ConditionsOf: null, CodesOf: null }
        )
            fields.Add(
                "one-content",
                fields.Mark,
                "a case expects a verdict or a range, or what single rules give",
                "give 'verdict: certificate' or 'between: [certificate, prohibited]'"
            );
        if (fields.Has("between") && (between.Length != 2 || between[0].Pathway >= between[1].Pathway))
            fields.Add(
                "wrong-shape",
                fields.Mark,
                "a range goes from the least to the most onerous pathway",
                "write 'between: [certificate, prohibited]'"
            );
        Known(fields, "decides", expectation.Decides is { } measure ? [measure] : [], book.Vocabulary.Measures.Keys);
        Known(fields, "conditions", expectation.Conditions ?? [], book.Vocabulary.Conditions.Keys);
        fields.Done();
        return expectation;
    }

    /// <summary>What single rules give: a pathway, a range, or nothing where the rule does not bind.</summary>
    private static ImmutableDictionary<string, Outcome?> ReadFindings(Fields fields, Book book, string topic)
    {
        var findings = ImmutableDictionary.CreateBuilder<string, Outcome?>();
        foreach (var (key, value) in fields.Entries)
            if (RuleNamed(fields, key, book, topic) is { } rule)
                findings[rule.Id] = ReadOutcome(fields, value);
        return findings.ToImmutable();
    }

    /// <summary>A list of words for single rules.</summary>
    private static ImmutableDictionary<string, ImmutableArray<string>> ReadLists(
        Fields fields,
        Book book,
        string topic,
        IEnumerable<string>? vocabulary = null
    )
    {
        var lists = ImmutableDictionary.CreateBuilder<string, ImmutableArray<string>>();
        foreach (var (key, _) in fields.Entries)
        {
            if (RuleNamed(fields, key, book, topic) is not { } rule)
                continue;
            lists[rule.Id] = fields.Texts(key.Text);
            if (vocabulary is not null)
                Known(fields, key.Text, lists[rule.Id], vocabulary);
        }

        return lists.ToImmutable();
    }

    private static ImmutableDictionary<string, Truth> ReadTruths(Fields fields, Book book, string topic)
    {
        var truths = ImmutableDictionary.CreateBuilder<string, Truth>();
        foreach (var (key, _) in fields.Entries)
            if (RuleNamed(fields, key, book, topic) is { } rule && ReadTruth(fields, key.Text) is { } truth)
                truths[rule.Id] = truth;
        return truths.ToImmutable();
    }

    private static Truth? ReadTruth(Fields fields, string key) =>
        fields.Word(key, "yes", "no", "open") switch
        {
            "yes" => Truth.Yes,
            "no" => Truth.No,
            "open" => Truth.Unknown,
            _ => null,
        };

    private static Rule? RuleNamed(Fields fields, Scalar key, Book book, string topic)
    {
        fields.Node(key.Text);
        if (book.Rule(topic + "/" + key.Text) is { } rule)
            return rule;
        fields.Add("unknown-rule", key.Mark, $"'{key.Text}' is not a rule of {topic}", Spelling.Tip(key.Text, [.. Rules(book, topic)]));
        return null;
    }

    private static Outcome? ReadOutcome(Fields fields, Node value) =>
        value switch
        {
            Scalar { Text: "nothing" } => null,
            Sequence { Items: [var best, var worst] } => LimitReader.PathwayOf(fields, best) is { } least
            && LimitReader.PathwayOf(fields, worst) is { } most
                ? new Outcome(least, most)
                : null,
            _ => LimitReader.PathwayOf(fields, value) is { } one ? new Outcome(one, one) : null,
        };

    private static IEnumerable<string> Rules(Book book, string topic) =>
        topic.Split('/') is [var place, var name]
            ? (book.Jurisdiction(place)?.Rules ?? []).Where(rule => rule.Topic == name).Select(rule => rule.Name)
            : [];

    /// <summary>A number of steps, or yes for some, or no for none.</summary>
    private static int? ReadSteps(Fields fields) =>
        fields.Word("before-work", "yes", "no", "0", "1", "2", "3", "4", "5") switch
        {
            null => null,
            "yes" => Expectation.Some,
            "no" => 0,
            var number => number[0] - '0',
        };

    public static Because ReadBecause(Fields fields, Book book, string jurisdiction)
    {
        var (practice, memory, cite) = (fields.Text("common-practice"), fields.Text("memory"), fields.Text("source"));
        var source = cite is null ? null : book.Source(jurisdiction, cite);
        if (new[] { practice, memory, cite }.Count(text => text is not null) != 1)
            fields.Add("one-content", fields.Mark, "a case rests on one thing", "give a source with its clause, common-practice or memory");
        if (cite is not null && source is null)
            fields.Add("unknown-source", fields.Mark, $"'{cite}' is not a source of {jurisdiction}", Tip(cite, book, jurisdiction));
        var because = new Because(
            source?.ReadAs ?? (practice is null ? ReadAs.Memory : ReadAs.CommonPractice),
            source is null ? null : $"{source.Jurisdiction}/{source.Id}",
            fields.Text("clause"),
            fields.Text("note") ?? practice ?? memory,
            fields.Mark
        );
        fields.Done();
        return because;
    }

    private static string Tip(string cite, Book book, string jurisdiction) =>
        Spelling.Tip(cite, [.. (book.Jurisdiction(jurisdiction)?.Sources ?? []).Select(source => source.Id)]);

    private static void Known(Fields fields, string key, ImmutableArray<string> words, IEnumerable<string> vocabulary)
    {
        string[] known = [.. vocabulary];
        foreach (var word in words.Where(word => !known.Contains(word)))
            fields.Add("not-a-word", fields.Node(key)!.Mark, $"'{word}' is not in the vocabulary", Spelling.Tip(word, known));
    }

    private sealed record PathwayWord(Pathway Pathway);
}
