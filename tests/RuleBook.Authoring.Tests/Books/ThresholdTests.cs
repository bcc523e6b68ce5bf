using RuleBook.Law;

namespace RuleBook.Authoring.Tests.Books;

/// <summary>New Zealand's thresholds of certification: the data against the inspection manual, place named beside each check.</summary>
public sealed class ThresholdTests
{
    [Fact]
    public void A_leaf_spring_block_of_50_mm_needs_no_certification()
    {
        // VIRM, entry certification (new light vehicles), technical bulletin 1, as at 29 March 2024: "not more than 50mm in height".
        var answer = Assess("suspension-lift: 50 mm, leaf-spring-block: 50 mm");

        answer.Verdict.ShouldBe(Pathway.NoCertificate);
        answer
            .Findings.SelectMany(finding => finding.Conditions)
            .Select(state => state.Condition.Name)
            .ShouldBe(["leaf-blocks-fit-for-purpose", "leaf-springs-not-raised-otherwise"]);
    }

    [Fact]
    public void A_leaf_spring_block_of_51_mm_is_certified_and_how_far_that_reaches_is_open()
    {
        // The same bulletin; above the threshold LVV Standard 195-00(02) governs, whose limits were not read.
        var answer = Assess("suspension-lift: 51 mm, leaf-spring-block: 51 mm");

        answer.Between.Best.ShouldBe(Pathway.Certificate);
        answer.Verdict.ShouldBeNull();
        answer.Certification!.Papers.ShouldContain("LVV certification plate fixed to the vehicle"); // VIRM entry certification 1-6
    }

    [Fact]
    public void A_block_that_lowers_is_under_the_same_threshold() =>
        Assess("suspension-lift: -50 mm, leaf-spring-block: 50 mm").Verdict.ShouldBe(Pathway.NoCertificate); // bulletin 1: "up or down"

    [Fact]
    public void Blocks_raised_by_other_means_as_well_are_above_the_threshold()
    {
        // The same bulletin: the leaf spring suspension has not been raised by any other means.
        var answer = RealBook.Assess(
            """
            registered-in: nz
            on: 2026-11-25
            modification: { suspension-lift: 80 mm, leaf-spring-block: 50 mm }
            shown: { leaf-springs-not-raised-otherwise: no }
            vehicle: {}
            """
        );

        answer.Between.Best.ShouldBe(Pathway.Certificate);
    }

    [Fact]
    public void Springs_alone_stay_open_since_the_list_of_conditions_is_cut_off() => // press quotation, (a) and (b), cut within (b)(iii)
        Assess("suspension-lift: 40 mm, leaf-spring-block: 0 mm").Verdict.ShouldBeNull();

    [Fact]
    public void Before_March_2024_the_bulletin_is_not_known_to_have_been_in_force() => // the copy is as at 29 March 2024
        RealBook.Assess("nz", "", "", "2024-03-28", "suspension-lift: 50 mm, leaf-spring-block: 50 mm").Verdict.ShouldBeNull();

    private static Answers.Assessment Assess(string modification) => RealBook.Assess("nz", "", "", modification: modification);
}
