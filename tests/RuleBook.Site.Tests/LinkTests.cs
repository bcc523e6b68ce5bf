namespace RuleBook.Site.Tests;

/// <summary>Addresses in the site, of other sites and of letters, by hand from RFC 3986 and RFC 6068.</summary>
public sealed class LinkTests
{
    [Theory]
    [InlineData("ride-height", "ride-height")]
    [InlineData("2012-01-01", "2012-01-01")]
    [InlineData("act.1", "act.1")]
    [InlineData(".act", "_2eact")] // no file that a server hides
    [InlineData("..", "_2e.")] // no way up
    [InlineData("", "_")]
    [InlineData("a b/c", "a_20b_2fc")]
    [InlineData("[2015..2016]", "_5b2015..2016_5d")]
    [InlineData("é_", "_e9_5f")]
    public void What_may_not_stand_in_a_path_becomes_its_code(string text, string slug) => Links.Slug(text).ShouldBe(slug);

    [Theory]
    [InlineData("https://code.example/1", "https://code.example/1")]
    [InlineData("http://code.example", "http://code.example/")]
    [InlineData("ftp://code.example/1", null)]
    [InlineData("javascript:alert(1)", null)]
    [InlineData("code.example/1", null)]
    [InlineData(null, null)]
    public void Only_an_address_of_the_web_is_led_to(string? address, string? led) => Links.Web(address).ShouldBe(led);

    [Fact]
    public void A_letter_has_its_subject_and_its_lines_and_goes_to_one_plain_box()
    {
        Links
            .Mail("book-1.a_b+c@limits.example", "Height & more?", "one\ntwo")
            .ShouldBe("mailto:book-1.a_b%2Bc@limits.example?subject=Height%20%26%20more%3F&body=one%0D%0Atwo");
        foreach (var wrong in (string?[])[null, "", "book", "@limits.example", "book@", "a@b@c", "a@b?cc=d", "a b@c", "ä@c"])
            Links.Mail(wrong, "s", "t").ShouldBeNull(wrong);
    }

    [Theory]
    [InlineData("jurisdictions/xa-n/sources.yaml", "lines/xa-n/sources.yaml.html#L12")]
    [InlineData("schema/vocabulary/measures.yaml", "lines/vocabulary/measures.yaml.html#L12")]
    public void A_line_of_the_data_stands_on_the_page_of_its_file(string file, string led) =>
        Links.Line(new Text.Mark(file, 12, 3)).ShouldBe(led);

    [Fact]
    public void A_version_is_named_by_its_start_as_written()
    {
        Anchors("xa", "raise").ShouldBe(["ride-height.raise.2012-01-01"]);
        Anchors("xa", "extend").ShouldBe(["ride-height.extend.by-2019-05-06", "ride-height.extend.proposed"]);
        Anchors("xa-n", "raise")
            .ShouldBe([
                "ride-height.raise._5b2015-01-01..2015-12-31_5d",
                "ride-height.raise.2016-03-01",
                "ride-height.raise.announced-2027-03-01",
            ]);

        static IEnumerable<string> Anchors(string place, string name)
        {
            var rule = InventedBook.Site.Book.Rule($"{place}/ride-height/{name}")!;
            return rule.Versions.Select(version => Links.Anchor(rule, version));
        }
    }
}
