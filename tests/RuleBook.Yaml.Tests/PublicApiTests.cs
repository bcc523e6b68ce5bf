using RuleBook.Api.Tests;

namespace RuleBook.Yaml.Tests;

/// <summary>Against the committed text in tests/api.</summary>
public sealed class PublicApiTests
{
    [Fact]
    public void The_reader_of_yaml_offers_what_the_committed_text_says() => PublicSurface.ShouldBeAsCommitted(typeof(YamlText).Assembly);
}
