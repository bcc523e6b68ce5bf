using RuleBook.Law.Reading;
using RuleBook.Tests.Jobs;
using RuleBook.Text;

namespace RuleBook.Tests.Law.Reading;

/// <summary>What is wrong in a book is told with its place. Derived: what each file may say.</summary>
public sealed class WrongBookTests
{
    private const string Rules = "jurisdictions/xa/ride-height";

    [Theory]
    [Trait("Basis", "derived")]
    [InlineData("\"topic\": \"ride-height\"", "\"topic\": \"towing\"", "wrong-folder ")]
    [InlineData("\"topic\": \"ride-height\"", "\"colour\": \"white\"", "missing-key ", "wrong-folder ", "unknown-key colour")]
    [InlineData("\"title\": \"Raising\"", "\"titel\": \"Raising\"", "missing-key rules[0]", "unknown-key rules[0].titel")]
    [InlineData("\"decided-by\": \"inspection\"", "\"decided-by\": \"repair\"", "not-a-word rules[0].decided-by")]
    [InlineData("\"from\": \"2012-01-01\"", "\"from\": \"soon\"", "not-a-date rules[0].versions[0].from")]
    [InlineData("\"mass-state\": \"unladen\"", "\"mass-state\": \"empty\"", "not-a-word rules[0].versions[0].measured.mass-state")]
    [InlineData("\"note\": \"level\"", "\"nota\": \"level\"", "unknown-key rules[0].versions[0].measured.nota")]
    [InlineData("\"pathway\": \"no-certificate\"", "\"pathway\": \"nothing\"", "not-a-word rules[0].versions[0].tiers[0].pathway")]
    [InlineData("\"pathway\": \"no-certificate\", ", "", "missing-key rules[0].versions[0].tiers[0]")]
    [InlineData(
        "\"suspension-lift\": \"50 mm\"",
        "\"suspension-lft\": \"50 mm\"",
        "unknown-measure rules[0].versions[0].tiers[0].within.suspension-lft"
    )]
    [InlineData(
        "\"suspension-lift\": \"50 mm\"",
        "\"suspension-lift\": \"50 kg\"",
        "wrong-unit rules[0].versions[0].tiers[0].within.suspension-lift"
    )]
    [InlineData("\"at-least\": \"1 in\", \"at-most\": \"75 mm\"", "", "wrong-shape rules[0].versions[0].tiers[1].within.suspension-lift")]
    [InlineData(
        "\"at-most\": \"75 mm\"",
        "\"at-most\": \"75 mm\", \"under\": \"80 mm\"",
        "two-ends rules[0].versions[0].tiers[1].within.suspension-lift.under"
    )]
    [InlineData("\"at-most\": \"75 mm\"", "\"up-to\": \"75 mm\"", "unknown-key rules[0].versions[0].tiers[1].within.suspension-lift.up-to")]
    [InlineData("\"before\": \"2020-01-01\"", "\"before\": \"2020\"", "not-a-date rules[0].versions[0].tiers[1].when.built.before")]
    [InlineData(
        "\"stability-control\": \"yes\"",
        "\"stability-control\": \"maybe\"",
        "not-a-word rules[0].versions[0].tiers[1].when.stability-control"
    )]
    [InlineData("[ \"MC\", \"NA\" ]", "[ \"MC\", \"MD\" ]", "not-a-word rules[0].for.category[1]")]
    [InlineData(
        "\"provided\": [ \"lane-change-test\" ]",
        "\"provided\": [ \"lane-test\" ]",
        "unknown-condition rules[0].versions[0].tiers[0].provided[0]"
    )]
    [InlineData("\"codes\"", "\"code\"", "unknown-key rules[0].versions[0].tiers[1].code")]
    [InlineData("\"beyond\": \"prohibited\"", "\"beyond\": \"forbidden\"", "not-a-word rules[0].versions[0].beyond")]
    [InlineData("\"cite\": \"law\", \"clause\": \"4.2\"", "\"clause\": \"4.2\"", "missing-key rules[0].versions[0].sources[0]")]
    [InlineData(
        "\"as-of\": \"2018-01-01\"",
        "\"as-at\": \"2018-01-01\"",
        "missing-key rules[0].versions[1].adopts",
        "unknown-key rules[0].versions[1].adopts.as-at"
    )]
    [InlineData("{ \"tier\": \"approval\", \"drop\": \"yes\" }", "{ \"drop\": \"yes\" }", "one-content rules[0].versions[1].except[1]")]
    [InlineData(
        "{ \"tier\": \"approval\", \"drop\": \"yes\" }",
        "{ \"tier\": \"approval\", \"drip\": \"yes\" }",
        "unknown-key rules[0].versions[1].except[1].drip"
    )]
    [InlineData(
        "{ \"tier\": \"approval\", \"drop\": \"yes\" }",
        "{ \"tier\": \"approval\", \"add\": { \"pathway\": \"approval\" } }",
        "one-content rules[0].versions[1].except[1]"
    )]
    [InlineData("\"not-regulated\": \"no rule\"", "\"not-regulated\": \"no rule\", \"tiers\": [ ]", "one-content rules[0].versions[4]")]
    [InlineData("\"not-regulated\": \"no rule\",", "", "one-content rules[0].versions[4]")]
    [InlineData("\"open\": \"the notice\"", "\"opens\": \"the notice\"", "unknown-key rules[0].versions[3].not-established.opens")]
    [InlineData("\"taken\": \"50\"", "\"took\": \"50\"", "unknown-key rules[0].versions[4].disputed[0].took")]
    [InlineData(
        "\"says\": \"50\"",
        "\"said\": \"50\"",
        "missing-key rules[0].versions[4].disputed[0].readings[0]",
        "unknown-key rules[0].versions[4].disputed[0].readings[0].said"
    )]
    public void In_a_topic_each_mistake_is_told_at_its_place(string passage, string instead, params string[] wrong) =>
        Files.Wrong(Rules, passage, instead).ShouldBe(wrong);

