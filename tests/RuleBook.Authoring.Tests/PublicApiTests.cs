using RuleBook.Api.Tests;
using RuleBook.Authoring.Inspecting;
using RuleBook.Law;

namespace RuleBook.Authoring.Tests;

/// <summary>Against the committed texts in tests/api.</summary>
public sealed class PublicApiTests
{
    [Fact]
    public void The_domain_offers_what_the_committed_text_says() => PublicSurface.ShouldBeAsCommitted(typeof(Book).Assembly);

    [Fact]
    public void Authoring_offers_what_the_committed_text_says() => PublicSurface.ShouldBeAsCommitted(typeof(BookReading).Assembly);
}
