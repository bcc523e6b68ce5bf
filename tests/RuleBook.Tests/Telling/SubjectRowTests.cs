using System.Text.Json.Nodes;
using RuleBook.Answers;
using RuleBook.Figures;
using RuleBook.Law;
using RuleBook.Physics.Masses;
using RuleBook.Physics.Towing;
using RuleBook.Tables;
using RuleBook.Telling;
using RuleBook.Text;
using RuleBook.Units;
using static RuleBook.Tests.Answers.Scenario;

namespace RuleBook.Tests.Telling;

/// <summary>The line of each subject and the words of what is open, by hand beside answers made for them.</summary>
[Trait("Basis", "derived")]
public sealed class SubjectRowTests
{
    private static readonly Assessment Free = Assess(Stating(Tiers), Lift("40 mm"));

    [Fact]
    public void Masses_and_the_combination_are_told_against_the_ratings_that_apply()
    {
        LoadCheck[] left = [Load("gvm", 2140, 2100), Load("gvm", 2140, 2200), Load("front-axle", 1100, 1050), Load("rear-axle", 960, 1000)];
        var masses = Masses(Budget(2060), Budget(2140, left)) with
        {
            Towing = new TowingAnswer(null, null, null, null, null, null, null, null) with
            {
                Planned = new CombinationCheck(
                    [
                        Load("gcm", 3640, 3700),
                        Load("atm", 1500, 1600),
                        Load("gtm", 1400, 1450),
                        Load("ball", 100, 150),
                        Load("braked-tow", 1500, 2000),
                        Load("unbraked-tow", 1500, 2100),
                        Load("towbar", 1500, 2500),
                    ],
                    []
                ),
            },
        };
        Rows(Free with { Masses = masses })
            .ShouldBe([
                "Masses: unladen 2060 / loaded 2140 of 2200 kg GVM / front 1100 of 1050, rear 960 of 1000 kg",
                "Height: suspension-lift 40 of 50, total-lift 40 of 75 mm",
                "Combination: in all 3640 of 3700 kg GCM / trailer 1500 of 1600 kg ATM / trailer axles 1400 of 1450 kg GTM / "
                    + "ball 100 of 150 kg / trailer 1500 of 2000 kg / trailer 1500 of 2100 kg",
            ]);
        Rows(Free with { Masses = Masses(Budget(2060), null) })[0].ShouldBe("Masses: unladen 2060 kg");
        Rows(Free with { Masses = Masses(Budget(2060), Budget(null)) })[0]
            .ShouldBe("Masses: unladen 2060 / loaded not known, at least 0 kg");
    }

