using RuleBook.Answers;
using RuleBook.Jobs.Reading;
using RuleBook.Law;
using RuleBook.Tables;
using RuleBook.Yaml;
using static RuleBook.Authoring.Tests.Changes.EditedBook;

namespace RuleBook.Authoring.Tests.Reading;

/// <summary>
/// A rule that holds in some regions of a place only is for vehicles of which a word of the vocabulary says the region (fact, rules and
/// figures are invented).
/// </summary>
public sealed class RegionTests
{
    private const string District = """

          - fact: district
            title: district of the keeper
            question: "In which district does the keeper live?"
            job: vehicle.district
            values: [coast, hills, plain]
            definition: The district in which the keeper of the vehicle lives.
        """;

    private static readonly Book Book = SmallBook.WithFact(
        District,
        ("au-qld", $"{{topic: ride-height, rules: [{Rule("inner", "[coast, hills]", 40)}, {Rule("plain", "plain", 60)}]}}"),
        ("au-sa", $"{{topic: ride-height, rules: [{Rule("raise", "", 50)}]}}")
    );

    [Theory]
    [InlineData("coast", 40, Pathway.NoCertificate)]
    [InlineData("hills", 41, Pathway.Prohibited)]
    [InlineData("plain", 41, Pathway.NoCertificate)]
    [InlineData("plain", 61, Pathway.Prohibited)]
    public void The_rule_of_the_region_decides(string district, int lift, Pathway gives) =>
        Answer(Book, Job("au-qld", $"district: {district}", lift)).ShouldBe(Only(gives));

    [Theory]
    [InlineData("")]
    [InlineData("district: unknown")]
    public void A_region_that_is_not_stated_is_asked_for_where_it_decides(string vehicle)
    {
        var answer = Assessor.Assess(Book, JobReader.Read(YamlText.Read(Job("au-qld", vehicle, 50), "job"), Book));

        answer.Between.ShouldBe(new Outcome(Pathway.NoCertificate, Pathway.Prohibited));
        answer
            .Undecided.ShouldHaveSingleItem()
            .Merged()
            .ShouldBe([("coast", Only(Pathway.Prohibited)), ("hills", Only(Pathway.Prohibited)), ("plain", Only(Pathway.NoCertificate))]);
        answer.Undecided[0].Opening.Name.ShouldBe("vehicle.district");
    }

    [Theory]
    [InlineData("au-qld", 40, Pathway.NoCertificate)]
    [InlineData("au-qld", 61, Pathway.Prohibited)]
    [InlineData("au-sa", 50, Pathway.NoCertificate)]
    public void A_region_is_not_asked_for_where_every_region_gives_the_same_or_none_matters(string place, int lift, Pathway gives) =>
        Answer(Book, Job(place, "", lift)).ShouldBe(Only(gives));

    private static string Rule(string name, string district, int most) =>
        $"{{rule: {name}, title: Raising, {(district.Length > 0 ? $"for: {{district: {district}}}, " : "")}versions: [{{from: 2011-01-01, "
        + $"sources: [{{cite: law, clause: '1'}}], tiers: [{{pathway: no-certificate, within: {{suspension-lift: {most} mm}}}}], beyond: "
        + "prohibited}]}";

    private static string Job(string place, string vehicle, int lift) =>
        $"{{ registered-in: {place}, on: 2026-11-28, vehicle: {{ {vehicle} }}, modification: {{ suspension-lift: {lift} mm }} }}";
}
