using RuleBook.Site.Views;

namespace RuleBook.Site.Tests.Views;

/// <summary>What a citation carries (<c>carries</c> of a rule's sources), in the words of a reader.</summary>
public sealed class CarriedWordsTests
{
    [Theory]
    [InlineData("existence", "that there is such a rule")]
    [InlineData("from", "the first day")]
    [InlineData("until", "the last day")]
    [InlineData("measured", "how it is measured")]
    [InlineData("beyond", "what holds beyond the limits")]
    [InlineData("adopts", "the adoption")]
    [InlineData("not-regulated", "that there is no such rule")]
    [InlineData("limits", "every figure")]
    [InlineData("conditions", "the conditions")]
    [InlineData("codes", "the codes")]
    [InlineData("when", "the vehicles")]
    [InlineData("pathway", "the pathway")]
    [InlineData("suspension-lift", "suspension lift")]
    [InlineData("no-certificate", "no certificate")]
    [InlineData("no-certificate.suspension-lift", "suspension lift (no certificate)")]
    public void A_part_is_named(string word, string told)
    {
        CarriedWords.Of(InventedBook.Site, [word]).ShouldBe(told);
        CarriedWords.Of(InventedBook.Site, [word, "from"]).ShouldBe($"{told}, the first day");
    }

    [Fact]
    public void Where_nothing_is_named_a_citation_carries_all() =>
        CarriedWords.Of(InventedBook.Site, null).ShouldBe("all that it stands on");
}
