using RuleBook.Answers;
using RuleBook.Law;
using RuleBook.Physics.Masses;
using RuleBook.Physics.Tyres;
using RuleBook.Tables;
using RuleBook.Telling;
using RuleBook.Tests.Figures;
using static RuleBook.Tests.Answers.Scenario;

namespace RuleBook.Tests.Telling;

/// <summary>What a job leaves, as it is told; the figures are worked beside each check.</summary>
public sealed class MarginTextTests
{
    private const string Rated = """
        "vehicle": { "tyres": [ "265/65R17 112S" ], "tare": "2000 kg", "tanks": [ ], "built": "2006-07-01", "ratings": { "gvm": "3000 kg",
        "gcm": "6000 kg", "braked-tow": "3000 kg", "front-axle": "1450 kg", "rear-axle": "1750 kg" } },
        "measured": { "weighbridge": { "mass": "2100 kg", "mass-state": "unladen" } }, "modification": { "suspension-lift": "10 mm" }
        """;

    [Fact]
    [Trait("Basis", "derived")]
    public void A_limit_that_may_be_reached_is_told_as_at_most_and_one_that_may_not_as_under()
    {
        Told(Stating(Tiers), Lift("30 mm")).ShouldContain("- allowed without a certificate: up, at most 50 mm; down, no limit");
        Told(
                Stating(
                    """ "tiers": [ { "pathway": "no-certificate", "within": { "suspension-lift": { "under": "50 mm" } } } ],"""
                        + """ "beyond": "prohibited" """
                ),
                Lift("30 mm")
            )
            .ShouldContain("- allowed without a certificate: up, under 50 mm; down, no limit");
    }

    /// <summary>Which category it is was not stated: one may be raised by 50 mm, the other by as much as stands beside it.</summary>
    [Theory]
    [Trait("Basis", "derived")]
    [InlineData("80 mm", "up, at most 50 mm (perhaps at most 80 mm: what holds is not known)")]
    [InlineData("not-limited", "up, at most 50 mm (perhaps without limit: what holds is not known)")]
    [InlineData(null, "up, not for sure (perhaps at most 50 mm: what holds is not known)")]
    public void What_is_left_for_sure_is_told_before_what_may_be_left(string? other, string told)
    {
        string Tier(string category, string within) =>
            $$"""
                { "pathway": "no-certificate", "name": "{{category}}", "when": { "category": "{{category}}" }, "within": { {{within}} } }
                """;
        var tiers = Tier("MC", """ "suspension-lift": { "at-least": "0 mm", "at-most": "50 mm" } """);
        if (other is not null)
            tiers +=
                ", "
                + Tier("NA", other == "not-limited" ? "" : $$""" "suspension-lift": { "at-least": "0 mm", "at-most": "{{other}}" } """);
        var lines = Told(Stating($$""" "tiers": [ {{tiers}} ], "beyond": "prohibited" """), Lift("30 mm"));
        lines.ShouldContain(line => line.StartsWith($"- allowed without a certificate: {told}", StringComparison.Ordinal));
        lines.ShouldContain(line =>
            line.StartsWith("?  vehicle.category would give: what is left for sure of suspension-lift", StringComparison.Ordinal)
        );
    }

    /// <summary>GCM 6000 less 2100 kg of vehicle, as weighed, leave 3900 kg; the vehicle may tow 3000.</summary>
    [Fact]
    [Trait("Basis", "derived")]
    public void The_least_of_what_limits_the_trailer_governs_and_no_other_does()
    {
        var told = Told(Stating(Tiers), Rated);
        told.ShouldContain("- tow rating of the vehicle, braked trailer: 3000 kg (governs)");
        told.ShouldContain(line => line == "- GCM less the vehicle as loaded: 3900 kg");
    }

    /// <summary>
    /// 265/65R17 776 mm, 265/70R17 804 mm (handbook): at 100 km/h shown 100 x 804 / 776 = 103.6. Load index 112 is 1120 kg a tyre: 2240
    /// less 1750 kg on the rear axle leave 490, less 1450 on the front 790.
    /// </summary>
    [Fact]
    [Trait("Basis", "published")]
    public void A_size_is_told_as_reading_low_where_it_would_and_by_what_it_leaves_on_the_tighter_axle()
    {
        var book = Stating(Tiers);
        book = book with
        {
            Reference = Reckoned.Book.Reference with
            {
                TyreSizes = [TyreSize.Parse("265/65R17"), TyreSize.Parse("265/70R17")],
                Speedometer = [.. Reckoned.Book.Reference.Speedometer.Select(period => period with { Jurisdiction = "au" })],
            },
        };
        var told = Told(book, Rated);
        told.ShouldContain(line => line.StartsWith("265/70R17|28 mm, 3.6 %|", StringComparison.Ordinal) && line.Contains("|103.6 (low)|"));
        told.ShouldContain(line => line.StartsWith("265/65R17|", StringComparison.Ordinal) && line.Contains("|112: 490 kg left|100|"));
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void A_size_that_may_need_more_is_told_with_both_and_what_is_missing_with_what_it_would_give()
    {
        var book = Stating(Tiers);
        book = book with { Reference = Reckoned.Book.Reference with { TyreSizes = [TyreSize.Parse("265/70R17")] } };
        var answer = MarginFinder.Find(book, Read(book, Rated));
        string Needs(Pathway best, Pathway worst) =>
            Told(answer with { Sizes = [answer.Sizes.Single() with { Outcome = new Outcome(best, worst) }] })
                .Single(line => line.StartsWith("265/70R17|", StringComparison.Ordinal))
                .Split('|')[^1];
        Needs(Pathway.NoCertificate, Pathway.Certificate).ShouldBe("no certificate or certificate");
        Needs(Pathway.Certificate, Pathway.Certificate).ShouldBe("certificate");
        Told(answer with { Missing = [new MissingFact("vehicle.wheelbase", "the mass on each axle")] })
            .ShouldContain("?  vehicle.wheelbase would give: the mass on each axle");
    }

    private static List<string> Told(Book book, string job) => Told(MarginFinder.Find(book, Read(book, job)));

    private static List<string> Told(MarginAnswer answer)
    {
        var page = new Told();
        MarginText.Write(page, answer);
        return page.Lines;
    }
}
