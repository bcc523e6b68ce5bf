using RuleBook.Answers;
using RuleBook.Law;
using RuleBook.Tables;

namespace RuleBook.Authoring.Tests.Books;

/// <summary>Absolute frame heights by mass class: the data against the statutes, section named beside each check.</summary>
public sealed class StatuteTests
{
    private const Pathway Within = Pathway.NoCertificate;
    private const Pathway Beyond = Pathway.Prohibited;

    [Theory]
    [InlineData("truck", 1, 4500, 27)] // California Vehicle Code 24008.5(b)(2): up to 4,500 lb GVWR, 27 in
    [InlineData("truck", 4501, 7500, 30)] // 4,501 to 7,500 lb, 30 in
    [InlineData("truck", 7501, 10000, 31)] // 7,501 to 10,000 lb, 31 in
    [InlineData("motor-home", 1, 4500, 27)] // 24008.5(b)(2): "including housecars"
    [InlineData("passenger-car", 1, 12000, 23)] // 24008.5(b)(1): passenger vehicles except housecars, 23 in, without classes
    [InlineData("multipurpose-passenger-vehicle", 1, 12000, 23)] // DMV, Vehicle Definitions: sport utility vehicles too
    public void Californias_frame_height_follows_kind_and_rating(string kind, int lightest, int heaviest, int limit) =>
        FrameHeight("us-ca", kind, lightest, heaviest, limit);

    [Theory]
    [InlineData("body-floor-above-frame: 5 in", Within)] // California Vehicle Code 24008.5(c): not more than five inches
    [InlineData("body-floor-above-frame: 5.1 in", Beyond)]
    public void Californias_body_floor_may_stand_five_inches_above_the_frame(string floor, Pathway expected) =>
        RealBook
            .Assess("us-ca", Vehicle("truck", "6000 lb"), $"frame-height: 28 in, {floor}", modification: "body-lift: 2 in")
            .Verdict.ShouldBe(expected);

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
    [InlineData("15000 lb", "28.1 in", Beyond)] // scope: House Bill 49 of 2001, 15,000 lb
    [InlineData("15000.1 lb", "28.1 in", null)] // beyond that scope nothing is established
    public void Utahs_classes_begin_at_their_edge(string rating, string height, Pathway? expected) =>
        Assess("us-ut", "truck", rating, $"frame-height: {height}").Verdict.ShouldBe(expected);

    [Theory]
    [InlineData("3 in", Within)] // Utah Code 41-6a-1631(1)(h): not more than three inches above the top of the frame
    [InlineData("3.1 in", Beyond)]
    public void Utahs_body_floor_may_be_raised_to_three_inches_above_the_frame(string floor, Pathway expected) =>
        RealBook
            .Assess(
                "us-ut",
                Vehicle("truck", "4500 lb"),
                $"frame-height: 24 in, body-floor-above-frame: {floor}",
                "2026-11-25",
                "body-lift: 1 in"
            )
            .Verdict.ShouldBe(expected);

    [Theory]
    [InlineData(1, 4500, 27)] // OCGA 40-8-6.1: 4,500 lb or less, 27 in
    [InlineData(4501, 7500, 30)] // not less than 4,501 and not more than 7,500 lb, 30 in
    [InlineData(7501, 14000, 31)] // not less than 7,501 and not more than 14,000 lb, 31 in
    public void Georgias_trucks_have_three_classes_up_to_14000_pounds(int lightest, int heaviest, int limit) =>
        FrameHeight("us-ga", "truck", lightest, heaviest, limit, "2023-06-01");

    [Theory]
    [InlineData("2 in", Within)] // OCGA 40-8-6(a) (code of 2010): not more than two inches above or below the factory's
    [InlineData("2.1 in", Beyond)]
    [InlineData("-2 in", Within)]
    [InlineData("-2.1 in", Beyond)]
    public void Georgias_private_passenger_vehicles_may_change_by_two_inches(string lift, Pathway expected) =>
        RealBook.Assess("us-ga", "kind: passenger-car", "", "2023-06-01", $"suspension-lift: {lift}").Verdict.ShouldBe(expected);

