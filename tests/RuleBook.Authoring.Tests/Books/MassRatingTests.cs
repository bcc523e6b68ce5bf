using RuleBook.Answers;
using RuleBook.Law;
using RuleBook.Tables;
using RuleBook.Units;

namespace RuleBook.Authoring.Tests.Books;

/// <summary>Re-rating and certifying on the book of this repository, each with the source of what is expected.</summary>
public sealed class MassRatingTests
{
    private const string Rated =
        "vehicle: { category: NA, four-wheel-drive: yes, first-registered: 2015-03-02, ratings: { gvm: 3000 kg, gcm: 6000 kg } }";

    [Theory]
    // Motoring press, August 2018: GCM increases in service stopped earlier that year.
    [InlineData("au-qld", "2018-06-01", Pathway.Prohibited)]
    [InlineData("au-qld", "2023-06-01", Pathway.Certificate)] // motoring press, 17 March 2023: a new GCM code
    [InlineData("au-wa", "2019-06-01", Pathway.Prohibited)] // trade association: refused in service from December 2018
    public void A_higher_gcm_depends_on_the_state_and_the_year(string place, string on, Pathway expected) =>
        Assess(place, on, Rated, "ratings: { gcm: 6500 kg }").Verdict.ShouldBe(expected);

    [Fact]
    public void In_the_Northern_Territory_the_Registrar_may_record_a_higher_gcm_and_whether_he_does_is_open()
    {
        // Motor Vehicles Act (NT) section 60B(2) and (3), against two engineering firms' accounts that the office recognises none.
        var answer = Assess("au-nt", "2026-11-20", Rated, "ratings: { gcm: 6500 kg }");
        answer.Verdict.ShouldBeNull();
        answer.Between.ShouldBe(new Outcome(Pathway.Approval, Pathway.Prohibited));
    }

    [Fact]
    public void Before_the_first_registration_a_higher_gvm_takes_the_national_route()
    {
        // Commonwealth department, second stage of manufacture; Road Vehicle Standards Act 2018, section 24.
        var answer = Assess(
            "au-qld",
            "2026-11-20",
            "vehicle: { category: NA, four-wheel-drive: yes, first-registered: not-yet, ratings: { gvm: 3000 kg } }",
            "ratings: { gvm: 3500 kg }"
        );
        var route = answer.Findings.Single(finding => finding.Version.Rule.Topic == "mass-ratings");
        route.Version.Adopted.ShouldHaveSingleItem().Rule.ShouldBe("au/mass-ratings/raise-gvm");
        route.Version.Sources.ShouldContain(cited => cited.Source.Id == "second-stage-page" && cited.Source.ReadAs == ReadAs.Primary);
        answer.Certification.ShouldNotBeNull().Scheme.ShouldContain("Second stage of manufacture");
    }

    [Fact]
    public void The_day_after_its_first_registration_the_same_vehicle_takes_the_state_s_route()
    {
        // Queensland Code of Practice v2.8, section on the gross vehicle mass rating of light vehicles (LS11).
        var answer = Assess(
            "au-qld",
            "2026-11-20",
            "vehicle: { category: NA, four-wheel-drive: yes, first-registered: 2026-11-19, ratings: { gvm: 3000 kg } }",
            "ratings: { gvm: 3500 kg }"
        );
        answer.Verdict.ShouldBe(Pathway.Certificate);
        var route = answer.Findings.Single(finding => finding.Version.Rule.Topic == "mass-ratings");
        route.Version.Adopted.ShouldBeEmpty();
        route.Version.Sources.ShouldNotBeEmpty();
        answer.Certification.ShouldNotBeNull().Scheme.ShouldContain("Approved Person");
    }

    [Theory]
    [InlineData("4500 kg", false)]
    [InlineData("4501 kg", true)] // South Australia, light vehicle mass re-rating: above 4,500 kg the vehicle becomes heavy
    public void Above_4500_kg_it_is_no_longer_a_light_vehicle_and_the_answer_says_what_that_means(string gvm, bool heavy)
    {
        var answer = Assess("au-qld", "2026-11-20", Rated, $"ratings: {{ gvm: {gvm} }}");
        (answer.Verdict == Pathway.Certificate).ShouldBe(!heavy);
        answer.Cautions.Any(caution => caution.Contains("no longer a light vehicle", StringComparison.Ordinal)).ShouldBe(heavy);
    }

    [Fact]
    public void A_signatory_appointed_where_the_vehicle_is_registered_may_certify_wherever_the_work_is_done()
    {
        // Common practice, no source: a signatory certifies under the scheme of the state of registration, only if appointed there.
        var answer = Lifted("au-vic", "[au-sa, au-vic]");
        answer.Certification.ShouldNotBeNull().MayCertify.ShouldBe(Truth.Yes);
        answer.Certification.Papers.ShouldContain(paper => paper.StartsWith("VASS", StringComparison.Ordinal)); // VSI 8, October 2021
    }

    [Fact]
    public void Whether_a_signatory_of_another_state_may_certify_is_open_where_nobody_says()
    {
        var certification = Lifted("au-wa", "[au-sa, au-vic]").Certification.ShouldNotBeNull(); // common practice, no source
        certification.MayCertify.ShouldBe(Truth.Unknown); // the book of the state has it among what is not established
        certification.Why.ShouldNotBeNull().ShouldContain("not appointed in Western Australia");
    }

    [Fact]
    public void In_South_Australia_the_application_comes_before_the_work()
    {
        // South Australian Government fact sheet on light vehicle modification: MR 620, requirements, work, report, inspection, exemption.
        var steps = RealBook
            .Assess(
                """
                registered-in: au-sa
                on: 2021-08-15
                vehicle: { category: MC, four-wheel-drive: yes }
                modification: { suspension-lift: 60 mm }
                """
            )
            .Certification.ShouldNotBeNull()
            .Steps;
        steps[0].BeforeWork.ShouldBeTrue();
        steps[0].Text.ShouldContain("MR 620");
    }

    private static Assessment Assess(string place, string on, string vehicle, string modification) =>
        RealBook.Assess(
            $$"""
            registered-in: {{place}}
            on: {{on}}
            {{vehicle}}
            modification: { {{modification}} }
            """
        );

    private static Assessment Lifted(string place, string appointed) =>
        RealBook.Assess(
            $$"""
            registered-in: {{place}}
            dates: { work: 2026-09-14, certification: 2026-09-30 }
            vehicle: { category: NA, four-wheel-drive: yes, stability-control: no }
            modification: { suspension-lift: 60 mm }
            certifier: { appointed-in: {{appointed}} }
            """
        );
}
