using RuleBook.Answers;
using RuleBook.Jobs;
using RuleBook.Jobs.Reading;
using RuleBook.Law;
using RuleBook.Law.Reading;
using RuleBook.Tests.Jobs;
using RuleBook.Text;

namespace RuleBook.Tests.Answers;

/// <summary>
/// A nation <c>au</c> with two states, <c>au-a</c> and <c>au-b</c>, of a scenario of our own: no figure, title or clause in it is that of
/// any real law.
/// </summary>
internal static class Scenario
{
    public const string Cited = """ "sources": [ { "cite": "law" } ] """;

    public const string Tiers = """
        "tiers": [ { "pathway": "no-certificate", "within": { "suspension-lift": "50 mm", "total-lift": "75 mm" },
        "provided": [ "travel-kept" ] },
                   { "pathway": "certificate", "within": { "suspension-lift": "75 mm", "total-lift": "150 mm" },
                   "provided": [ "travel-kept", "lane-change-test" ] } ], "beyond": "prohibited"
        """;

    private static readonly (string Path, string Text)[] Words =
    [
        (
            "measures",
            $$"""
            { "measures": [ {{Measure(
                "suspension-lift",
                "modification.suspension-lift",
                "\"if-absent\": \"0 mm\", \"below-zero\": \"stated\", \"topics\": [ \"ride-height\" ]"
            )}}, {{Measure("body-lift", "modification.body-lift", "\"if-absent\": \"0 mm\", \"topics\": [ \"ride-height\" ]")}},
              {{Measure(
                "tyre-diameter-growth",
                "modification.tyre-diameter-growth",
                "\"if-absent\": \"0 mm\", \"topics\": [ \"ride-height\" ]"
            )}}, {{Measure("tyre-lift", "tyre-lift", "\"derived\": \"yes\"")}},
              {{Measure("total-lift", "total-lift", "\"derived\": \"yes\"")}}, {{Measure(
                "track-increase",
                "modification.track-increase",
                "\"if-absent\": \"0 mm\", \"own-rule\": \"yes\", \"topics\": [ \"wheels\" ]"
            )}},
              {{Measure("guard-flare", "modification.guard-flare", "\"if-absent\": \"0 mm\"")}},
              {{Measure("frame-height", "measured.frame-height", "\"own-rule\": \"no\", \"topics\": [ \"ride-height\" ]")}},
              { "measure": "built", "title": "built", "unit": "date", "job": "vehicle.built", "definition": "day" } ] }
            """
        ),
        (
            "facts",
            """
            { "facts": [ { "fact": "category", "title": "category", "job": "vehicle.category", "values": [ "MC", "NA" ],
            "definition": "c" },
              { "fact": "stability-control", "title": "sc", "job": "vehicle.stability-control", "values": [ "yes", "no" ],
              "definition": "s" },
              { "fact": "registered", "title": "r", "job": "vehicle.first-registered", "values": [ "yes", "no" ], "definition": "r" } ] }
            """
        ),
        (
            "conditions",
            """
            { "conditions": [ { "condition": "travel-kept", "title": "travel kept", "definition": "t" }, { "condition": "lane-change-test",
            "title": "test", "definition": "t" } ] }
            """
        ),
        (
            "topics",
            """
            { "topics": [ { "topic": "ride-height", "title": "height", "definition": "h" },
              { "topic": "wheels", "title": "wheels", "definition": "w" },
              { "topic": "road-use", "title": "use", "definition": "u", "of-use": "yes" },
              { "topic": "certification", "title": "who", "definition": "c" } ] }
            """
        ),
        ("cautions", """{ "cautions": [ { "caution": "not legal advice" } ] }"""),
    ];

    private static readonly string Sources = $$"""
        { "sources": [ {{Source("law", "primary", "2027-11-25")}}, {{Source("account", "secondary", "2027-11-25")}}, {{Source(
            "practice",
            "common-practice",
            "2027-11-25"
        )}},
          {{Source("recalled", "memory", "2027-11-25")}}, {{Source("stale", "primary", "2026-01-01")}} ] }
        """;

    /// <summary>The book, with files of the state <c>au-a</c>, and of others by their path.</summary>
    public static Book Book(string? rideHeight, params (string Path, string Text)[] more)
    {
        (string Path, string Text)[] files =
        [
            .. Words.Select(each => ($"schema/vocabulary/{each.Path}", each.Text)),
            (
                "jurisdictions/au/jurisdiction",
                """{ "jurisdiction": "au", "name": "Nation", "registers": "no", "registers-note": "The states register.", "ask": {"""
                    + """ "authority": "Department" } }"""
            ),
            ("jurisdictions/au/sources", Sources),
            (
                "jurisdictions/au-a/jurisdiction",
                """
                { "jurisdiction": "au-a", "name": "State A", "within": "au", "decided-by": "work", "ask": { "authority": "Office A",
                "url": "https://example.org/a" },
                  "cautions": [ { "caution": "take care with stability control", "when": { "stability-control": "yes" } } ] }
                """
            ),
            ("jurisdictions/au-a/sources", Sources),
            (
                "jurisdictions/au-b/jurisdiction",
                """{ "jurisdiction": "au-b", "name": "State B", "within": "au", "ask": { "authority": "Office B" } }"""
            ),
            ("jurisdictions/au-b/sources", Sources),
            .. rideHeight is null ? [] : new[] { ("jurisdictions/au-a/ride-height", Topic("ride-height", rideHeight)) },
            .. more,
        ];
        var problems = new List<Problem>();
        var book = BookReader.Read(
            [.. files.GroupBy(each => each.Path).Select(same => new BookFile($"{same.Key}.yaml", Nodes.Of(same.Last().Text)))],
            "made",
            problems
        );
        problems.ShouldBeEmpty();
        return book;
    }

    /// <summary>A topic's file with one rule for every vehicle, in force since 2012 with this content.</summary>
    public static Book Stating(string content) => Book(Rule("raise", Since("2012-01-01", content)));

    public static string Topic(string topic, string rules) => $$"""{ "topic": "{{topic}}", "rules": [ {{rules}} ] }""";

    public static string Rule(string name, string versions, string more = "") =>
        $$"""{ "rule": "{{name}}", "title": "{{name}}", {{more}} "versions": [ {{versions}} ] }""";

    public static string Since(string from, string content, string cite = "law") =>
        $$"""{ "from": "{{from}}", "sources": [ { "cite": "{{cite}}" } ], {{content}} }""";

    /// <summary>A job in <c>au-a</c> on 25 November 2026.</summary>
    public static Assessment Assess(Book book, string more, string? elsewhere = null) => Assessor.Assess(book, Read(book, more), elsewhere);

    public static Job Read(Book book, string more) =>
        JobReader.Read(Nodes.Of($$"""{ "registered-in": "au-a", "on": "2026-11-25", {{more}} }"""), book);

    public static string Lift(string suspension) => $$""" "modification": { "suspension-lift": "{{suspension}}" } """;

    private static string Measure(string name, string job, string more) =>
        $$"""{ "measure": "{{name}}", "title": "{{name}}", "unit": "mm", "job": "{{job}}", {{more}}, "definition": "d" }""";

    private static string Source(string id, string readAs, string recheck) =>
        $$"""{ "source": "{{id}}", "title": "{{id}}", "publisher": "p", "read-as": "{{readAs}}", "checked": "2025-11-25","""
        + $$""" "recheck-after": "{{recheck}}" }""";
}
