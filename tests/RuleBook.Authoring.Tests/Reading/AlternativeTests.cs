using System.Collections.Immutable;
using System.Text.Json;
using NJsonSchema;
using RuleBook.Answers;
using RuleBook.Authoring.Pinning;
using RuleBook.Authoring.Resolved;
using RuleBook.InForce;
using RuleBook.Jobs.Reading;
using RuleBook.Law;
using RuleBook.Tables;
using RuleBook.Telling;
using RuleBook.Units;
using RuleBook.Yaml;
using static RuleBook.Authoring.Tests.Changes.EditedBook;

namespace RuleBook.Authoring.Tests.Reading;

/// <summary>Any of several and none of several (the rules are invented; what they give is worked by hand from the words).</summary>
public sealed class AlternativeTests
{
    private const string HeavyOrNew = "any-of: [ { category: NA, gvm: { over: 2000 kg } }, { built: { from: 2020-01-01 } } ]";
    private const string NotLightNotNew = "none-of: [ { gvm: { at-most: 2000 kg } }, { built: { from: 2020-01-01 }, category: [NA, MC] } ]";
    private const string OneTest = "any-of: [lane-change-test, braking-rule-kept]";

    [Theory]
    [InlineData("NA", "2000.1 kg", "2019-12-31", Pathway.NoCertificate)]
    [InlineData("NA", "2000 kg", "2019-12-31", Pathway.Prohibited)]
    [InlineData("MC", "2000.1 kg", "2019-12-31", Pathway.Prohibited)]
    [InlineData("MC", "1500 kg", "2020-01-01", Pathway.NoCertificate)]
    [InlineData("NA", "2000.1 kg", "2020-01-01", Pathway.NoCertificate)]
    public void Any_of_holds_where_one_of_them_holds_whole(string category, string gvm, string built, Pathway gives) =>
        OfVehicle(HeavyOrNew, category, gvm, built).ShouldBe(Only(gives));

    [Theory]
    [InlineData("NA", "2000.1 kg", "2019-12-31", Pathway.NoCertificate)]
    [InlineData("NA", "2000 kg", "2019-12-31", Pathway.Prohibited)]
    [InlineData("MC", "2000.1 kg", "2020-01-01", Pathway.Prohibited)]
    [InlineData("NA", "2000.1 kg", "2020-01-01", Pathway.Prohibited)]
    [InlineData("NB1", "4000 kg", "2020-01-01", Pathway.NoCertificate)]
    public void None_of_holds_where_each_of_them_fails_somewhere(string category, string gvm, string built, Pathway gives) =>
        OfVehicle(NotLightNotNew, category, gvm, built).ShouldBe(Only(gives));

    [Fact]
    public void What_is_not_known_never_counts_as_none_of_them()
    {
        var answer = Assessed(When("none-of: [ { category: [MA, MB] } ]"), Job("four-wheel-drive: yes"));

        answer.Between.ShouldBe(new Outcome(Pathway.NoCertificate, Pathway.Prohibited));
        answer.Undecided.Select(effect => effect.Opening.Name).ShouldContain("vehicle.category");
    }

    [Fact]
    public void Alternatives_that_leave_no_way_out_hold_whatever_is_not_known() =>
        Answer(When("any-of: [ { category: NA }, { none-of: [ { category: NA } ] } ]"), Job("four-wheel-drive: yes"))
            .ShouldBe(Only(Pathway.NoCertificate));

    [Fact]
    public void A_rule_is_for_vehicles_that_are_none_of_some()
    {
        var book = SmallBook.Of(
            (
                "au-qld",
                "{topic: ride-height, rules: [{rule: raise, title: Raising, for: {none-of: [{category: [MA, MB]}, {gvm: {over: 4500 "
                    + "kg}}]}, "
                    + "versions: [{from: 2011-01-01, sources: [{cite: law, clause: '1'}], not-regulated: Nothing said.}]}]}"
            )
        );

        Answer(book, Job("category: MC, ratings: { gvm: 4500 kg }")).ShouldBe(Only(Pathway.NoCertificate));
        Answer(book, Job("category: MC, ratings: { gvm: 4500.1 kg }")).ShouldBe(Outcome.Open);
        Answer(book, Job("category: MA, ratings: { gvm: 2000 kg }")).ShouldBe(Outcome.Open);
        Answer(book, Job("category: LC, ratings: { gvm: 400 kg }")).ShouldBe(Outcome.Open); // a motor cycle has to be named
    }