    [Theory]
    [Trait("Basis", "derived")]
    [InlineData("jurisdictions/xa/jurisdiction", "\"jurisdiction\": \"xa\"", "\"jurisdiction\": \"xb\"", "wrong-folder ")]
    [InlineData("jurisdictions/xa/jurisdiction", "\"ask\": {", "\"asks\": {", "missing-key ", "unknown-key asks")]
    [InlineData("jurisdictions/xa/jurisdiction", "\"url\"", "\"uri\"", "unknown-key ask.uri")]
    [InlineData("jurisdictions/xa/jurisdiction", "\"state\": \"partial\"", "\"state\": \"half\"", "not-a-word coverage[0].state")]
    [InlineData("jurisdictions/xa/jurisdiction", "\"lacks\"", "\"lack\"", "unknown-key coverage[0].lack")]
    [InlineData(
        "jurisdictions/xa/jurisdiction",
        "\"caution\": \"take care\"",
        "\"warning\": \"take care\"",
        "missing-key cautions[0]",
        "unknown-key cautions[0].warning"
    )]
    [InlineData("jurisdictions/xa/sources", "\"read-as\": \"secondary\"", "\"read-as\": \"hearsay\"", "not-a-word sources[0].read-as")]
    [InlineData("jurisdictions/xa/sources", "\"read-as\": \"secondary\",", "", "missing-key sources[0]")]
    [InlineData("jurisdictions/xa/sources", "\"recheck-after\": \"2027-11\", ", "", "missing-key sources[0]")]
    [InlineData("jurisdictions/xa/sources", "\"edition\"", "\"editions\"", "unknown-key sources[0].editions")]
    [InlineData("jurisdictions/xa/certification", "\"topic\": \"certification\"", "\"topic\": \"schemes\"", "wrong-folder ")]
    [InlineData(
        "jurisdictions/xa/certification",
        "\"title\": \"Engineers\"",
        "\"titel\": \"Engineers\"",
        "missing-key schemes[0]",
        "unknown-key schemes[0].titel"
    )]
    [InlineData(
        "jurisdictions/xa/certification",
        "\"decides\": \"certifier\"",
        "\"decides\": \"nobody\"",
        "not-a-word schemes[0].versions[0].decides"
    )]
    [InlineData("jurisdictions/xa/certification", "\"papers\"", "\"paper\"", "unknown-key schemes[0].versions[0].issued[0].paper")]
    [InlineData(
        "jurisdictions/xa/certification",
        "\"text\": \"inspect\"",
        "\"texts\": \"inspect\"",
        "missing-key schemes[0].versions[0].steps[1]",
        "unknown-key schemes[0].versions[0].steps[1].texts"
    )]
    [InlineData(
        "jurisdictions/xa/certification",
        "\"pathways\": \"approval\"",
        "\"pathways\": \"none\"",
        "not-a-word schemes[0].versions[0].steps[1].pathways"
    )]
    [InlineData(
        "jurisdictions/xa/certification",
        "\"amount\": \"30 AUD\"",
        "\"amount\": \"30 kg\"",
        "wrong-unit schemes[0].versions[0].fees[0].amount"
    )]
    [InlineData(
        "jurisdictions/xa/certification",
        "\"what\": \"plate\"",
        "\"plate\": \"plate\"",
        "missing-key schemes[0].versions[0].fees[0]",
        "unknown-key schemes[0].versions[0].fees[0].plate"
    )]
    [InlineData("jurisdictions/xa/certification", "\"note\": \"so\"", "\"nota\": \"so\"", "unknown-key schemes[0].versions[0].nota")]
    [InlineData("schema/vocabulary/measures", "\"unit\": \"count\"", "\"unit\": \"dozen\"", "not-a-word measures[2]")]
    [InlineData("schema/vocabulary/measures", "\"derived\"", "\"derive\"", "unknown-key measures[1].derive")]
    [InlineData("schema/vocabulary/cautions", "\"cautions\"", "\"warnings\"", "unknown-key warnings")]
    [InlineData("schema/vocabulary/topics", "\"of-use\"", "\"use\"", "unknown-key topics[1].use")]
    [InlineData("schema/reference/tare", "au/act", "au/nothing", "unknown-source tare.sources[0]")]
    [InlineData("schema/reference/tare", "\"fuel\"", "\"petrol\"", "unknown-key tare.petrol")]
    [InlineData("schema/reference/tare", "{ \"tare\": {", "{ \"colour\": \"white\", \"tare\": {", "unknown-key colour")]
    [InlineData("schema/reference/fluids", "\"cite\": \"table\"", "\"cite\": \"chart\"", "unknown-source fluids[0].sources[0]")]
    [InlineData(
        "schema/reference/fluids",
        "\"density\": \"0.835 kg/L\"",
        "\"dens\": \"1 kg/L\"",
        "missing-key fluids[0]",
        "unknown-key fluids[0].dens"
    )]
    [InlineData("schema/reference/fluids", "{ \"fluids\": [", "{ \"colour\": \"white\", \"fluids\": [", "unknown-key colour")]
    [InlineData("schema/reference/uncertainties", "\"guard-factor\": \"0.5\"", "\"guard-factor\": \"half\"", "not-a-number guard-factor")]
    [InlineData("schema/reference/uncertainties", "\"guard-factor\": \"0.5\"", "\"guard-factor\": \"-1\"", "not-a-number guard-factor")]
    [InlineData(
        "schema/reference/uncertainties",
        "\"uncertainty\": \"10 kg\"",
        "\"uncertainty\": \"10 mm\"",
        "wrong-unit uncertainties[1].uncertainty"
    )]
    [InlineData(
        "schema/reference/uncertainties",
        "\"difference\": \"20 mm\"",
        "\"difference\": \"20 mm\", \"more\": \"1 mm\"",
        "unknown-key left-right-warning.more"
    )]
    [InlineData("schema/reference/uncertainties", "\"guard-factor-why\"", "\"because\"", "unknown-key because")]
    [InlineData("schema/reference/tyre-sizes", "265/70R17", "large", "not-a-tyre-size tyre-sizes.sizes[1]")]
    [InlineData(
        "schema/reference/speedometer",
        "\"over-constant\"",
        "\"constant\"",
        "missing-key speedometer[0].rules[0]",
        "unknown-key speedometer[0].rules[0].constant"
    )]
    [InlineData(
        "schema/reference/tyre-speeds",
        "\"speed\": \"120 km/h\"",
        "\"speed\": \"120 mm\"",
        "wrong-unit tyre-speeds[0].kinds[1].speed"
    )]
    public void In_every_other_file_too(string file, string passage, string instead, params string[] wrong) =>
        Files.Wrong(file, passage, instead).ShouldBe(wrong);