    [Fact]
    public void Georgias_figures_are_open_since_the_act_of_2024_was_not_read() =>
        Assess("us-ga", "truck", "4500 lb", "frame-height: 20 in").Verdict.ShouldBeNull(); // Senate Bill 352, chaptered 6 May 2024

    [Theory]
    [InlineData(1, 4500, 24, 26)] // 29-A MRSA 1920(1)(B): 4,500 lb and less, 24 front, 26 rear
    [InlineData(4501, 7500, 27, 29)] // 1920(1)(C): 4,501 to 7,500 lb, 27 front, 29 rear
    [InlineData(7501, 10000, 28, 30)] // 1920(1)(D): 7,501 to 10,000 lb, 28 front, 30 rear
    [InlineData(10001, 11500, 29, 31)] // 1920(1)(E): 10,001 to 11,500 lb, 29 front, 31 rear
    public void Maines_frame_ends_have_a_greatest_height_by_rating(int lightest, int heaviest, int front, int rear)
    {
        foreach (var rating in new[] { lightest, heaviest })
        {
            Maine("truck", $"{rating} lb", "no", $"{front} in", $"{rear} in").Verdict.ShouldBe(Within);
            Maine("truck", $"{rating} lb", "no", $"{front}.1 in", $"{rear} in").Verdict.ShouldBe(Beyond);
            Maine("truck", $"{rating} lb", "no", $"{front} in", $"{rear}.1 in").Verdict.ShouldBe(Beyond);
        }
    }

    [Theory]
    [InlineData("10 in", "10 in", Within)] // 29-A MRSA 1920(1): not less than 10 in
    [InlineData("9.9 in", "10 in", Beyond)]
    [InlineData("10 in", "9.9 in", Beyond)]
    public void Maines_frame_ends_have_a_least_height(string front, string rear, Pathway expected) =>
        Maine("truck", "4500 lb", "no", front, rear).Verdict.ShouldBe(expected);

    [Fact]
    public void A_vehicle_that_its_maker_built_lower_may_stay_so_in_Maine()
    {
        // 29-A MRSA 1920(1): not lower than originally manufactured, if originally manufactured to be less than 10 inches.
        Maine("passenger-car", "4500 lb", "yes", "9 in", "9 in").Verdict.ShouldBe(Within);
    }

    [Fact]
    public void Maines_figures_are_open_since_the_amendment_of_2019_was_not_read()
    {
        var answer = Assess("us-me", "truck", "4500 lb", "front-frame-end-height: 20 in, rear-frame-end-height: 20 in");

        answer.Verdict.ShouldBeNull(); // 29-A MRSA 1920, history: 2019, c. 335, sections 2-4 (AMD)
        answer.Gaps.ShouldContain(gap => gap.Open!.Contains("335", StringComparison.Ordinal));
    }

    /// <summary>
    /// At the lightest and the heaviest rating of a class: the limit itself is within, a tenth of an inch more is beyond.
    /// </summary>
    private static void FrameHeight(string place, string kind, int lightest, int heaviest, int limit, string on = "2026-11-25")
    {
        foreach (var rating in new[] { lightest, heaviest })
        {
            Assess(place, kind, $"{rating} lb", $"frame-height: {limit} in", on).Verdict.ShouldBe(Within);
            Assess(place, kind, $"{rating} lb", $"frame-height: {limit}.1 in", on).Verdict.ShouldBe(Beyond);
        }
    }

    private static Assessment Maine(string kind, string rating, string builtLower, string front, string rear) =>
        RealBook.Assess(
            "us-me",
            $"{Vehicle(kind, rating)}, built-below-minimum-height: {builtLower}",
            $"front-frame-end-height: {front}, rear-frame-end-height: {rear}",
            "2018-06-01"
        );

    private static Assessment Assess(string place, string kind, string rating, string measured, string on = "2026-11-25") =>
        RealBook.Assess(place, Vehicle(kind, rating), measured, on);

    private static string Vehicle(string kind, string rating) => $"kind: {kind}, ratings: {{ gvm: {rating} }}";
}