    [Theory]
    [InlineData("", Pathway.NoCertificate, Truth.Unknown)]
    [InlineData("lane-change-test: no", Pathway.NoCertificate, Truth.Unknown)]
    [InlineData("lane-change-test: no, braking-rule-kept: yes", Pathway.NoCertificate, Truth.Yes)]
    [InlineData("lane-change-test: yes", Pathway.NoCertificate, Truth.Yes)]
    [InlineData("lane-change-test: no, braking-rule-kept: no", Pathway.Prohibited, null)]
    public void Of_several_conditions_one_has_to_be_shown(string shown, Pathway gives, Truth? state)
    {
        var answer = Assessed(Provided(OneTest), Job("category: MC", shown));

        answer.Between.ShouldBe(Only(gives));
        answer
            .Findings.SelectMany(finding => finding.Conditions)
            .Select(condition => (condition.Condition.Name, condition.State))
            .ShouldBe(state is { } known ? [("lane-change-test-or-braking-rule-kept", known)] : []);
    }

    [Fact]
    public void The_conditions_of_which_one_has_to_be_shown_are_told_together() =>
        string.Join("\n", Telling.ReadAnswer.Of(Assessed(Provided(OneTest), Job("category: MC"))).Parts.SelectMany(part => part.Lines))
            .ShouldContain("lane-change test passed, or braking rule of the category kept");

    [Fact]
    public void The_resolved_text_has_a_tier_for_each_alternative() =>
        ResolvedText
            .Of(When(HeavyOrNew), When(HeavyOrNew).Jurisdiction("au-qld")!)
            .ShouldSatisfyAllConditions(
                text => text.ShouldContain("category NA; gvm over 2000 kg"),
                text => text.ShouldContain("built at least 2020-01-01")
            );

    [Fact]
    public void An_alternative_that_is_taken_out_shows_in_the_answers()
    {
        var (before, after) = (When(HeavyOrNew), When("category: NA, gvm: { over: 2000 kg }"));

        var report = Between(before, after);

        report.Answers.ShouldNotBeEmpty();
        report.ShouldBeConfirmed(before, after);
    }

    [Fact]
    public void Every_alternative_has_to_be_held_by_a_case() =>
        new Pinner(When(HeavyOrNew), [])
            .Run((_, _) => true)
            .Unnoticed.Select(one => one.What)
            .ShouldSatisfyAllConditions(
                what => what.ShouldContain("gvm over 2000 kg"),
                what => what.ShouldContain("built at least 2020-01-01")
            );

    /// <summary>Whoever takes any alternative of the tier takes it before the one that is added after it.</summary>
    [Theory]
    [InlineData("category: NA, ratings: { gvm: 3000 kg }, built: 2019-12-31")]
    [InlineData("category: MC, ratings: { gvm: 1500 kg }, built: 2020-01-01")]
    public void A_tier_that_is_added_after_one_with_alternatives_comes_after_all_of_them(string vehicle) =>
        Answer(
                SmallBook.WithVersions(
                    $$"""
                    - from: 2011-01-01
                      sources: [ { cite: law, clause: "1" } ]
                      tiers: [ { pathway: no-certificate, when: { {{HeavyOrNew}} }, within: { suspension-lift: 50 mm } } ]
                      beyond: prohibited
                    - from: 2020-01-01
                      sources: [ { cite: law, clause: "2" } ]
                      like: 2011-01-01
                      change: [ { after: no-certificate, add: { pathway: certificate, within: { suspension-lift: 75 mm } } } ]
                    """
                ),
                Job(vehicle)
            )
            .ShouldBe(Only(Pathway.NoCertificate));

    [Fact]
    public void An_exception_that_says_anew_what_opens_a_tier_leaves_no_alternatives()
    {
        var book = SmallBook.WithVersions(
            $$"""
            - from: 2011-01-01
              sources: [ { cite: law, clause: "1" } ]
              tiers: [ { pathway: no-certificate, when: { {{HeavyOrNew}} }, within: { suspension-lift: 50 mm } } ]
              beyond: prohibited
            - from: 2020-01-01
              sources: [ { cite: law, clause: "2" } ]
              like: 2011-01-01
              change: [ { tier: no-certificate, when: { category: MC } } ]
            """
        );

        ((Stated)book.Jurisdiction("au-qld")!.Rules[0].Versions[1].Content).Tiers.Length.ShouldBe(1);
        Answer(book, Job("category: MC")).ShouldBe(Only(Pathway.NoCertificate));
        Answer(book, Job("category: NA, ratings: { gvm: 3000 kg }")).ShouldBe(Only(Pathway.Prohibited));
    }

    [Fact]
    public void More_alternatives_than_64_are_refused_at_once_also_where_later_words_leave_few()
    {
        var points = string.Join(", ", Enumerable.Range(0, 65).Select(at => $"{{ {Only("suspension-lift", at)} }}"));
        var corners = string.Join(
            ", ",
            Enumerable.Range(0, 40).Select(at => $"{{ {Only("suspension-lift", at)}, {Only("body-lift", at)} }}")
        );
        foreach (var when in (string[])[$"any-of: [ {points} ]", $"any-of: [ {points} ], suspension-lift: 3 mm", $"none-of: [ {corners} ]"])
            Should.Throw<ShouldAssertException>(() => When(when)).Message.ShouldContain("more than 64 alternatives");

        static string Only(string measure, int at) => $"{measure}: {{ at-least: {at} mm, at-most: {at} mm }}";
    }

