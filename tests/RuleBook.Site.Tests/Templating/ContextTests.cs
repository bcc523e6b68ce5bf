using RuleBook.Site.Templating;
using Scriban;
using Scriban.Runtime;
using Scriban.Syntax;

namespace RuleBook.Site.Tests.Templating;

/// <summary>What the template engine leaves open by default, each set by the one factory.</summary>
public sealed class ContextTests
{
    private static string Render(string template, params (string Name, object? Value)[] values)
    {
        var globals = new ScriptObject();
        foreach (var (name, value) in values)
            globals[name] = value;
        return Template.Parse(template).Render(Contexts.Create(globals));
    }

    private sealed record Thing(string Text);

    [Theory]
    [InlineData("{{ x }}")]
    [InlineData("{{ thing.text }}")]
    [InlineData("{{ x | string.append '' }}")]
    [InlineData("{{ 'a' + x }}")]
    [InlineData("{{ for each in list }}{{ each }}{{ end }}")]
    [InlineData("{{ list }}")]
    [InlineData("{{ func f(y) }}{{ y }}{{ end }}{{ f x }}")]
    [InlineData("{{ func f(y) }}{{ ret y }}{{ end }}{{ f x }}")]
    [InlineData("{{ capture y }}{{ x }}{{ end }}{{ y }}")]
    public void Whatever_an_expression_writes_is_escaped(string template)
    {
        const string hostile = "<script>alert('\"')</script>";
        var text = Render(template, ("x", hostile), ("thing", new Thing(hostile)), ("list", new[] { hostile }));
        text.ShouldContain("lt;script");
        text.ShouldNotContain('<');
        text.ShouldNotContain('\'');
    }

    [Fact]
    public void Quotes_cannot_end_an_attribute() =>
        Render("<a title=\"{{ x }}\">", ("x", "\" onclick=\"x")).ShouldBe("<a title=\"&quot; onclick=&quot;x\">");

    [Fact]
    public void Markup_that_a_template_made_is_not_escaped_again() => Render("{{ x }}", ("x", new Html("<b>"))).ShouldBe("<b>");

    [Fact]
    public void A_name_that_is_not_there_is_an_error() => Should.Throw<ScriptRuntimeException>(() => Render("{{ nope }}"));

    [Fact]
    public void A_member_that_is_not_there_is_an_error() =>
        Should.Throw<ScriptRuntimeException>(() => Render("{{ thing.nope }}", ("thing", new Thing("x"))));

    [Fact]
    public void More_than_a_thousand_turns_are_allowed_and_no_end_of_turns_is_not()
    {
        Render("{{ for i in 1..5000 }}x{{ end }}").Length.ShouldBe(5000);
        Contexts.Create([]).LoopLimit.ShouldBe(Contexts.MostTurns);
        Should.Throw<ScriptRuntimeException>(() => Render("{{ while true }}{{ end }}"));
    }

    [Fact]
    public void A_line_ends_with_a_line_feed_on_every_system() => Contexts.Create([]).NewLine.ShouldBe("\n");
}