    [Fact]
    [Trait("Basis", "derived")]
    public void A_folder_without_its_own_file_is_told_and_its_rules_are_still_read()
    {
        var problems = new List<Problem>();
        var book = BookReader.Read([new BookFile("jurisdictions/xb/sources.yaml", Nodes.Of("""{ "sources": [ ] }"""))], "made", problems);
        problems.ShouldHaveSingleItem().ToString().ShouldStartWith("jurisdictions/xb/jurisdiction.yaml:1:1: error missing-file:");
        book.Jurisdictions.ShouldHaveSingleItem().Registers.ShouldBeFalse();
    }

    [Fact]
    [Trait("Basis", "published")]
    public void A_slip_of_the_pen_comes_with_the_word_that_was_meant()
    {
        // V. I. Levenshtein, 1966: one insertion, deletion or substitution is a distance of one.
        Spelling.Nearest("diessel", ["petrol", "diesel"]).ShouldBe("diesel");
        Spelling.Nearest("xyz", ["abcdefgh"]).ShouldBeNull();
        Spelling.Nearest("ab", ["abcd"]).ShouldBe("abcd"); // a distance of two is still near
        Spelling.Nearest("ab", ["abcde"]).ShouldBeNull(); // three of five letters is not
        Spelling.Nearest("cat", ["cut", "car"]).ShouldBe("car"); // equally near: by the alphabet
        Spelling.Tip("diessel", ["diesel"]).ShouldBe("did you mean 'diesel'?");
        Spelling.Tip("zzzzzzzz", ["b", "a", "a"]).ShouldBe("known here: a, b");
        Spelling.Tip("zzz", []).ShouldBe("");
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void A_problem_is_told_as_editors_expect_it_and_in_the_order_of_places()
    {
        Problem.Error("code", new Mark("a.yaml", 3, 7), "wrong", "right").ToString().ShouldBe("a.yaml:3:7: error code: wrong (right)");
        new Problem("code", Severity.Warning, new Mark("a.yaml", 3, 7), "look", "").ToString().ShouldBe("a.yaml:3:7: warning code: look");
        Mark[] places = [new("b.yaml", 1, 1), new("a.yaml", 2, 1), new("a.yaml", 1, 9), new("a.yaml", 1, 2)];
        places.Order().Select(place => place.ToString()).ShouldBe(["a.yaml:1:2", "a.yaml:1:9", "a.yaml:2:1", "b.yaml:1:1"]);
        (
            places[3] < places[2]
            && places[2] <= places[1]
            && places[0] > places[1]
            && places[0] >= places[0]
            && !(places[0] < places[0])
            && !(places[0] > places[0])
        ).ShouldBeTrue();
    }

    [Fact]
    [Trait("Basis", "derived")]
    public void What_is_set_from_outside_replaces_one_value_and_leaves_the_rest()
    {
        var job = Nodes.Of("""{ "vehicle": { "seats": "5", "category": "MC" }, "on": "2026-11-25" }""");
        Text(NodeEdit.Set(job, "vehicle.seats", "7"), "vehicle", "seats").ShouldBe("7");
        Text(NodeEdit.Set(job, "vehicle.seats", "7"), "vehicle", "category").ShouldBe("MC");
        Text(NodeEdit.Set(job, "trailer.mass", "2 t"), "trailer", "mass").ShouldBe("2 t");
        Text(NodeEdit.Set(job, "on", "2027-01-01"), "on").ShouldBe("2027-01-01");
        NodeEdit.Set(job, "on", "2027-01-01").Entries.Length.ShouldBe(2);
        NodeEdit.Set(job, "name", "x").Entries.Length.ShouldBe(3);
        NodeEdit.Remove(job, "on").Entries.ShouldHaveSingleItem().Key.Text.ShouldBe("vehicle");

        static string Text(Mapping at, params string[] path) =>
            ((Scalar)path.Aggregate((Node)at, (node, key) => ((Mapping)node).Find(key)!)).Text;
    }
}
