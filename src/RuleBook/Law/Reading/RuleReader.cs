using System.Collections.Immutable;
using RuleBook.Text;
using RuleBook.Units;

namespace RuleBook.Law.Reading;

/// <summary>Reads a topic file: rules and their versions.</summary>
/// <param name="jurisdiction">The folder.</param>
/// <param name="topic">The name of the file.</param>
/// <param name="vocabulary">The words of the book.</param>
/// <param name="head">What stands at the head of the file.</param>
internal sealed class RuleReader(string jurisdiction, string topic, Vocabulary vocabulary, ImmutableArray<Node> head)
{
    private readonly LimitReader limits = new(vocabulary);

    public ImmutableArray<Rule> ReadAll(Fields file)
    {
        var stated = file.Required("topic");
        if (stated != topic)
            file.Add(
                "wrong-folder",
                file.Mark,
                $"the topic '{stated}' stands in {topic}.yaml",
                $"write 'topic: {topic}', or name the file after the topic"
            );
        JurisdictionReader.Stands(file, jurisdiction);
        var rules = file.List("rules", node => ReadRule(new Fields(node, file.Problems)));
        file.Done();
        return rules;
    }

    private Rule ReadRule(Fields fields)
    {
        var defaults = new RuleDefaults(
            fields.Nested("measured") is { } measured ? ReadMeasured(measured) : null,
            fields.List("sources", node => ReadOf(new Fields(node, fields.Problems), SourceReader.Citation)),
            fields.List("disputed", node => ReadOf(new Fields(node, fields.Problems), ReadDispute)),
            fields.List("notes", node => ReadOf(new Fields(node, fields.Problems), ReadNote))
        );
        var rule = new Rule
        {
            Jurisdiction = jurisdiction,
            Topic = topic,
            Name = fields.Required("rule"),
            Aliases = fields.Texts("aliases"),
            Title = fields.Required("title"),
            For = limits.ReadDescriptions(fields.Nested("for")),
            DecidedBy = fields.Word("decided-by", "work", "certification", "inspection"),
            GovernedByTravel = fields.Word("governed-by", "registration", "travel") == "travel",
            Versions = ReadVersions(fields, defaults),
            Mark = fields.Mark,
        };
        if (fields.Node("like") is { } like)
            fields.Add("unknown-rule", like.Mark, $"no rule of this file above is '{fields.Text("like")}'", "name one that stands above");
        else if (!fields.Has("versions"))
            fields.Missing("versions");
        foreach (var key in WrittenOut.Contents.Where(fields.Has))
            fields.Add(
                "one-content",
                fields.Node(key)!.Mark,
                $"the rule has versions, and '{key}' stands beside them",
                "move it into the version whose content it is"
            );
        fields.Done();
        return rule;
    }

    private ImmutableArray<RuleVersion> ReadVersions(Fields rule, RuleDefaults defaults)
    {
        var before = new Dictionary<string, RuleVersion>(StringComparer.Ordinal);
        var versions = rule.List(
            "versions",
            node =>
            {
                var fields = new Fields(node, rule.Problems);
                var start = StartOf(fields);
                var version = before[start] = ReadVersion(fields, before);
                return defaults.Complete(version, start);
            }
        );
        foreach (
            var (starts, mark) in defaults
                .Sources.Select(entry => (entry.Starts, entry.Mark))
                .Concat(defaults.Disputes.Select(entry => (entry.Starts, entry.Mark)))
                .Concat(defaults.Notes.Select(entry => (entry.Starts, entry.Mark)))
        )
        foreach (var start in starts.Where(start => !before.ContainsKey(start)))
            rule.Add("unknown-version", mark, $"no version of this rule is from '{start}'", Among(before.Keys));
        return versions;
    }

    /// <summary>By what <c>like</c> and <c>of</c> name a version: its start as written; an announced or proposed one by that.</summary>
    private static string StartOf(Fields fields) =>
        (fields.Node("from") ?? fields.Node("announced")) is Scalar start ? start.Text.Trim()
        : fields.Has("proposed") ? "proposed"
        : "";

    private static string Among(IEnumerable<string> starts) =>
        string.Join(", ", starts) is { Length: > 0 } all ? $"name one of {all}" : "no version stands before this one";

    private static Of<T> ReadOf<T>(Fields fields, Func<Fields, T> read)
    {
        var starts = fields.Texts("of");
        return new Of<T>(starts, read(fields), fields.Mark);
    }