    /// <summary>Random words within words, judged of every vehicle by hand's rule: any, none, all.</summary>
    [Fact]
    public void However_deep_they_stand_within_one_another_they_hold_as_the_words_say()
    {
        var random = new Random(20_261_128);
        for (var at = 0; at < 30; at++)
        {
            var written = Written.Some(random, 3);
            var book = When(written.Yaml);
            foreach (var world in World.All)
                Answer(book, Job(world.Yaml))
                    .ShouldBe(Only(written.Holds(world) ? Pathway.NoCertificate : Pathway.Prohibited), $"{written.Yaml}: {world.Yaml}");
            var left = World.All.Where(world => world.Category == "NA").Select(written.Holds).ToArray();
            Answer(book, Job("category: NA, four-wheel-drive: unknown, ratings: { gvm: unknown }"))
                .ShouldBe(
                    new Outcome(
                        left.Contains(true) ? Pathway.NoCertificate : Pathway.Prohibited,
                        left.Contains(false) ? Pathway.Prohibited : Pathway.NoCertificate
                    ),
                    written.Yaml
                );
        }
    }

    /// <summary>The same of whom a rule binds: nothing is said of any other.</summary>
    [Fact]
    public void A_rule_binds_the_vehicles_that_meet_one_of_several_descriptions_and_no_other()
    {
        var random = new Random(20_261_129);
        for (var at = 0; at < 30; at++)
        {
            var written = Written.Some(random, 3);
            var book = For(written.Yaml);
            foreach (var world in World.All)
                Answer(book, Job(world.Yaml))
                    .ShouldBe(written.Holds(world) ? Only(Pathway.NoCertificate) : Outcome.Open, $"{written.Yaml}: {world.Yaml}");
            Answer(book, Job("category: NA, four-wheel-drive: unknown, ratings: { gvm: unknown }"))
                .ShouldBe(
                    World.All.Where(world => world.Category == "NA").All(written.Holds) ? Only(Pathway.NoCertificate) : Outcome.Open,
                    written.Yaml
                );
        }
    }

    /// <summary>Invented: vans, and all that is driven by all wheels.</summary>
    [Fact]
    public void A_vehicle_that_meets_both_descriptions_of_a_rule_is_told_of_it_once() =>
        Assessed(For("any-of: [ { category: NA }, { four-wheel-drive: yes } ]"), Job("category: NA, four-wheel-drive: yes"))
            .Findings.Select(finding => (finding.Version.Rule.Name, finding.Binds))
            .ShouldBe([("raise", Truth.Yes)]);

    [Theory]
    [InlineData("any-of: [ { gvm: { at-most: 750 kg } }, { gvm: { at-most: 750 kg }, category: TA } ]", true)]
    [InlineData("any-of: [ { gvm: { at-most: 750 kg } }, { four-wheel-drive: no } ]", false)]
    [InlineData("any-of: [ { category: MA }, { none-of: [ { category: MB } ] } ]", false)]
    public void A_trailer_is_bound_by_a_description_that_names_it(string vehicles, bool bound) =>
        Answer(For(vehicles), Job("category: TA, four-wheel-drive: no, ratings: { gvm: 700 kg }"))
            .ShouldBe(bound ? Only(Pathway.NoCertificate) : Outcome.Open);

    [Fact]
    public void Each_description_is_told_and_has_to_be_held_by_a_case()
    {
        var book = For(HeavyOrNew);

        ResolvedText
            .Of(book, book.Jurisdiction("au-qld")!)
            .ShouldContain("for category NA; gvm over 2000 kg; or else built at least 2020-01-01");
        new Pinner(book, [])
            .Run((_, _) => true)
            .Unnoticed.Select(one => one.What)
            .ShouldSatisfyAllConditions(
                what => what.ShouldContain("gvm over 2000 kg"),
                what => what.ShouldContain("built at least 2020-01-01"),
                what => what.Count(each => each == "a description of vehicles").ShouldBe(2)
            );
    }

    [Fact]
    public async Task The_json_of_the_limits_has_several_descriptions_as_one_test()
    {
        var book = For(HeavyOrNew);
        var (place, day) = (book.Jurisdiction("au-qld")!, new DateOnly(2026, 11, 28));
        var json = LimitsJson.Write(book, place, day, Resolver.Resolve(book, place.Rules[0], day));

        var schema = await JsonSchema.FromFileAsync(
            Path.Combine(TestBook.Folder, "schema", "limits.schema.json"),
            TestContext.Current.CancellationToken
        );
        schema.Validate(json).ShouldBeEmpty();
        var test = JsonDocument.Parse(json).RootElement.GetProperty("rules")[0].GetProperty("for").EnumerateArray().ShouldHaveSingleItem();
        test.GetProperty("any-of")
            .EnumerateArray()
            .Select(description => string.Join(' ', description.EnumerateArray().Select(each => each.GetProperty("fact").GetString())))
            .ShouldBe(["category gvm", "built"]);
    }

