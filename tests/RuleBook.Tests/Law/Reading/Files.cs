using RuleBook.Law;
using RuleBook.Law.Reading;
using RuleBook.Tests.Jobs;
using RuleBook.Text;

namespace RuleBook.Tests.Law.Reading;

/// <summary>
/// The files of a small book of a scenario of our own: a nation <c>au</c> (whose sources the reference may cite) and a state <c>xa</c>.
/// </summary>
internal static class Files
{
    private static readonly (string Path, string Text)[] Written =
    [
        (
            "schema/vocabulary/measures",
            """
            { "measures": [
              { "measure": "suspension-lift", "title": "lift", "unit": "mm", "job": "modification.suspension-lift", "if-absent": "0 mm",
              "topics": [ "ride-height" ], "definition": "how far" },
              { "measure": "total-lift", "title": "total", "unit": "mm", "job": "modification.total-lift", "derived": "yes",
              "own-rule": "yes", "definition": "sum" },
              { "measure": "doors", "title": "doors", "unit": "count", "job": "vehicle.doors", "definition": "how many" },
              { "measure": "built", "title": "built", "unit": "date", "job": "vehicle.built", "definition": "day" },
              { "measure": "track", "title": "track", "unit": "mm", "job": "vehicle.track", "definition": "between the wheels" } ] }
            """
        ),
        (
            "schema/vocabulary/facts",
            """
            { "facts": [ { "fact": "category", "title": "category", "job": "vehicle.category", "values": "categories",
            "definition": "by the design rules" },
              { "fact": "stability-control", "title": "stability control", "job": "vehicle.stability-control", "values": [ "yes", "no" ],
              "definition": "fitted" } ] }
            """
        ),
        (
            "schema/vocabulary/categories",
            """
            { "categories": [ { "category": "MC", "title": "off-road", "definition": "MC" }, { "category": "NA", "title": "light goods",
            "definition": "NA" } ] }
            """
        ),
        (
            "schema/vocabulary/conditions",
            """{ "conditions": [ { "condition": "lane-change-test", "title": "test", "definition": "passed" } ] }"""
        ),
        (
            "schema/vocabulary/topics",
            """
            { "topics": [ { "topic": "ride-height", "title": "height", "definition": "lift" },
              { "topic": "certification", "title": "who certifies", "definition": "who", "of-use": "yes" } ] }
            """
        ),
        (
            "schema/vocabulary/pathways",
            """{ "pathways": [ { "pathway": "certificate", "title": "certificate", "definition": "by an engineer" } ] }"""
        ),
        ("schema/vocabulary/cautions", """{ "cautions": [ { "caution": "not legal advice" } ] }"""),
        (
            "schema/reference/sources",
            """
            { "sources": [ { "source": "table", "title": "Table", "publisher": "Somebody", "read-as": "memory", "checked": "2026",
            "recheck-after": "2027" } ] }
            """
        ),
        (
            "schema/reference/fluids",
            """
            { "fluids": [ { "fluid": "diesel", "density": "0.835 kg/L", "at-least": "0.82 kg/L", "at-most": "0.85 kg/L",
            "sources": [ { "cite": "table" } ] } ] }
            """
        ),
        ("schema/reference/tare", """{ "tare": { "fuel": "10 L", "sources": [ { "cite": "au/act" } ] } }"""),
        (
            "schema/reference/uncertainties",
            """
            { "guard-factor": "0.5", "guard-factor-why": "so", "left-right-warning": { "difference": "20 mm",
            "sources": [ { "cite": "table" } ] },
              "uncertainties": [ { "measure": "suspension-lift", "uncertainty": "5 mm", "why": "tape" }, { "measure": "weighbridge",
              "uncertainty": "10 kg", "why": "scale" } ],
              "sources": [ { "cite": "table" } ] }
            """
        ),
        (
            "schema/reference/tyre-sizes",
            """{ "tyre-sizes": { "sizes": [ "265/65R17", "265/70R17" ], "sources": [ { "cite": "table" } ] } }"""
        ),
        (
            "schema/reference/speedometer",
            """
            { "speedometer": [ { "jurisdiction": "xa", "from": "2006-07-01", "before": "2030-01-01", "sources": [ { "cite": "table" } ],
              "rules": [ { "rule": "first", "under": "0 %", "over": "10 %", "over-constant": "4 km/h", "above": "40 km/h" } ] } ] }
            """
        ),
        (
            "schema/reference/clearance",
            """
            { "clearance": { "midway-per-metre": "33.33 mm", "running": "100 mm", "midway-state": "loaded", "running-state": "unladen",
              "sources": [ { "cite": "table" } ] } }
            """
        ),
        (
            "schema/reference/towing",
            """
            { "towing": [ { "jurisdiction": "xa", "braked": "150 %", "unbraked": "100 %", "sources": [ { "cite": "table" } ] } ] }
            """
        ),
        (
            "schema/reference/tyre-speeds",
            """
            { "tyre-speeds": [ { "condition": "lane-change-test", "kinds": [ { "category": [ "MC" ], "speed": "140 km/h" },
              { "speed": "120 km/h" } ], "sources": [ { "cite": "table" } ] } ] }
            """
        ),
        (
            "jurisdictions/au/jurisdiction",
            """{ "jurisdiction": "au", "name": "Nation", "registers": "no", "registers-note": "the states do", "ask": { "authority":"""
                + """ "Department" } }"""
        ),
        (
            "jurisdictions/au/sources",
            """
            { "sources": [ { "source": "act", "title": "Act", "publisher": "Nation", "read-as": "primary", "checked": "2026-11-25",
              "recheck-after": "2027-11-25" } ] }
            """
        ),
        (
            "jurisdictions/xa/jurisdiction",
            """
            { "jurisdiction": "xa", "name": "State", "aliases": [ "old-xa" ], "within": "au", "decided-by": "work",
              "ask": { "authority": "Office", "url": "https://example.org/" },
              "coverage": [ { "topic": "ride-height", "state": "partial", "lacks": "towing" } ],
              "cautions": [ { "caution": "take care", "when": { "stability-control": "yes" }, "sources": [ { "cite": "law" } ] } ] }
            """
        ),
        (
            "jurisdictions/xa/sources",
            """
            { "sources": [ { "source": "law", "title": "Law", "publisher": "State", "edition": "3", "dated": "2018-10",
              "url": "https://example.org/law", "read-as": "secondary",
              "checked": "2026-11-25", "recheck-after": "2027-11", "aliases": [ "old-law" ], "note": "read twice" } ] }
            """
        ),
        (
            "jurisdictions/xa/ride-height",
            """
            { "topic": "ride-height", "rules": [ { "rule": "raise", "title": "Raising", "aliases": "lift",
              "for": { "category": [ "MC", "NA" ] }, "decided-by": "inspection", "governed-by": "travel",
              "versions": [
                { "from": "2012-01-01", "until": "2018-10-26", "sources": [ { "cite": "law", "clause": "4.2", "note": "table" } ],
                  "note": "first",
                  "measured": { "between": [ "wheel-centre", "guard-edge" ], "mass-state": "unladen", "total": [ "suspension-lift" ],
                    "note": "level" },
                  "tiers": [
                    { "pathway": "no-certificate", "within": { "suspension-lift": "50 mm", "total-lift": "none" },
                      "provided": [ "lane-change-test" ] },
                    { "name": "engineered", "pathway": "certificate", "codes": [ "LS9" ], "note": "with an engineer",
                      "sources": [ { "cite": "law" } ],
                      "when": { "stability-control": "yes", "track": { "over": "1400 mm", "under": "1600 mm" },
                        "built": { "from": "2010-01-01", "before": "2020-01-01" } },
                      "within": { "suspension-lift": { "at-least": "1 in", "at-most": "75 mm" }, "total-lift": "not-established" } } ],
                  "beyond": "prohibited" },
                { "from": "2018-10-26", "adopts": { "rule": "au/ride-height/raise", "as-of": "2018-01-01" },
                  "except": [ { "tier": "certificate", "within": { "total-lift": "125 mm" } }, { "tier": "approval", "drop": "yes" },
                    { "add": { "pathway": "approval" }, "sources": [ { "cite": "law" } ] }, { "tier": "no-certificate",
                      "provided": [ ] } ] },
                { "from": "unknown", "in-force-by": "2021", "tiers": [ { "pathway": "approval" } ], "beyond": "not-established" },
                { "announced": "2027-07-01", "not-established": { "ask": "Office", "open": "the notice",
                  "indication": "au/ride-height/raise" } },
                { "proposed": "yes", "not-regulated": "no rule",
                  "disputed": [ { "about": "the figure", "readings": [ { "says": "50", "sources": [ { "cite": "law" } ] } ],
                    "taken": "50", "because": "newer" } ] } ] } ] }
            """
        ),
        (
            "jurisdictions/xa/certification",
            """
            { "topic": "certification", "schemes": [ { "scheme": "engineers", "title": "Engineers", "aliases": [ "old" ],
              "for": { "category": "MC" }, "versions": [
              { "from": "2013", "until": "2030", "certifier": "engineer", "appointed-by": "Office", "decides": "certifier",
                "accepts-appointed-in": [ "xb" ],
                "issued": [ { "pathway": "certificate", "papers": [ "certificate", "plate" ] } ],
                "steps": [ { "text": "ask first", "before-work": "yes", "pathways": [ "certificate", "approval" ],
                  "sources": [ { "cite": "law" } ] }, { "text": "inspect", "pathways": "approval" } ],
                "reregistering": "again", "fees": [ { "what": "plate", "amount": "30 AUD", "from": "2026",
                  "sources": [ { "cite": "law" } ] } ],
                "not-established": [ "how long" ], "sources": [ { "cite": "law" } ], "note": "so" },
              { "from": "unknown", "in-force-by": "2030" } ] } ] }
            """
        ),
    ];

    /// <summary>The book, in which nothing is wrong.</summary>
    public static Book Sound()
    {
        var problems = new List<Problem>();
        var book = BookReader.Read(All(), "made", problems);
        problems.ShouldBeEmpty();
        return book;
    }

    /// <summary>What is wrong once a passage of a file says something else: codes and places.</summary>
    public static IEnumerable<string> Wrong(string file, string passage, string instead)
    {
        var problems = new List<Problem>();
        BookReader.Read(All(file, passage, instead), "made", problems);
        return problems.Select(problem => $"{problem.Code} {problem.Mark.File}");
    }

    private static BookFile[] All(string? file = null, string? passage = null, string? instead = null)
    {
        if (file is not null)
            Written.Single(each => each.Path == file).Text.ShouldContain(passage!);
        return
        [
            .. Written.Select(each => new BookFile(
                $"{each.Path}.yaml",
                Nodes.Of(each.Path == file ? each.Text.Replace(passage!, instead) : each.Text)
            )),
        ];
    }
}