    private RuleVersion ReadVersion(Fields fields, Dictionary<string, RuleVersion> before)
    {
        var like = fields.Text("like");
        var changes = fields.List("change", node => limits.ReadDeparture(new Fields(node, fields.Problems)));
        var earlier = like is null ? null : before.GetValueOrDefault(like);
        if (like is not null && earlier is null)
            fields.Add("unknown-version", fields.Node("like")!.Mark, $"no version above this one is from '{like}'", Among(before.Keys));
        if (like is null && fields.Node("change") is { } alone)
            fields.Add(
                "change-alone",
                alone.Mark,
                "it is not said which version this changes",
                "add 'like' with the 'from' of an earlier version"
            );
        var version = new RuleVersion(
            ReadFrom(fields),
            fields.Partial("in-force-by"),
            fields.Partial("until"),
            fields.Partial("announced"),
            fields.YesNo("proposed") ?? false,
            SourceReader.Citations(fields),
            fields.Nested("measured") is { } measured ? ReadMeasured(measured) : null,
            like is null ? ReadContent(fields) : LikeContent(fields),
            fields.List("disputed", node => ReadDispute(new Fields(node, fields.Problems))),
            fields.Text("note"),
            fields.Mark
        )
        {
            WarningOnly = fields.YesNo("warning-only") ?? false,
            OfHead = [.. WrittenOut.OfFile.Where(key => fields.Node(key) is { } node && head.Contains(node))],
            NotFound = fields.Texts("not-found"),
            InWhole = fields.Text("in-whole"),
            Corrected = fields.List("corrected", node => ReadCorrection(new Fields(node, fields.Problems))),
        };
        if (version is { WarningOnly: true, Content: NotRegulated or NotEstablished } && like is null)
            WithoutEffect(fields, "warning-only", "nothing is stated that could be broken", "take it out, or state the tiers");
        fields.Done();
        if (earlier is null)
            return version;
        var likeness = new Likeness(like!, changes, fields.Node("like")!.Mark);
        CheckChanges(fields, earlier, likeness);
        return Inheritance.Apply(version, earlier, likeness, LimitReader.ReadBeyond(fields), fields.Has("beyond"));
    }

    /// <summary>A date, or null for <c>unknown</c> or nothing.</summary>
    public static Units.PartialDate? ReadFrom(Fields fields) =>
        fields.Node("from") is Scalar { Text: "unknown" } ? null : fields.Partial("from");

    /// <summary>Stands in until the earlier version is taken over; contents of its own beside <c>like</c> are refused.</summary>
    private static NotEstablished LikeContent(Fields fields)
    {
        _ = fields.Has("beyond");
        foreach (var key in (string[])[.. WrittenOut.Contents, "except"])
            if (fields.Node(key) is { } node)
                fields.Add(
                    "one-content",
                    node.Mark,
                    $"a version that is like another one says what changes, and not '{key}'",
                    "give 'change', or leave 'like' out and state it all"
                );
        return new NotEstablished("", null, null);
    }

    private static void WithoutEffect(Fields fields, string key, string why, string tip)
    {
        if (fields.Node(key) is { } node)
            fields.Add("key-without-effect", node.Mark, $"'{key}' does nothing here: {why}", tip);
    }

    private static void CheckChanges(Fields fields, RuleVersion earlier, Likeness like)
    {
        if (earlier.Content is not (Stated or Adoption) && !like.Changes.IsEmpty)
            fields.Add(
                "nothing-to-change",
                like.Mark,
                $"the version from '{like.From}' has no tiers that could be changed",
                "state the tiers, or take 'change' out"
            );
        if (earlier.Content is not Stated stated)
            return;
        string[] tiers = [.. stated.Tiers.Select(tier => tier.Name), .. like.Changes.Select(change => change.Added?.Name).OfType<string>()];
        foreach (var change in like.Changes.Where(change => change.Tier is { } named && !tiers.Contains(named)))
            fields.Add(
                "unknown-tier",
                change.Mark,
                $"the version from '{like.From}' has no tier '{change.Tier}'",
                Spelling.Tip(change.Tier!, tiers)
            );
    }

