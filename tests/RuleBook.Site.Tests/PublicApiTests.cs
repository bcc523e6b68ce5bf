using RuleBook.Api.Tests;
using RuleBook.Site.Building;

namespace RuleBook.Site.Tests;

/// <summary>Against the committed text in tests/api.</summary>
public sealed class PublicApiTests
{
    [Fact]
    public void The_site_generator_offers_what_the_committed_text_says() => PublicSurface.ShouldBeAsCommitted(typeof(SiteBuild).Assembly);
}
