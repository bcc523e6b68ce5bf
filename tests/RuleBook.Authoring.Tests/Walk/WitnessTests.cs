using System.Collections.Immutable;
using Fractions;
using RuleBook.Authoring.Walk;
using RuleBook.Law;

namespace RuleBook.Authoring.Tests.Walk;

/// <summary>A vehicle at which something shows, told as a job in the keys of a job file (derived from the vocabulary).</summary>
public sealed class WitnessTests
{
    private static readonly Vocabulary Words = InventedBook.Book.Vocabulary;

    [Fact]
    public void A_job_has_what_differs_from_the_vehicle_as_built_and_says_beside_it_what_no_job_can_state() =>
        new Witness(
            "xa-n",
            new DateOnly(2016, 4, 1),
            Pairs(("registered", "yes"), ("four-wheel-drive", "no"), ("category", "MC")),
            [
                Of("suspension-lift", new Fraction(5005, 100)),
                Of("body-lift", 0),
                Of("tyre-lift", 20),
                Of("gvm", 2000),
                Of("built", new DateOnly(1999, 12, 31).DayNumber),
                Of("trailer-atm", 0),
            ],
            ["lane-change-test", "no-wheel-spacers"]
        )
            .Yaml(Words)
            .ShouldBe(
                """
                registered-in: xa-n
                on: 2016-04-01
                vehicle:
                  category: MC
                  four-wheel-drive: no
                  first-registered: 1990-01-01
                  ratings:
                    gvm: 2000 kg
                  built: 1999-12-31
                modification:
                  suspension-lift: 50.05 mm
                shown:
                  lane-change-test: no
                  no-wheel-spacers: no
                # tyre-lift: 20 mm

                """.ReplaceLineEndings("\n")
            );

    [Fact]
    public void The_day_of_the_work_stands_by_itself_beside_the_other_days() =>
        new Witness("xa", new DateOnly(2020, 2, 3), Pairs(("registered", "no")), [Of("altered", new DateOnly(2019, 7, 1).DayNumber)], [])
            .Yaml(Words)
            .ShouldBe(
                """
                registered-in: xa
                dates:
                  certification: 2020-02-03
                  inspection: 2020-02-03
                  work: 2019-07-01
                vehicle:
                  first-registered: not-yet

                """.ReplaceLineEndings("\n")
            );

    /// <summary>Fewer changes before rounder figures before smaller ones; a day is neither large nor small.</summary>
    [Fact]
    public void The_vehicle_that_is_told_has_the_fewest_changes_then_the_roundest_then_the_smallest()
    {
        Witness[] heavier =
        [
            With([Of("body-lift", 0), Of("suspension-lift", 0)]),
            With([Of("body-lift", 1)]),
            With([Of("body-lift", 0), Of("suspension-lift", -2)]),
            With([Of("built", 700000), Of("suspension-lift", 0)], "lane-change-test"),
            With([Of("body-lift", 1), Of("suspension-lift", -2)]),
            With([Of("body-lift", 2), Of("suspension-lift", -2)]),
            With([Of("body-lift", new Fraction(1, 10)), Of("suspension-lift", 9)]),
            With([Of("body-lift", new Fraction(1, 100)), Of("suspension-lift", 1)]),
            With([Of("body-lift", new Fraction(1, 100)), Of("suspension-lift", new Fraction(1, 100))]),
        ];
        heavier.Reverse().OrderBy(one => one.Weight).ShouldBe(heavier);
    }

    /// <summary>Half of the growth of a tyre is stated as the growth, and only follows; as built there is nothing to state.</summary>
    [Fact]
    public void A_measure_that_follows_from_others_cannot_be_a_job_where_it_differs()
    {
        With([Of("tyre-diameter-growth-percent", 5)]).Job(InventedBook.Book).ShouldBeNull();
        With([Of("tyre-diameter-growth-percent", 0), Of("body-lift", 3)])
            .Job(InventedBook.Book)
            .ShouldNotBeNull()
            .RegisteredIn.ShouldBe("xa-n");
        With([Of("gvm", -1)]).Job(InventedBook.Book).ShouldBeNull();
    }

    [Fact]
    public void A_vehicle_of_which_all_is_stated_keeps_its_words_and_takes_the_first_of_the_others()
    {
        var stated = With([]) with { Words = Pairs(("four-wheel-drive", "no")) };
        var words = stated.Stated(Words).Words;
        words["four-wheel-drive"].ShouldBe("no");
        words["stability-control"].ShouldBe("yes");
        words["vehicle-kind"].ShouldBe("passenger-car");
        words.Keys.ShouldNotContain("registered");
        words.Keys.ShouldNotContain("part-paper");
    }

    private static Witness With(ImmutableArray<KeyValuePair<Measure, Fraction>> measures, params ImmutableArray<string> notShown) =>
        new("xa-n", new DateOnly(2016, 4, 1), Pairs(), measures, notShown);

    private static KeyValuePair<Measure, Fraction> Of(string measure, Fraction value) => new(Words.Measures[measure], value);

    private static ImmutableDictionary<string, string> Pairs(params (string Fact, string Word)[] words) =>
        words.ToImmutableDictionary(pair => pair.Fact, pair => pair.Word);
}
