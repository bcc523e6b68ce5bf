using RuleBook.Law;
using RuleBook.Tests.Answers;

namespace RuleBook.Tests.Law;

/// <summary>A document read in part carries the clauses that lie within what was read, and no others.</summary>
public sealed class SourceTests
{
    private static readonly Source Sheet = Made.Source("xa", "sheet") with { PartsRead = ["13.2", "reg 4"] };

    [Theory]
    [InlineData("13.2")]
    [InlineData("13.2(a), third line")]
    [InlineData("VSI 8, 13.2.1")]
    [InlineData("reg 4(1)")]
    public void A_clause_within_a_part_that_was_read_was_read(string clause) => Sheet.WasRead(clause).ShouldBeTrue();

    [Theory]
    [InlineData("13.3.1")]
    [InlineData("13.20")]
    [InlineData("113.2")]
    [InlineData("reg 41")]
    [InlineData(null)]
    public void A_clause_beside_it_was_not_nor_is_a_document_as_a_whole(string? clause) => Sheet.WasRead(clause).ShouldBeFalse();

    [Fact]
    public void Of_a_document_that_nobody_opened_nothing_was_read() => (Sheet with { PartsRead = [] }).WasRead("13.2").ShouldBeFalse();

    [Fact]
    public void A_document_that_says_nothing_of_it_was_read_whole() => Made.Source("xa", "code").WasRead(null).ShouldBeTrue();
}
