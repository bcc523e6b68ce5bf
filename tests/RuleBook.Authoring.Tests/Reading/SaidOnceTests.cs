using RuleBook.InForce;
using RuleBook.Law;
using RuleBook.Law.Reading;
using RuleBook.Telling;
using RuleBook.Text;
using RuleBook.Yaml;

namespace RuleBook.Authoring.Tests.Reading;

/// <summary>What the data say once, or without a sentence, is told as if it stood where it holds (invented rules and schemes).</summary>
public sealed class SaidOnceTests
{
    private const string Versions = """
        - from: 2011-01-01
          sources: [ { cite: law, clause: "1" } ]
          not-established: { ask: Somebody }
          not-found: [suspension lift, tests]
          note: "Only the contents were read."
        - from: 2018-10-26
          sources: [ { cite: law, clause: "2" } ]
          tiers: [ { pathway: no-certificate, within: { suspension-lift: 50 mm } } ]
          beyond: prohibited
          disputed:
            - about: the figure
              readings: [ { says: 50 mm, sources: [ { cite: law } ] }, { says: 60 mm, sources: [ { cite: law } ] } ]
              because: It is the stricter.
          not-found: how far a certificate reaches
          in-whole: pounds
        - { from: 2020-07-01, sources: [ { cite: law, clause: "3" } ], like: 2018-10-26 }
        """;

    private static readonly Book Book = SmallBook.WithVersions(
        Versions,
        more: """
          notes:
            - { note: Ask before the work., of: [2011-01-01, 2018-10-26] }
            - { note: Shown for every version. }
        """
    );

    [Theory]
    [InlineData(
        "2012-01-01",
        "Only the contents were read. Ask before the work. Shown for every version.",
        "Looked for and not found: suspension lift; tests. That is no proof that there is no limit."
    )]
    [InlineData(
        "2019-01-01",
        "The classes are written in whole pounds; a rating between two whole pounds, as a plate in other units may have it, is "
            + "taken to be in the lower class.",
        "Ask before the work. Shown for every version.",
        "Looked for and not found: how far a certificate reaches."
    )]
    [InlineData(
        "2021-01-01",
        "The classes are written in whole pounds; a rating between two whole pounds, as a plate in other units may have it, is "
            + "taken to be in the lower class.",
        "Shown for every version.",
        "Looked for and not found: how far a certificate reaches."
    )]
    public void A_note_of_the_rule_follows_those_of_the_versions_it_names_and_what_was_not_found_comes_last(
        string day,
        params string[] told
    ) => NoteWords.Of(InForce(day)).ShouldBe(told);

    [Theory]
    [InlineData("2019-01-01")]
    [InlineData("2021-01-01")]
    public void The_reading_that_stands_first_is_taken(string day) => InForce(day).Disputes.Single().Taken.ShouldBe("50 mm");

    [Fact]
    public void A_step_like_one_above_is_as_that_one_in_what_it_does_not_say()
    {
        var problems = new List<Problem>();
        var steps = SchemeReader
            .ReadAll(
                new Fields(
                    YamlText.Read(
                        """
                        topic: certification
                        jurisdiction: au-qld
                        schemes:
                          - scheme: engineers
                            title: Engineers
                            versions:
                              - from: 2011
                                sources: [ { cite: law, clause: "1" } ]
                                steps:
                                  - { step: apply, text: Apply first., before-work: yes, pathways: [approval], topics: [ride-height],
                                      sources: [ { cite: law, clause: "2" } ] }
                              - from: 2018
                                sources: [ { cite: law, clause: "3" } ]
                                steps:
                                  - { like: apply, sources: [ { cite: law, clause: "4" } ] }
                                  - { like: apply, pathways: [certificate], before-work: no }
                        """,
                        "certification.yaml"
                    ),
                    problems
                ),
                "au-qld",
                Book.Vocabulary
            )
            .Single()
            .Versions[1]
            .Steps;

        problems.ShouldBeEmpty();
        steps
            .Select(step => (step.Text, step.BeforeWork, step.Pathways.Single(), step.Topics.Single(), step.Sources.Single().Clause))
            .ShouldBe([
                ("Apply first.", true, Pathway.Approval, "ride-height", "4"),
                ("Apply first.", false, Pathway.Certificate, "ride-height", "2"),
            ]);
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void What_a_rule_leaves_to_the_head_of_its_file_is_known_of_each_of_its_versions_wherever_that_stands(bool above)
    {
        const string Head = """
            from: 2011-01-01
            sources: [ { cite: law, clause: "1" } ]
            measured: { mass-state: unladen }
            """;
        const string Below = """
            rules:
              - rule: all
                title: All of it
                for: { category: MA }
                tiers: [ { pathway: no-certificate } ]
                beyond: prohibited
                later: [ { from: 2012-01-01, sources: [ { cite: law } ], not-regulated: Repealed. } ]
              - rule: own-sources
                title: Its start and how it is measured
                for: { category: MB }
                sources: [ { cite: law, clause: "2" } ]
                tiers: [ { pathway: no-certificate } ]
                beyond: prohibited
              - rule: own
                title: None of it
                for: { category: MC }
                from: 2013-01-01
                sources: [ { cite: law, clause: "3" } ]
                not-regulated: Never was.
            """;
        var rules = SmallBook
            .Of(("au-qld", $"topic: ride-height\n{(above ? Head : Below)}\n{(above ? Below : Head)}"))
            .Jurisdiction("au-qld")!
            .Rules;

        rules
            .SelectMany(rule => rule.Versions)
            .Select(version => string.Join(' ', version.OfHead))
            .ShouldBe(["from sources measured", "", "from measured", ""]);
    }

    private static ResolvedVersion InForce(string day) =>
        Resolver.Resolve(Book, Book.Jurisdiction("au-qld")!.Rules[0], DateOnly.ParseExact(day, "yyyy-MM-dd")).Single();
}
