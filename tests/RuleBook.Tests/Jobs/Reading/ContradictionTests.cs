using RuleBook.Law;
using RuleBook.Text;

namespace RuleBook.Tests.Jobs.Reading;

/// <summary>
/// Facts of a job that cannot hold together are refused with both places. Bounds of categories as the brake manual's glossary gives them.
/// </summary>
public sealed class ContradictionTests
{
    private static readonly Book Book = JobBook.Book with
    {
        Reference = JobBook.Book.Reference with
        {
            Categories =
            [
                new CategoryBounds("MC", null, null, null, null, 9, []),
                new CategoryBounds("NA", "goods", null, 3500, null, null, []),
                new CategoryBounds("NB1", "goods", 3500, 4500, null, null, []),
            ],
        },
    };

    [Theory]
    [Trait("Basis", "published")]
    [InlineData(""" "vehicle": { "built": "2021-05", "first-registered": "2021-04-30" } """, "vehicle.built", "vehicle.first-registered")]
    [InlineData(""" "vehicle": { "category": "NA", "ratings": { "gvm": "3501 kg" } } """, "vehicle.category", "vehicle.ratings.gvm")]
    [InlineData(""" "vehicle": { "category": "NB1", "ratings": { "gvm": "3500 kg" } } """, "vehicle.category", "vehicle.ratings.gvm")]
    [InlineData(""" "vehicle": { "category": "MC", "seats": "10" } """, "vehicle.category", "vehicle.seats")]
    [InlineData(""" "vehicle": { "ratings": { "gvm": "3500 kg", "gcm": "3400 kg" } } """, "vehicle.ratings.gcm", "vehicle.ratings.gvm")]
    [InlineData(
        """ "vehicle": { "ratings": { "gvm": "3500 kg", "front-axle": "1600 kg", "rear-axle": "1899 kg" } } """,
        "vehicle.ratings.gvm",
        "vehicle.ratings.front-axle"
    )]
    [InlineData(""" "trailer": { "ratings": { "atm": "2800 kg", "gtm": "2900 kg" } } """, "trailer.ratings.gtm", "trailer.ratings.atm")]
    public void What_cannot_hold_together_is_refused_with_both_places(string job, string here, string there)
    {
        var problem = Problems($$"""{ "registered-in": "xa", "on": "2026-11-25", {{job}} }""").ShouldHaveSingleItem();
        (problem.Code, problem.Mark.File).ShouldBe(("contradiction", here));
        problem.Text.ShouldContain(there);
    }

    [Theory]
    [Trait("Basis", "published")]
    // On the first day that it may have been built.
    [InlineData(""" "vehicle": { "built": "2021-05", "first-registered":""" + """ "2021-05-01" } """)]
    [InlineData(""" "vehicle": { "category": "NA", "ratings": { "gvm": "3500 kg" } } """)]
    [InlineData(""" "vehicle": { "category": "NB1", "ratings": { "gvm": "4500 kg" } } """)]
    [InlineData(""" "vehicle": { "category": "MC", "seats": "9" } """)]
    [InlineData(""" "vehicle": { "ratings": { "gvm": "3500 kg", "gcm": "3500 kg", "front-axle": "1600 kg", "rear-axle": "1900 kg" } } """)]
    public void What_can_hold_together_is_read(string job) =>
        RuleBook
            .Jobs.Reading.JobReader.Read(Nodes.Of($$"""{ "registered-in": "xa", "on": "2026-11-25", {{job}} }"""), Book)
            .Warnings.ShouldBeEmpty();

    [Fact]
    [Trait("Basis", "derived")]
    public void Work_is_not_done_before_the_vehicle_is_built()
    {
        Problems("""{ "registered-in": "xa", "dates": { "work": "2021-04-30" }, "vehicle": { "built": "2021-05" } }""")
            .ShouldHaveSingleItem()
            .Mark.File.ShouldBe("dates.work");
        Problems("""{ "registered-in": "xa", "dates": { "work": "2021-05-30", "inspection": "2021-05-29" } }""")
            .ShouldHaveSingleItem()
            .Mark.File.ShouldBe("dates");
    }

    [Theory]
    [Trait("Basis", "derived")]
    [InlineData("285 mm", "impossible")]
    [InlineData("1500 mm", "implausible")]
    public void A_wheelbase_that_no_vehicle_has_is_refused_and_one_that_hardly_any_has_is_told(string wheelbase, string code)
    {
        var wheelbases = Tests.Answers.Made.MeasureOf("wheelbase") with
        {
            Job = "vehicle.wheelbase",
            Plausible = new(1600, 6500),
            Possible = new(1000, 12000),
        };
        var book = Book with { Vocabulary = Book.Vocabulary with { Measures = Book.Vocabulary.Measures.Add("wheelbase", wheelbases) } };
        var job = Nodes.Of($$"""{ "registered-in": "xa", "on": "2026-11-25", "vehicle": { "wheelbase": "{{wheelbase}}" } }""");
        if (code == "impossible")
        {
            var problem = Should
                .Throw<InputException>(() => RuleBook.Jobs.Reading.JobReader.Read(job, book))
                .Problems.ShouldHaveSingleItem();
            problem.Code.ShouldBe(code);
            problem.Tip.ShouldContain("2850 mm"); // the point elsewhere
        }
        else
        {
            RuleBook.Jobs.Reading.JobReader.Read(job, book).Warnings.ShouldHaveSingleItem().Code.ShouldBe(code);
        }
    }

    private static IReadOnlyList<Problem> Problems(string job) =>
        Should.Throw<InputException>(() => RuleBook.Jobs.Reading.JobReader.Read(Nodes.Of(job), Book)).Problems;
}
