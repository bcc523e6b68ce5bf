using CsCheck;
using Fractions;
using RuleBook.Answers;
using RuleBook.Authoring.Tests.Books;
using RuleBook.Facts;
using RuleBook.Jobs;
using RuleBook.Jobs.Reading;
using RuleBook.Law;
using RuleBook.Tables;
using RuleBook.Yaml;

namespace RuleBook.Authoring.Tests.Figures;

/// <summary>What is left within each pathway.</summary>
public sealed class MarginTests
{
    [Fact]
    public void In_Queensland_50_mm_of_suspension_need_no_certificate_and_75_mm_a_certificate()
    {
        // Queensland, vehicle standards notifications, codes LS9 and LS10, in force from 26 October 2018.
        var lift = Of("au-qld", "tyres: 265/70R17").Margins.Single(margin => margin.Measure.Name == "suspension-lift");
        Reach(lift, Pathway.NoCertificate).ShouldBe(new Reach(ReachKind.UpTo, 50, true));
        Reach(lift, Pathway.Certificate).ShouldBe(new Reach(ReachKind.UpTo, 75, true));
    }

    [Fact]
    public void A_total_leaves_for_one_part_what_the_others_have_not_used()
    {
        // Queensland, code LS9: 75 mm in all; 45 mm of suspension leave 30 mm, of which tyres may take 25 (50 mm of growth).
        var growth = Of("au-qld", "suspension-lift: 45 mm").Margins.Single(margin => margin.Measure.Name == FactSet.TyreGrowth);
        Reach(growth, Pathway.NoCertificate).ShouldBe(new Reach(ReachKind.UpTo, 50, true));
    }

    [Fact]
    public void Every_end_is_exact_at_it_the_pathway_holds_and_a_millionth_beyond_it_does_not() =>
        Gen.Select(Among(Registering), Among("suspension-lift", "body-lift", FactSet.TyreGrowth), Gen.Int[0, 60])
            .Sample(
                (place, measure, other) =>
                {
                    var rest = measure == "suspension-lift" ? $"body-lift: {other} mm" : $"suspension-lift: {other} mm";
                    var margin = Margins.Of(RealBook.Book, Read(place, rest), RealBook.Book.Jurisdiction(place)!, measure)!;
                    return margin
                        .Reaches.Where(reach => reach.Certain.Kind == ReachKind.UpTo)
                        .All(reach =>
                        {
                            var end = reach.Certain.Value!.Value;
                            var (at, beyond) = (At(end), At(end + new Fraction(1, 1_000_000)));
                            return (at.Worst <= reach.Pathway) == reach.Certain.Closed && beyond.Worst > reach.Pathway;
                        });

                    Outcome At(Fraction value) =>
                        Assessor.Assess(RealBook.Book, Read(place, $"{rest}, {measure}: {Units.Numbers.Show(value, 9)} mm")).Between;
                },
                iter: 60
            );

    [Fact]
    public void Sizes_that_fit_are_ranked_and_a_size_that_grows_too_much_is_not_among_them()
    {
        // National code as quoted by a trade sheet: +50 mm; 265/65R17 is 776 mm, 285/70R17 832 mm (tyre standards' rule), 56 mm more.
        var answer = Of("au-qld", "suspension-lift: 20 mm");
        var certain = answer.Sizes.Where(fit => fit.Outcome.Worst == Pathway.NoCertificate).ToArray();
        certain.ShouldContain(fit => fit.Size.Designation == "265/70R17");
        certain.ShouldNotContain(fit => fit.Size.Designation == "285/70R17");
        certain.ShouldAllBe(fit => fit.Growth.Growth.Amount <= 50);
        certain.Where(fit => fit.SameRim).Select(fit => fit.Growth.Growth.Amount!.Value).ShouldBeInOrder(SortDirection.Descending);
        answer.Sizes.Select(fit => fit.Outcome.Worst).ShouldBeInOrder();
    }

    [Fact]
    public void The_least_load_index_for_an_axle_carries_it_and_the_next_lower_does_not()
    {
        // UN Regulation 54, Annex 4, by the charts that agree: index 116 = 1250 kg, 115 = 1215 kg; two tyres under 2450 kg need 1225 kg
        // each.
        var load = Of("au-qld", "suspension-lift: 20 mm")
            .Sizes.First(fit => fit.Size.Designation == "265/70R17")
            .Loads.Single(each => each.Need.Axle == Physics.Masses.Axle.Rear);
        load.Need.Index!.Value.ShouldBe(116);
        load.MarginKg.ShouldBe(50);
    }

    private static readonly string[] Registering =
    [
        .. RealBook.Book.Jurisdictions.Where(place => place.Registers).Select(place => place.Id),
    ];

    private static Reach Reach(Margin margin, Pathway pathway) => margin.Reaches.Single(reach => reach.Pathway == pathway).Certain;

    private static MarginAnswer Of(string place, string modification) => MarginFinder.Find(RealBook.Book, Read(place, modification));

    private static Job Read(string place, string modification) =>
        JobReader.Read(
            YamlText.Read(
                $$"""
                registered-in: {{place}}
                on: 2026-11-20
                vehicle: { category: MC, four-wheel-drive: yes, stability-control: yes, built: 2019-03, first-registered: 2020-03-02,
                  ratings: { gvm: 3000 kg, front-axle: 1500 kg, rear-axle: 2450 kg }, tyres: 265/65R17 }
                modification: { {{modification}} }
                """,
                "job"
            ),
            RealBook.Book
        );

    private static Gen<string> Among(params string[] words) => Gen.Int[0, words.Length - 1].Select(i => words[i]);
}