    [Fact]
    public void A_topic_tells_what_is_not_regulated_and_what_nobody_established_and_the_road_its_first_rule()
    {
        const string Kept = """ "tiers": [ { "pathway": "no-certificate", "provided": [ "travel-kept" ] } ], "beyond": "prohibited" """;
        const string Raised = """ "for": { "suspension-lift": { "over": "0 mm" } }, """;
        var answer = Assess(
            Book(
                $"{Rule("raise", Since("2012-01-01", """ "not-regulated": " no such rule " """))}, "
                    + Rule("raise-too", Since("2012-01-01", """ "not-established": { "ask": "Office C" } """)),
                (
                    "jurisdictions/au-a/road-use",
                    Topic(
                        "road-use",
                        $"{Rule("first", Since("2012-01-01", Kept), Raised)}, {Rule("second", Since("2012-01-01", Kept), Raised)}"
                    )
                )
            ),
            Lift("40 mm")
        );
        var roads = ((string[])["B", "C"]).Select(name => new RoadElsewhere(name, $"State {name}", true, []));
        Rows(answer with { Roads = [.. roads] })
            .ShouldBe([
                "Height: nobody has established the limits / not regulated: no such rule",
                "On the road: first: allowed without a certificate, travel kept",
                "On the road: State B: no rule in the book follows its roads",
            ]);
        var open = answer.OfUse[0] with { Version = answer.Findings.Single(each => each.Version.Content is NotEstablished).Version };
        Rows(answer with { OfUse = [open] })[^1].ShouldBe("On the road: raise-too: nobody has established the rule");
        Rows(Assess(Stating(Tiers), Lift("60 mm")) with { Tyres = null })[0]
            .ShouldBe("Height: suspension-lift 60 of 75, total-lift 60 of 150 mm");
    }

    [Theory]
    [InlineData(Truth.Yes, "Certifies|engineer; steps before the work")]
    [InlineData(Truth.No, "Certifies|engineer; not the one named; steps before the work")]
    [InlineData(Truth.Unknown, "Certifies|engineer; open whether the one named is accepted; steps before the work")]
    public void Who_certifies_is_told_with_how_the_one_named_stands(Truth may, string told)
    {
        var book = Book(
            Rule("raise", Since("2012-01-01", Tiers)),
            (
                "jurisdictions/au-a/certification",
                """
                { "topic": "certification", "schemes": [ { "scheme": "e", "title": "E", "versions": [ { "from": "2013", "certifier": "engineer",
                  "steps": [ { "text": "ask", "before-work": "yes", "pathways": "certificate" } ], "sources": [ { "cite": "law" } ] } ] } ] }
                """
            )
        );
        var answer = Assess(book, Lift("60 mm"));
        Screen(book, answer with { Certification = answer.Certification! with { MayCertify = may } }).ShouldContain(told);
        Screen(book, answer with { Certification = answer.Certification! with { Steps = [] } }).ShouldContain("Certifies|engineer");
        Screen(book, Free).ShouldContain("Certifies|nobody: no certificate is needed");
        Screen(book, Free).ShouldContain("To show|travel kept");
        Screen(book, Free).ShouldContain("Rests on|height: authority's text; book made");
        Screen(book, Free with { Edition = "2026.11.1", Findings = [] }).ShouldContain("Rests on|edition 2026.11.1");
    }

    [Fact]
    public void What_is_open_says_how_many_questions_decide_or_only_narrow_it()
    {
        var open = Assess(Stating(Tiers), Lift("unknown"));
        var effect = open.Undecided.Single();
        First(open).ShouldStartWith("Undecided: allowed without a certificate or not allowed, the question below decides.");
        First(open with { Undecided = [effect, effect] })
            .ShouldStartWith("Undecided: allowed without a certificate or not allowed, the questions below decide.");

        var others = Assess(
            Book(
                $"{Rule("raise", Since("2012-01-01", Tiers))}, "
                    + Rule(
                        "raise-others",
                        Since("2012-01-01", """ "not-established": { "ask": "Office A" } """),
                        """ "for": { "category": "NA" }, """
                    )
            ),
            Lift("60 mm")
        );
        var narrows = effect with { Gives = [Outcome.Open, Outcome.Open] };
        First(others with { Undecided = [narrows] }).ShouldEndWith(", the question below narrows it. State A, 25 November 2026.");
        First(others with { Undecided = [narrows, narrows] }).ShouldEndWith(", the questions below narrow it. State A, 25 November 2026.");
        First(others with { Undecided = [] })
            .ShouldBe("Undecided: nobody has established the limits for raise-others. Ask Office A. State A, 25 November 2026.");

        var vocabulary = Stating(Tiers).Vocabulary;
        Questions
            .Ask(effect with { Opening = effect.Opening with { Kind = OpeningKind.Version } }, vocabulary)
            .ShouldBe("Which version of the rule was in force that day?");
        Questions.Ask(effect, vocabulary).ShouldBe("What is the suspension-lift?");
        Questions.Ask(effect with { Opening = effect.Opening with { Name = "x", Options = [] } }, vocabulary).ShouldBe("What is x?");
    }

    [Fact]
    public void Three_blockers_are_told_and_how_many_more_there_are()
    {
        Blocker Of(string what) => new(BlockerKind.Unsafe, what, what);
        First(Free with { Blockers = [Of("one"), Of("two"), Of("three")] }).ShouldBe("NOT AS PLANNED: one; two; three.");
        First(Free with { Blockers = [Of("one"), Of("two"), Of("three"), Of("four"), Of("five")] })
            .ShouldBe("NOT AS PLANNED: one; two; three; and 2 more.");
    }

    [Fact]
    public void A_blocker_is_in_the_data_with_its_figures()
    {
        var blocker = new Blocker(BlockerKind.OverRating, "gvm", "GVM")
        {
            State = "loaded",
            Value = 3600,
            Limit = 3500,
            AtLeast = true,
            TooCloseWithin = 120,
            Unit = Unit.Find("kg"),
            LimitWhat = "axles",
            LimitFact = "vehicle.ratings.gvm",
            Rule = "au-a/r",
            Why = "so",
            Ask = "Office A",
        };
        JsonNode
            .Parse(JsonText.Write(json => BlockerJson.Write(json, blocker)))!
            .ToJsonString()
            .ShouldBe(
                JsonNode
                    .Parse(
                        """
                        { "id": "over-rating/gvm/loaded", "kind": "over-rating",
                          "text": "at least 100 kg over GVM when loaded (3600 of 3500 kg, too close to call: weighed to within 120 kg)",
                          "subject": "gvm", "what": "GVM", "state": "loaded", "value": 3600, "at-least": true, "limit": 3500, "over": 100,
                          "too-close-within": 120, "unit": "kg", "limit-what": "axles", "limit-fact": "vehicle.ratings.gvm",
                          "rule": "au-a/r", "why": "so", "ask": "Office A" }
                        """
                    )!
                    .ToJsonString()
            );
    }

    [Theory]
    [InlineData(nameof(NewsKind.Corrected), "Past answers corrected: State A, State B: it was 50 mm.")]
    [InlineData(nameof(NewsKind.Law), "Answers that change: State A, State B: it was 50 mm.")]
    [InlineData(nameof(NewsKind.Evidence), "Better evidence, same answers: State A, State B: it was 50 mm.")]
    [InlineData(nameof(NewsKind.Tool), "The tool: State A, State B: it was 50 mm.")]
    public void News_of_an_edition_say_what_they_are_of_and_where(string kind, string told)
    {
        var news = new News(Enum.Parse<NewsKind>(kind), ["State A", "State B"], null, "it was 50 mm.");
        EditionWords.Sentence(news).ShouldBe(told);
        EditionWords.Told(news with { Places = [] }).ShouldBe("it was 50 mm.");
    }

    [Fact]
    public void A_vehicle_that_stays_as_it_is_has_nothing_to_judge() =>
        First(Assess(Stating(Tiers), """ "vehicle": { "category": "MC" } """))
            .ShouldBe(
                "Nothing to judge: no change to the vehicle is stated that a rule in the book could judge. State A, 25 November 2026."
            );

    private static string First(Assessment answer) => FirstLines.Of(answer).First();

    private static List<string> Rows(Assessment answer) =>
        [.. SubjectRows.Of(answer).Select(row => $"{row.Label}: {string.Join(" / ", row.Parts)}")];

    private static List<string> Screen(Book book, Assessment answer)
    {
        var page = new Told();
        new FirstScreen(page, book.Vocabulary, whole: true).Write(answer, Read(book, Lift("60 mm")), null, "");
        return page.Lines;
    }

    private static LoadCheck Load(string subject, int value, int limit) => new(subject, subject, value, limit, $"{subject} {limit}");

    private static MassBudget Budget(int? total, params LoadCheck[] left)
    {
        var range = new MassRange(new Interval(total, total), Interval.Anything, Interval.Anything);
        return new MassBudget(
            MassState.Loaded,
            [new BudgetLine("all", total, null, total, null) { Possible = range, RunningPossible = range }],
            [.. left],
            []
        );
    }

    private static MassAnswer Masses(MassBudget unladen, MassBudget? loaded) => new(unladen, loaded, null, null, []);
}