    private Content ReadContent(Fields fields)
    {
        var tiers = fields
            .List("tiers", node => (IReadOnlyList<Tier>)limits.ReadTiers(new Fields(node, fields.Problems)))
            .SelectMany(read => read)
            .ToImmutableArray();
        var beyond = LimitReader.ReadBeyond(fields);
        var exceptions = fields.List("except", node => limits.ReadDeparture(new Fields(node, fields.Problems)));
        if (!fields.Has("tiers"))
            WithoutEffect(
                fields,
                "beyond",
                "without 'tiers' nothing lies beyond them",
                "take it out; what is adopted brings its own, and an exception changes that: except: [ { beyond: approval } ]"
            );
        if (!fields.Has("adopts"))
            WithoutEffect(fields, "except", "without 'adopts' there is nothing to make an exception from", "change the tiers themselves");
        var contents = new List<Content>();
        if (tiers.Length > 0 || fields.Has("tiers"))
            contents.Add(new Stated(tiers, beyond));
        if (fields.Nested("adopts") is { } adopts)
            contents.Add(ReadAdoption(adopts, exceptions));
        if (fields.Nested("not-established") is { } unknown)
            contents.Add(ReadNotEstablished(unknown));
        if (fields.Text("not-regulated") is { } why)
            contents.Add(new NotRegulated(why));
        if (contents.Count == 1)
            return contents[0];
        fields.Add(
            "one-content",
            fields.Mark,
            $"a version says one thing, this one says {contents.Count}",
            "give one of tiers, adopts, not-established or not-regulated"
        );
        return new NotEstablished("", null, null);
    }

    /// <summary>A day; null where there is none or it is not one.</summary>
    private static DateOnly? AsOf(Fields fields)
    {
        if (fields.Node("as-of") is not Scalar { Text: { } text } value || CalendarDay.TryParse(text, out _))
            return fields.Day("as-of");
        fields.Add(
            "not-a-date",
            value.Mark,
            $"'{text}' is not a day of the calendar",
            "write year-month-day, such as 2018-10-26, or 'amended' for as amended from time to time"
        );
        return null;
    }

    private static Adoption ReadAdoption(Fields fields, ImmutableArray<Departure> exceptions)
    {
        var amended = fields.Node("as-of") is Scalar { Text: "amended" };
        if (!fields.Has("as-of"))
            fields.Missing("as-of");
        var adoption = new Adoption(fields.Required("rule"), amended ? null : AsOf(fields), exceptions, fields.Mark);
        fields.Done();
        return adoption;
    }

    private static Correction ReadCorrection(Fields fields)
    {
        if (!fields.Has("on"))
            fields.Missing("on");
        var correction = new Correction(
            fields.Day("on") ?? DateOnly.MinValue,
            fields.Required("was"),
            fields.Required("because"),
            fields.Mark
        );
        fields.Done();
        return correction;
    }

    private static NotEstablished ReadNotEstablished(Fields fields)
    {
        var content = new NotEstablished(fields.Required("ask"), fields.Text("open"), fields.Text("indication"));
        fields.Done();
        return content;
    }

    private Measured ReadMeasured(Fields fields)
    {
        var measured = new Measured(
            fields.Texts("between"),
            fields.Word("mass-state", "tare", "unladen", "loaded", "not-established"),
            fields.Texts("total"),
            fields.Text("note")
        )
        {
            Allowances = [.. ReadAllowances(fields.Nested("tolerance"), false), .. ReadAllowances(fields.Nested("to-nearest"), true)],
        };
        foreach (var twice in measured.Allowances.GroupBy(allowance => allowance.Measure).Where(same => same.Count() > 1))
            fields.Add(
                "one-content",
                twice.Last().Mark,
                $"'{twice.Key}' has a tolerance, and is taken to the nearest step as well",
                "keep the one that the source states"
            );
        fields.Done();
        return measured;
    }

    private IEnumerable<Allowance> ReadAllowances(Fields? fields, bool toNearest)
    {
        if (fields is null)
            yield break;
        foreach (var (key, value) in fields.Entries)
            if (limits.FindMeasure(fields, key) is { } measure && fields.QuantityOf(value, measure.Unit.Dimension) is { } amount)
            {
                if (!amount.Base.IsPositive)
                    fields.Add("not-a-quantity", value.Mark, $"'{amount}' is nothing to be taken by", "give more than nothing");
                else
                    yield return new Allowance(measure.Name, amount, toNearest, key.Mark);
            }
    }

    private static string ReadNote(Fields fields)
    {
        var note = fields.Required("note");
        fields.Done();
        return note;
    }

    /// <summary>Sources that disagree; the reading that stands first is taken where nothing is said.</summary>
    private static Dispute ReadDispute(Fields fields)
    {
        var readings = fields.List(
            "readings",
            node =>
            {
                var inner = new Fields(node, fields.Problems);
                var reading = new DisputedReading(inner.Required("says"), SourceReader.Citations(inner));
                inner.Done();
                return reading;
            }
        );
        var dispute = new Dispute(
            fields.Required("about"),
            readings,
            readings is [var first, ..] && !fields.Has("taken") ? first.Says : fields.Required("taken"),
            fields.Required("because"),
            fields.Mark
        );
        fields.Done();
        return dispute;
    }
}
