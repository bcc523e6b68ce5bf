using System.Text.RegularExpressions;
using RuleBook.Authoring.Changes;

namespace RuleBook.Authoring.Tests.Changes;

/// <summary>Edits after which the rules say the same in other words (derived): no answer changes.</summary>
public sealed partial class RewordingTests
{
    private const string Plain = """
        - from: 2012-01-01
          sources: [{cite: law}]
          tiers:
            - pathway: no-certificate
              within: { suspension-lift: 50 mm, body-lift: 0 mm }
              provided: [suspension-travel-kept-two-thirds, tyres-suit-rims]
            - pathway: certificate
              within: { suspension-lift: 75 mm }
          beyond: prohibited
        """;

    [Fact]
    public void Two_equal_books_answer_alike() => BookChanges.Between(TestBook.Book, TestBook.Book).IsEmpty.ShouldBeTrue();

    [Fact]
    public void Other_titles_notes_and_names_of_tiers_change_nothing()
    {
        var reworded = EditedBook.Of(
            path => path.Split('/') is ["jurisdictions", _, not ("jurisdiction.yaml" or "certification.yaml")],
            text => Note().Replace(Title().Replace(text, "$1title: Something else"), "$1note: Said otherwise")
        );

        BookChanges.Between(TestBook.Book, reworded).IsEmpty.ShouldBeTrue();
    }

    [Theory]
    [InlineData(
        "provided: [suspension-travel-kept-two-thirds, tyres-suit-rims]",
        "provided: [tyres-suit-rims, suspension-travel-kept-two-thirds]"
    )]
    [InlineData("within: { suspension-lift: 50 mm, body-lift: 0 mm }", "within: { body-lift: 0 mm, suspension-lift: 50 mm }")]
    [InlineData("suspension-lift: 75 mm", "suspension-lift: 7.5 cm")]
    [InlineData("sources: [{cite: law}]", "sources: [{cite: law, note: looked up again}]")]
    public void The_same_put_otherwise_changes_nothing(string from, string to) =>
        Nothing(Plain.Replace(from, to, StringComparison.Ordinal));

    [Theory]
    [InlineData("pathway: certificate", "pathway: certificate\n      codes: [LS9]", RemarkKind.Other, "code LS9")]
    [InlineData("sources: [{cite: law}]", "sources: [{cite: law, clause: \"4.2\"}]", RemarkKind.Evidence, "law (4.2)")]
    [InlineData(
        "pathway: certificate",
        "name: with-one\n      pathway: certificate",
        RemarkKind.Other,
        "no version has a tier 'certificate'"
    )]
    public void What_no_answer_shows_is_told_beside_the_answers(string from, string to, RemarkKind kind, string says)
    {
        var report = EditedBook.Between(
            SmallBook.WithVersions(Plain),
            SmallBook.WithVersions(Plain.Replace(from, to, StringComparison.Ordinal))
        );

        report.Answers.ShouldBeEmpty();
        var remark = report.Remarks.ShouldHaveSingleItem();
        (remark.Kind, remark.Text.Contains(says, StringComparison.Ordinal)).ShouldBe((kind, true), remark.Text);
    }

    [Fact]
    public void A_version_split_into_two_of_the_same_content_changes_nothing() =>
        Nothing($"{Plain}\n{Plain.Replace("2012-01-01", "2016-07-01", StringComparison.Ordinal)}");

    [Fact]
    public void A_version_split_on_a_day_that_is_known_only_to_the_year_changes_nothing() =>
        Nothing($"{Plain}\n{Plain.Replace("2012-01-01", "2016", StringComparison.Ordinal)}");

    [Fact]
    public void An_announced_version_changes_nothing() =>
        Nothing($"{Plain}\n- {{announced: 2027-07-01, sources: [{{cite: law}}], not-regulated: it will not be}}");

    [Fact]
    public void A_rule_renamed_with_its_old_name_as_an_alias_changes_nothing()
    {
        var renamed = EditedBook.Of(
            path => path == "jurisdictions/au-qld/ride-height.yaml",
            text => text.Replace("  - rule: lower\n", "  - rule: lower-suspension\n    aliases: [lower]\n", StringComparison.Ordinal)
        );

        BookChanges.Between(TestBook.Book, renamed).IsEmpty.ShouldBeTrue();
        BookChanges.Between(renamed, TestBook.Book).IsEmpty.ShouldBeTrue();
    }

    [Fact]
    public void A_rule_shared_out_between_two_by_vehicle_changes_no_answer()
    {
        var before = SmallBook.Of(("au-qld", RideHeight("{}", "raise")));
        var after = SmallBook.Of(
            (
                "au-qld",
                $"""
                {RideHeight("{ four-wheel-drive: yes }", "raise")}
                {RideHeight("{ four-wheel-drive: no }", "raise-other", head: "")}
                """
            )
        );

        var report = EditedBook.Between(before, after);
        report.Answers.ShouldBeEmpty();
        report.Remarks.ShouldAllBe(remark => remark.Kind == RemarkKind.Other);
        report.Remarks.Select(remark => remark.Text).ShouldContain("only the new book has this rule");

        static string RideHeight(string who, string name, string head = "topic: ride-height\nrules:\n") =>
            $"{head}  - rule: {name}\n    title: Raising\n    for: {who}\n    "
            + $"versions:\n{string.Join('\n', Plain.Split('\n').Select(line => "      " + line))}";
    }

    private static void Nothing(string versions) =>
        EditedBook.Between(SmallBook.WithVersions(Plain), SmallBook.WithVersions(versions)).IsEmpty.ShouldBeTrue();

    [GeneratedRegex(@"^( *(?:- )?)title: [^\n>|{}]*[^\n>|{},]$", RegexOptions.Multiline)]
    private static partial Regex Title();

    [GeneratedRegex(@"^( *(?:- )?)note: [^\n>|{}]*[^\n>|{},]$", RegexOptions.Multiline)]
    private static partial Regex Note();
}
