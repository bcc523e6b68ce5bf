using System.Collections.Immutable;
using System.Xml.Linq;
using RuleBook.Authoring.Cases;
using RuleBook.Yaml;
using Case = RuleBook.Authoring.Cases.Case;

namespace RuleBook.Authoring.Tests.Cases;

/// <summary>Results of cases for machines, from two files of one invented state (derived).</summary>
[Trait("Basis", "derived")]
public sealed class CaseReportTests
{
    private static readonly CaseResult[] Results =
    [
        .. Read(
                "ride-height",
                """
                vehicles: { wagon: { category: MC } }
                cases:
                  - id: first
                    says: Fifty is free.
                    vehicle: wagon
                    changes: { modification: { suspension-lift: 50 mm } }
                    on: 2020-01-01
                    expect: { between: [no-certificate, certificate] }
                    because: { source: act, clause: "4", note: fifty }
                    then:
                      a-tenth-more: { changes: { modification: { suspension-lift: 50.1 mm } }, expect: { verdict: undecided } }
                """
            )
            .Select((one, at) => new CaseResult(one, at == 0 ? [] : ["expected this", "got that"])),
        .. Read(
                "towing",
                """
                vehicles: { wagon: { category: MC } }
                cases:
                  - { id: second, says: A trailer., vehicle: wagon, on: 2020-01-01, expect: { verdict: prohibited }, because: { memory: so } }
                """
            )
            .Select(one => new CaseResult(one, [])),
    ];

    [Fact]
    public void The_json_counts_and_tells_each_case_with_its_place_and_source() =>
        CaseReport
            .Json(Results)
            .ShouldBe(
                """
                {
                  "run": 3,
                  "failed": 1,
                  "edges": 1,
                  "open": 2,
                  "cases": [
                    {
                      "case": "first",
                      "says": "Fifty is free.",
                      "at": "ride-height.yaml:3:5",
                      "because": "xa-n/act, 4: fifty",
                      "edge": false,
                      "passed": true,
                      "failures": []
                    },
                    {
                      "case": "first/a-tenth-more",
                      "says": "Fifty is free.",
                      "at": "ride-height.yaml:11:21",
                      "because": "xa-n/act, 4: fifty",
                      "edge": true,
                      "passed": false,
                      "failures": [
                        "expected this",
                        "got that"
                      ]
                    },
                    {
                      "case": "second",
                      "says": "A trailer.",
                      "at": "towing.yaml:3:5",
                      "because": "memory: so",
                      "edge": false,
                      "passed": true,
                      "failures": []
                    }
                  ]
                }

                """.ReplaceLineEndings("\n")
            );

    [Fact]
    public void The_junit_xml_has_a_suite_a_file_and_a_failure_with_what_the_case_says() =>
        XElement
            .Parse(CaseReport.Junit(Results))
            .ToString(SaveOptions.DisableFormatting)
            .ShouldBe(
                """<testsuites><testsuite name="xa-n/ride-height" tests="2" failures="1">"""
                    + """<testcase classname="xa-n/ride-height" name="first" file="ride-height.yaml" line="3" />"""
                    + """<testcase classname="xa-n/ride-height" name="first/a-tenth-more" file="ride-height.yaml" line="11">"""
                    + "<failure message=\"expected this; got that\">Fifty is free.\nxa-n/act, 4: fifty</failure></testcase></testsuite>"
                    + """<testsuite name="xa-n/towing" tests="1" failures="0">"""
                    + """<testcase classname="xa-n/towing" name="second" file="towing.yaml" line="3" /></testsuite></testsuites>"""
            );

    private static ImmutableArray<Case> Read(string topic, string text)
    {
        var problems = new List<RuleBook.Text.Problem>();
        var read = new CaseReader(InventedBook.Book, "xa-n", topic, problems).Read(YamlText.Read(text, $"{topic}.yaml"));
        problems.ShouldBeEmpty();
        return read;
    }
}
