using Fractions;
using RuleBook.Facts;
using RuleBook.Jobs;
using RuleBook.Jobs.Reading;
using RuleBook.Law;
using RuleBook.Physics.Tyres;
using RuleBook.Tests.Answers;
using RuleBook.Tests.Jobs;
using RuleBook.Tests.Jobs.Reading;
using RuleBook.Units;

namespace RuleBook.Tests.Facts;

/// <summary>Category, dates and measured tyres as facts.</summary>
public sealed class MoreFactsTests
{
    private static readonly Book Book = JobBook.Book with
    {
        Vocabulary = JobBook.Book.Vocabulary with
        {
            Measures = JobBook.Book.Vocabulary.Measures.Add(
                "tyre-diameter",
                Made.MeasureOf("tyre-diameter") with
                {
                    Job = "measured.tyre-diameter",
                }
            ),
        },
        Reference = JobBook.Book.Reference with
        {
            Categories =
            [
                new CategoryBounds("NA", "goods", null, 3500, null, null, []),
                new CategoryBounds("NB1", "goods", 3500, 4500, null, null, []),
                new CategoryBounds("MC", null, null, null, null, 9, []),
            ],
        },
    };

    [Theory]
    [Trait("Basis", "published")]
    [InlineData("NA", "3500 kg", "NA")] // up to 3.5 t (Commonwealth note on circular 0-4-6)
    [InlineData("NA", "3501 kg", "NB1")]
    [InlineData("NA", "4500 kg", "NB1")]
    [InlineData("MC", "3900 kg", "MC")] // a passenger vehicle has no bound of mass
    public void A_re_rating_over_3500_kg_makes_a_light_goods_vehicle_a_medium_one(string stated, string gvm, string judged)
    {
        var job = Read(
            $$""" "vehicle": { "category": "{{stated}}", "ratings": { "gvm": "3200 kg" } }, "modification": { "ratings": { "gvm":"""
                + $$""" "{{gvm}}" } } """
        );
        Facts(job).Words["category"].ShouldBe(judged);
        Assessor(job).Category?.Judged.Single().Category.ShouldBe(stated == judged ? null : judged);
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void Not_yet_registered_is_later_than_every_day_of_the_job()
    {
        var facts = Facts(Read(""" "vehicle": { "first-registered": "not-yet" } """));
        facts.Measure("first-registered", []).ShouldBe(new Interval(new DateOnly(2026, 11, 26).DayNumber, null));
        facts.Words["registered"].ShouldBe("no");
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void A_first_registration_in_a_month_is_some_day_of_it()
    {
        Facts(Read(""" "vehicle": { "first-registered": "2026-11" } """)).Words.ShouldBeEmpty(); // before or after the 25th
        Facts(Read(""" "vehicle": { "first-registered": "2026-10" } """)).Words["registered"].ShouldBe("yes");
    }

    [Fact]
    [Trait("Basis", "published")]
    public void A_measured_tyre_is_the_basis_of_the_growth_and_not_its_size()
    {
        // 265/65R17 by the handbook 776 mm; the tyre marked 265/70R17 measures 801 and not the handbook's 804 mm.
        const string Sizes =
            """ "vehicle": { "tyres": [ "265/65R17" ] }, "modification": { "tyres": "265/70R17" }, "measured": { "tyre-diameter":"""
            + """ "801 mm" } """;
        var growth = Facts(Read(Sizes)).Measures[FactSet.TyreGrowth];
        growth.Value.Exact.ShouldBe((Fraction)25);
        growth.Derivation.ShouldContain("measured");
        Facts(Read(""" "vehicle": { "tyres": [ "265/65R17" ] }, "measured": { "tyre-diameter": "801 mm" } """))
            .Measure(FactSet.TyreGrowth, [])
            .Exact.ShouldBe((Fraction)25);
    }

    private static Job Read(string more) => JobReader.Read(Nodes.Of($$"""{ "registered-in": "xa", "on": "2026-11-25", {{more}} }"""), Book);

    [Fact]
    [Trait("Basis", "derived")]
    public void Tyres_known_by_their_diameter_alone_leave_the_static_stability_factor_open() =>
        RuleBook
            .Figures.RoadReckoning.Of(
                Read(""" "vehicle": { "track": "1600 mm", "centre-of-mass": "720 mm" }, "measured": { "tyre-diameter": "801 mm" } """),
                null
            )
            .StabilityAfter.ShouldBeNull();

    private static FactSet Facts(Job job) => JobFacts.Of(job, Book.Vocabulary, job.Dates.For(null), DiameterBasis.Handbook);

    private static RuleBook.Answers.Assessment Assessor(Job job) => RuleBook.Answers.Assessor.Assess(Book, job);
}
