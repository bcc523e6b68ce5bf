using RuleBook.Law;

namespace RuleBook.Authoring.Tests.Books;

/// <summary>Bumper heights and front against rear: the data against the statutes and rules, section named beside each check.</summary>
public sealed class BumperStatuteTests
{
    private const Pathway Within = Pathway.NoCertificate;
    private const Pathway Beyond = Pathway.Prohibited;

    [Theory]
    [InlineData("passenger-car", "8000 lb", 22, 22)] // Ohio Adm. Code 4501-43-04(B): passenger vehicles 22 and 22
    [InlineData("truck", "4500 lb", 24, 26)] // 4501-43-04(B), all other vehicles: 4,500 lb and under 24 and 26
    [InlineData("truck", "4501 lb", 27, 29)] // 4,501 to 7,500 lb 27 and 29
    [InlineData("truck", "7500 lb", 27, 29)]
    [InlineData("truck", "7501 lb", 28, 31)] // 7,501 to 10,000 lb 28 and 31
    [InlineData("truck", "10000 lb", 28, 31)]
    [InlineData("multipurpose-passenger-vehicle", "6000 lb", 27, 29)] // RC 4513.021: not a passenger car
    public void Ohios_bumpers_follow_kind_and_rating(string kind, string rating, int front, int rear) =>
        Greatest("us-oh", $"kind: {kind}, ratings: {{ gvm: {rating} }}", front, rear);

    [Theory]
    [InlineData("4 in", Within)] // Ohio Adm. Code 4501-43-04(C): not exceed four inches
    [InlineData("4.1 in", Beyond)]
    public void Ohios_altered_body_may_stand_four_inches_above_the_frame_rail(string floor, Pathway expected) =>
        RealBook
            .Assess(
                "us-oh",
                "kind: passenger-car",
                $"{Bumpers("20 in", "20 in")}, body-floor-above-frame: {floor}",
                "2026-11-25",
                "body-lift: 2 in"
            )
            .Verdict.ShouldBe(expected);

    [Theory]
    [InlineData("passenger-car", "2499.9 lb", 22, 22)] // Fla. Stat. 316.251(1): automobiles under 2,500 lb 22 and 22
    [InlineData("passenger-car", "2500 lb", 24, 26)] // 2,500 lb or more but less than 3,500 lb 24 and 26
    [InlineData("passenger-car", "3499.9 lb", 24, 26)]
    [InlineData("passenger-car", "3500 lb", 27, 29)] // 3,500 lb or more 27 and 29
    [InlineData("passenger-car", "5000 lb", 27, 29)] // of those of not more than 5,000 lb
    [InlineData("truck", "1999.9 lb", 24, 26)] // trucks under 2,000 lb 24 and 26
    [InlineData("truck", "2000 lb", 27, 29)] // 2,000 but not more than 3,000 lb 27 and 29
    [InlineData("truck", "3000 lb", 27, 29)] // 3,000 lb stands in two classes; both bind
    [InlineData("truck", "3000.1 lb", 28, 30)] // 3,000 but not more than 5,000 lb 28 and 30
    [InlineData("truck", "5000 lb", 28, 30)]
    public void Floridas_bumpers_follow_the_net_shipping_weight(string kind, string weight, int front, int rear) =>
        Greatest("us-fl", $"kind: {kind}, net-shipping-weight: {weight}", front, rear);

    [Fact]
    // Fla. Stat. 316.251(1): net shipping weight of not more than 5,000 pounds.
    public void Above_5000_pounds_net_Florida_is_not_established() =>
        RealBook.Assess("us-fl", "kind: truck, net-shipping-weight: 5000.1 lb", Bumpers("28 in", "30 in")).Verdict.ShouldBeNull();

    [Fact]
    public void A_heavy_rating_gives_a_light_truck_no_higher_bumper_in_Florida()
    {
        // Fla. Stat. 316.251(1): the classes go by net weight; a rating of 6,000 lb changes nothing at 2,900 lb net.
        const string Truck = "kind: truck, net-shipping-weight: 2900 lb, ratings: { gvm: 6000 lb }";

        RealBook.Assess("us-fl", Truck, Bumpers("27 in", "29 in")).Verdict.ShouldBe(Within);
        RealBook.Assess("us-fl", Truck, Bumpers("28 in", "30 in")).Verdict.ShouldBe(Beyond);
    }

    [Fact]
    public void A_rating_alone_leaves_Florida_undecided()
    {
        // Fla. Stat. 316.251(1) names net weight only.
        var answer = RealBook.Assess("us-fl", "kind: truck, ratings: { gvm: 4500 lb }", Bumpers("26 in", "26 in"));

        answer.Verdict.ShouldBeNull();
        answer.Undecided.ShouldContain(effect => effect.Opening.Name == "vehicle.net-shipping-weight");
    }

