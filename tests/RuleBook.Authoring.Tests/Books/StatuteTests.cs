using RuleBook.Evaluation;
using RuleBook.Rules;

namespace RuleBook.Authoring.Tests.Books;

/// <summary>Absolute frame heights by mass class: the data against the statutes, section named beside each check.</summary>
public sealed class StatuteTests
{
    private const Pathway Within = Pathway.NoCertificate;
    private const Pathway Beyond = Pathway.Prohibited;

    [Theory]
    [InlineData("truck", "4500 lb", "27.0 in", Within)] // California Vehicle Code 24008.5(b)(2): up to 4,500 lb GVWR, 27 in
    [InlineData("truck", "4500 lb", "27.1 in", Beyond)]
    [InlineData("truck", "4501 lb", "27.1 in", Within)] // 24008.5(b)(2): 4,501 to 7,500 lb, 30 in
    [InlineData("truck", "4501 lb", "30.0 in", Within)]
    [InlineData("truck", "7500 lb", "30.1 in", Beyond)]
    [InlineData("truck", "7501 lb", "31.0 in", Within)] // 24008.5(b)(2): 7,501 to 10,000 lb, 31 in
    [InlineData("truck", "10000 lb", "31.1 in", Beyond)]
    [InlineData("motor-home", "4500 lb", "27.0 in", Within)] // 24008.5(b)(2): "including housecars"
    [InlineData("passenger-car", "4500 lb", "23.0 in", Within)] // 24008.5(b)(1): passenger vehicles except housecars, 23 in
    [InlineData("passenger-car", "9000 lb", "23.1 in", Beyond)] // 24008.5(b)(1) knows no class by rating
    [InlineData("multipurpose-passenger-vehicle", "7000 lb", "23.1 in", Beyond)] // DMV, Vehicle Definitions: sport utility vehicles are automobiles
    public void Californias_frame_height_follows_kind_and_rating(string kind, string rating, string height, Pathway expected) =>
        Assess("us-ca", kind, rating, $"frame-height: {height}").Verdict.ShouldBe(expected);

    [Theory]
    [InlineData("body-floor-above-frame: 5 in", Within)] // California Vehicle Code 24008.5(c): not more than five inches
    [InlineData("body-floor-above-frame: 5.1 in", Beyond)]
    public void Californias_body_floor_may_stand_five_inches_above_the_frame(string floor, Pathway expected) =>
        RealBook.Assess("us-ca", Vehicle("truck", "6000 lb"), $"frame-height: 28 in, {floor}", modification: "body-lift: 2 in").Verdict.ShouldBe(expected);

    [Theory]
    [InlineData("2041 kg", "685.8 mm", Within)] // 24008.5(b)(2): 2,041 kg = 4,499.6 lb; 27 in = 685.8 mm (1959 inch and pound)
    [InlineData("2041 kg", "685.9 mm", Beyond)]
    [InlineData("2042 kg", "685.9 mm", Within)] // 4,501.8 lb
    [InlineData("3402 kg", "762.1 mm", Beyond)] // derived: a plate's rounding of 7,500 lb stays in the class up to 7,500 lb, 30 in = 762 mm
    public void Metric_figures_are_compared_exactly_with_limits_in_inches_and_pounds(string rating, string height, Pathway expected) =>
        Assess("us-ca", "truck", rating, $"frame-height: {height}").Verdict.ShouldBe(expected);

    [Fact]
    public void A_lift_without_a_frame_height_is_undecided_in_California_and_asks_for_the_height()
    {
        var answer = Assess("us-ca", "truck", "6000 lb", "");

        // California Vehicle Code 24008.5(b)(2): 30 in (762 mm) decides, whatever the lift.
        answer.Verdict.ShouldBeNull();
        var effect = answer.Undecided.ShouldHaveSingleItem();
        effect.Opening.Name.ShouldBe("measured.frame-height");
        effect.Merged().ShouldBe([("at most 762 mm", new Outcome(Within, Within)), ("over 762 mm", new Outcome(Beyond, Beyond))]);
    }

    [Fact]
    public void The_rating_of_a_passenger_vehicle_is_not_asked_for_in_California()
    {
        // California Vehicle Code 24008.5(b)(1): passenger vehicles have one limit, 23 in, whatever their rating.
        var answer = RealBook.Assess("us-ca", "kind: passenger-car", "frame-height: 22 in");

        answer.Verdict.ShouldBe(Within);
        answer.Undecided.ShouldBeEmpty();
    }

    [Fact]
    public void A_height_binds_a_vehicle_that_nobody_raised()
    {
        // California Vehicle Code 24008.5(a): no person shall operate any motor vehicle with a greater frame height.
        var answer = RealBook.Assess("us-ca", Vehicle("truck", "4500 lb"), "frame-height: 28 in", modification: "");

        answer.Verdict.ShouldBe(Beyond);
    }

