using RuleBook.Law;
using RuleBook.Telling;
using static RuleBook.Tests.Answers.Scenario;

namespace RuleBook.Tests.Telling;

/// <summary>The job in one line, written by hand: what was typed and nothing else, what is changed first.</summary>
[Trait("Basis", "derived")]
public sealed class JobLineTests
{
    private static readonly Book Stated = Stating(Tiers) with { Reference = Figures.Reckoned.Book.Reference };

    [Fact]
    public void Everything_that_changes_stands_in_it_with_what_it_was() =>
        Line(
                """
                "job": "W-1",
                "vehicle": { "category": "MC", "built": "2020-05", "tyres": [ "265/65R17", "245/70R17" ], "tare": "2000 kg",
                  "tanks": [ { "capacity": "80 L", "fuel": "diesel" } ],
                  "ratings": { "gvm": "3000 kg", "gcm": "6000 kg", "front-axle": "1400 kg", "rear-axle": "1700 kg", "braked-tow": "3000 kg",
                    "unbraked-tow": "700 kg", "ball": "300 kg" } },
                "modification": { "suspension-lift": "60 mm", "body-lift": "25 mm", "tyres": "265/70R17", "track-increase": "40 mm",
                  "springs": { "rear": { "wheel-rate": "30 N/mm" } },
                  "accessories": [ { "name": "bar", "mass": "60 kg" }, { "name": "winch", "mass": "30 kg" } ],
                  "tanks": [ { "capacity": "50 L", "fuel": "diesel" } ],
                  "ratings": { "gvm": "3500 kg", "gcm": "6500 kg", "front-axle": "1500 kg", "rear-axle": "1900 kg", "braked-tow": "3500 kg",
                    "unbraked-tow": "750 kg", "ball": "350 kg" } },
                "trailer": { "mass": "2890 kg", "ball-load": "240 kg" },
                "measured": { "frame-height": "500 mm",
                  "before": { "mass-state": "unladen", "front-left": "480 mm", "front-right": "480 mm" },
                  "after": { "mass-state": "unladen", "front-left": "540 mm", "front-right": "540 mm" },
                  "weighbridge": { "mass": "2200 kg", "mass-state": "unladen" } }
                """
            )
            .ShouldBe(
                "W-1: MC, built 2020-05, body lift 25 mm, suspension lift 60 mm, heights measured, springs, "
                    + "tyres 265/65R17 or 245/70R17 -> 265/70R17, GVM 3000 -> 3500 kg, GCM 6000 -> 6500 kg, front axle 1400 -> 1500 kg, "
                    + "rear axle 1700 -> 1900 kg, braked towing mass 3000 -> 3500 kg, unbraked towing mass 700 -> 750 kg, "
                    + "ball load limit 300 -> 350 kg, 2 accessories, 1 tank, trailer 2890 kg with 240 kg on the ball, weighed, "
                    + "frame height 500 mm, track increase 40 mm"
            );

    [Theory]
    [InlineData("", "The job: a vehicle of which nothing is stated")]
    [InlineData(""", "modification": { "suspension-lift": "0 mm" } """, "The job: a vehicle of which nothing is stated")]
    [InlineData(""", "modification": { "suspension-lift": "unknown" } """, "The job: suspension lift not known")]
    [InlineData(""", "modification": { "body-lift": "unknown" } """, "The job: body lift not known")]
    [InlineData(""", "modification": { "tyre-diameter-growth": "unknown" } """, "The job: size of the tyres fitted not known")]
    [InlineData(""", "modification": { "tyres": "265/70R17" } """, "The job: tyres 265/70R17")]
    [InlineData(""", "modification": { "ratings": { "gvm": "3500 kg" } } """, "The job: GVM to 3500 kg")]
    [InlineData(""", "modification": { "springs": { "front": { "wheel-rate": "30 N/mm" } } } """, "The job: springs")]
    [InlineData(""", "modification": { "accessories": [ { "name": "bar" } ] } """, "The job: 1 accessory")]
    [InlineData(
        """, "modification": { "tanks": [ { "capacity": "50 L", "fuel": "diesel" }, { "capacity": "40 L", "fuel": "diesel" } ] } """,
        "The job: 2 tanks"
    )]
    [InlineData(
        """, "modification": { "wheel-offset": { "before": "30 mm", "after": "-12.5 mm" } } """,
        "The job: wheel offset 30 mm -> -12.5 mm"
    )]
    [InlineData(""", "modification": { "wheel-offset": { "after": "0 mm" } } """, "The job: wheel offset not known -> 0 mm")]
    [InlineData(""", "trailer": { "ball-load": "240 kg" } """, "The job: trailer with 240 kg on the ball")]
    [InlineData(""", "trailer": { "mass": "900 kg" } """, "The job: trailer 900 kg")]
    public void Each_thing_that_is_stated_by_itself_is_told_by_itself(string more, string told) =>
        Line($"\"vehicle\": {{ }}{more}").ShouldBe(told);

    private static string Line(string job) => JobLine.Of(Read(Stated, job));
}