    [Theory]
    [InlineData("31 in", "31 in", Pathway.Certificate)] // W. Va. Code 17C-15-48(a): 6 to 31 in; lift kit: 81 CSR 4-2.1
    [InlineData("31.1 in", "31 in", Beyond)]
    [InlineData("31 in", "31.1 in", Beyond)]
    [InlineData("6 in", "6 in", Pathway.Certificate)]
    [InlineData("5.9 in", "6 in", Beyond)]
    [InlineData("6 in", "5.9 in", Beyond)]
    public void West_Virginias_bumpers_have_a_greatest_and_a_least_height(string front, string rear, Pathway expected) =>
        RealBook.Assess("us-wv", "ratings: { gvm: 6000 lb }", Bumpers(front, rear)).Verdict.ShouldBe(expected);

    [Theory]
    [InlineData("9999 lb", "suspension-lift: 1 in", Pathway.Certificate)] // 81 CSR 4-2.1: rating of less than 10,000 lb
    [InlineData("10000 lb", "suspension-lift: 1 in", Within)]
    [InlineData("9999 lb", "suspension-lift: 0.1 mm", Pathway.Certificate)]
    [InlineData("9999 lb", "suspension-lift: -1 in", Within)] // 81 CSR 4-2.1 names lift kits and tyres
    [InlineData("9999 lb", "body-lift: 3 in", Pathway.Certificate)] // 17C-15-48(b): a body kit of up to 3 in
    [InlineData("9999 lb", "body-lift: 3.1 in", Beyond)]
    public void West_Virginia_inspects_lifted_vehicles_under_10000_pounds(string rating, string modification, Pathway expected) =>
        RealBook
            .Assess("us-wv", $"ratings: {{ gvm: {rating} }}", Bumpers("25 in", "25 in"), modification: modification)
            .Verdict.ShouldBe(expected);

    [Theory]
    [InlineData("2021-12-01", "front-fender-above-rear: 3.9 in", "suspension-lift: 8 in", Within)] // NC GS 20-135.4(d): 4 or more inches
    [InlineData("2021-12-01", "front-fender-above-rear: 4 in", "suspension-lift: 8 in", Beyond)]
    [InlineData("2021-11-30", "", "suspension-lift: 6 in", Within)] // (d) as it stood: more than six inches needs prior written approval
    [InlineData("2021-11-30", "", "suspension-lift: 6.1 in", Pathway.Approval)]
    [InlineData("2021-11-30", "", "suspension-lift: -6 in", Within)]
    [InlineData("2021-11-30", "", "suspension-lift: -6.1 in", Pathway.Approval)]
    public void North_Carolina_went_from_lift_to_front_against_rear(string on, string measured, string modification, Pathway expected) =>
        RealBook.Assess("us-nc", "kind: passenger-car", measured, on, modification).Verdict.ShouldBe(expected);

    [Theory]
    [InlineData("passenger-car", "no", 22)] // Tenn. Code 55-9-215(b)(1): not more than 22 in
    [InlineData("passenger-car", "yes", 22)]
    [InlineData("multipurpose-passenger-vehicle", "no", 22)]
    [InlineData("multipurpose-passenger-vehicle", "yes", 31)] // 55-9-215(b)(2): four-wheel drive recreational, 14 to 31 in
    public void Tennessees_bumpers_follow_the_kind_of_vehicle(string kind, string four, int limit) =>
        Greatest("us-tn", $"kind: {kind}, four-wheel-drive: {four}", limit, limit, ", front-fender-above-rear: 0 in");

    [Theory]
    [InlineData("14 in", "14 in", Within)] // Tenn. Code 55-9-215(b)(2): 14 to 31 in
    [InlineData("13.9 in", "14 in", Beyond)]
    [InlineData("14 in", "13.9 in", Beyond)]
    public void Tennessees_recreational_four_wheel_drives_have_a_least_height(string front, string rear, Pathway expected) =>
        RealBook
            .Assess(
                "us-tn",
                "kind: multipurpose-passenger-vehicle, four-wheel-drive: yes",
                $"{Bumpers(front, rear)}, front-fender-above-rear: 0 in"
            )
            .Verdict.ShouldBe(expected);

    [Theory]
    [InlineData("2024-07-01", Beyond)] // press on the law in force from 1 July 2024: four inches or more (second hand)
    [InlineData("2024-06-30", null)] // before that day nothing is recorded
    public void Tennessee_forbids_a_front_four_inches_above_the_rear_since_July_2024(string on, Pathway? expected) =>
        RealBook
            .Assess("us-tn", "kind: passenger-car", $"{Bumpers("20 in", "20 in")}, front-fender-above-rear: 4 in", on)
            .Verdict.ShouldBe(expected);

    /// <summary>The limits themselves are within; a tenth of an inch more, front or rear, is beyond.</summary>
    private static void Greatest(string place, string vehicle, int front, int rear, string besides = "")
    {
        RealBook.Assess(place, vehicle, Bumpers($"{front} in", $"{rear} in") + besides).Verdict.ShouldBe(Within);
        RealBook.Assess(place, vehicle, Bumpers($"{front}.1 in", $"{rear} in") + besides).Verdict.ShouldBe(Beyond);
        RealBook.Assess(place, vehicle, Bumpers($"{front} in", $"{rear}.1 in") + besides).Verdict.ShouldBe(Beyond);
    }

    private static string Bumpers(string front, string rear) => $"front-bumper-height: {front}, rear-bumper-height: {rear}";
}