    [Fact]
    public void Before_1988_Californias_limit_is_not_established()
    {
        // California Vehicle Code 24008.5: amended ch. 718, Stats. 1987, effective January 1, 1988.
        Assess("us-ca", "truck", "4500 lb", "frame-height: 28 in", "1988-01-01").Verdict.ShouldBe(Beyond);
        Assess("us-ca", "truck", "4500 lb", "frame-height: 28 in", "1987-12-31").Verdict.ShouldBeNull();
    }

    [Theory]
    [InlineData("4499.9 lb", "24 in", Within)] // Utah Code 41-6a-1631(1)(d): less than 4,500 lb, 24 in
    [InlineData("4499.9 lb", "24.1 in", Beyond)]
    [InlineData("4500 lb", "26 in", Within)] // 41-6a-1631(1)(e): at least 4,500 and less than 7,500 lb, 26 in
    [InlineData("7499.9 lb", "26.1 in", Beyond)]
    [InlineData("7500 lb", "28 in", Within)] // 41-6a-1631(1)(f): at least 7,500 lb, 28 in
    [InlineData("7500 lb", "28.1 in", Beyond)]
    public void Utahs_classes_begin_at_their_edge(string rating, string height, Pathway expected) =>
        Assess("us-ut", "truck", rating, $"frame-height: {height}").Verdict.ShouldBe(expected);

    [Theory]
    [InlineData("4500 lb", "27 in", Within)] // OCGA 40-8-6.1: 4,500 lb or less, 27 in
    [InlineData("4501 lb", "27.1 in", Within)] // not less than 4,501 and not more than 7,500 lb, 30 in
    [InlineData("7501 lb", "31 in", Within)] // not less than 7,501 and not more than 14,000 lb, 31 in
    [InlineData("14000 lb", "31.1 in", Beyond)]
    public void Georgias_trucks_have_three_classes_up_to_14000_pounds(string rating, string height, Pathway expected) =>
        Assess("us-ga", "truck", rating, $"frame-height: {height}", "2023-06-01").Verdict.ShouldBe(expected);

    [Fact]
    public void Georgias_figures_are_open_since_the_act_of_2024_was_not_read() =>
        Assess("us-ga", "truck", "4500 lb", "frame-height: 20 in").Verdict.ShouldBeNull(); // Senate Bill 352, chaptered 6 May 2024

    [Theory]
    [InlineData("4500 lb", "24 in", "26 in", Within)] // 29-A MRSA 1920(1)(B): 4,500 lb and less, 24 front, 26 rear
    [InlineData("4500 lb", "24.1 in", "26 in", Beyond)]
    [InlineData("4500 lb", "24 in", "26.1 in", Beyond)]
    [InlineData("7500 lb", "27 in", "29 in", Within)] // 1920(1)(C): 4,501 to 7,500 lb, 27 front, 29 rear
    [InlineData("10000 lb", "28 in", "30 in", Within)] // 1920(1)(D): 7,501 to 10,000 lb, 28 front, 30 rear
    [InlineData("10000 lb", "28 in", "30.1 in", Beyond)]
    [InlineData("10001 lb", "29 in", "31 in", Within)] // 1920(1)(E): 10,001 to 11,500 lb, 29 front, 31 rear
    [InlineData("4500 lb", "10 in", "10 in", Within)] // 1920(1): not less than 10 in
    [InlineData("4500 lb", "9.9 in", "12 in", Beyond)]
    public void Maines_frame_ends_have_a_greatest_and_a_least_height(string rating, string front, string rear, Pathway expected) =>
        RealBook.Assess("us-me", $"{Vehicle("truck", rating)}, built-below-minimum-height: no", $"front-frame-end-height: {front}, rear-frame-end-height: {rear}", "2018-06-01")
            .Verdict.ShouldBe(expected);

    [Fact]
    public void A_vehicle_that_its_maker_built_lower_may_stay_so_in_Maine() =>
        RealBook.Assess("us-me", $"{Vehicle("passenger-car", "4500 lb")}, built-below-minimum-height: yes", "front-frame-end-height: 9 in, rear-frame-end-height: 9 in", "2018-06-01")
            .Verdict.ShouldBe(Within); // 29-A MRSA 1920(1): lower than originally manufactured, if manufactured under 10 in

    [Fact]
    public void Maines_figures_are_open_since_the_amendment_of_2019_was_not_read()
    {
        var answer = Assess("us-me", "truck", "4500 lb", "front-frame-end-height: 20 in, rear-frame-end-height: 20 in");

        answer.Verdict.ShouldBeNull(); // 29-A MRSA 1920, history: 2019, c. 335, sections 2-4 (AMD)
        answer.Gaps.ShouldContain(gap => gap.Open!.Contains("335", StringComparison.Ordinal));
    }

    private static Assessment Assess(string place, string kind, string rating, string measured, string on = "2026-11-25") =>
        RealBook.Assess(place, Vehicle(kind, rating), measured, on);

    private static string Vehicle(string kind, string rating) => $"kind: {kind}, ratings: {{ gvm: {rating} }}";
}