    [Fact]
    public void A_description_that_is_taken_out_shows_in_the_answers()
    {
        var (before, after) = (For(HeavyOrNew), For("category: NA, gvm: { over: 2000 kg }"));

        var report = Between(before, after);

        report.Answers.ShouldNotBeEmpty();
        report.ShouldBeConfirmed(before, after);
    }

    private static Outcome OfVehicle(string opened, string category, string gvm, string built) =>
        Answer(When(opened), Job($"category: {category}, ratings: {{ gvm: {gvm} }}, built: {built}"));

    private static Book When(string when) => Tier($"when: {{ {when} }}");

    private static Book For(string vehicles) =>
        SmallBook.Of(
            (
                "au-qld",
                $$"""
                topic: ride-height
                rules:
                  - rule: raise
                    title: Raising
                    for: { {{vehicles}} }
                    from: 2011-01-01
                    sources: [ { cite: law, clause: "1" } ]
                    not-regulated: Nothing said.
                """
            )
        );

    private static Book Provided(string provided) => Tier($"provided: [ {{ {provided} }} ]");

    private static Book Tier(string more) =>
        SmallBook.WithVersions(
            $$"""
            - from: 2011-01-01
              sources: [ { cite: law, clause: "1" } ]
              tiers: [ { pathway: no-certificate, within: { suspension-lift: 50 mm }, {{more}} } ]
              beyond: prohibited
            """
        );

    private static string Job(string vehicle, string shown = "") =>
        $"{{ registered-in: au-qld, on: 2026-11-28, vehicle: {{ {vehicle} }}, modification: {{ suspension-lift: 10 mm }}, shown: {{ "
        + $"{shown} }} }}";

    private static Assessment Assessed(Book book, string job) => Assessor.Assess(book, JobReader.Read(YamlText.Read(job, "job"), book));

    /// <summary>A vehicle of which all is known that the random words speak of.</summary>
    private sealed record World(string Category, string FourWheelDrive, int Gvm)
    {
        public static ImmutableArray<World> All { get; } =
        [
            .. from category in (string[])["MA", "MC", "NA"]
            from drive in (string[])["yes", "no"]
            from gvm in (int[])[1500, 2000, 2001, 3500]
            select new World(category, drive, gvm),
        ];

        public string Yaml => $"category: {Category}, four-wheel-drive: {FourWheelDrive}, ratings: {{ gvm: {Gvm} kg }}";
    }

    /// <summary>Tests of which all hold: as text, and as the words mean it.</summary>
    private sealed record Written(string Yaml, Func<World, bool> Holds)
    {
        private static Written Any(Random random, int depth)
        {
            Written[] parts =
            [
                .. new[]
                {
                    random.Next(3) == 0 ? new Written("category: [MA, NA]", world => world.Category is "MA" or "NA") : null,
                    random.Next(3) == 0 ? new Written("four-wheel-drive: yes", world => world.FourWheelDrive == "yes") : null,
                    random.Next(3) == 0
                        ? new Written("gvm: { over: 1500 kg, at-most: 2000 kg }", world => world.Gvm is > 1500 and <= 2000)
                        : null,
                    depth > 0 && random.Next(2) == 0
                        ? Several("any-of", Members(random, depth), (all, world) => all.Any(each => each.Holds(world)))
                        : null,
                    depth > 0 && random.Next(2) == 0
                        ? Several("none-of", Members(random, depth), (all, world) => !all.Any(each => each.Holds(world)))
                        : null,
                }.OfType<Written>(),
            ];
            return parts.Length == 0
                ? new Written("category: MC", world => world.Category == "MC")
                : new Written(string.Join(", ", parts.Select(part => part.Yaml)), world => parts.All(part => part.Holds(world)));
        }

        private static Written[] Members(Random random, int depth) => [Some(random, depth - 1), Some(random, depth - 2)];

        /// <summary>One that some vehicle meets: the reader refuses any other.</summary>
        public static Written Some(Random random, int depth)
        {
            var written = Any(random, depth);
            return World.All.Any(written.Holds) ? written : Some(random, depth);
        }

        private static Written Several(string key, Written[] members, Func<Written[], World, bool> holds) =>
            new($"{key}: [ {string.Join(", ", members.Select(each => $"{{ {each.Yaml} }}"))} ]", world => holds(members, world));
    }
}
