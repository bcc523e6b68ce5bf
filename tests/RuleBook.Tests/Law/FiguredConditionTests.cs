using RuleBook.Law;
using RuleBook.Text;
using RuleBook.Units;

namespace RuleBook.Tests.Law;

/// <summary>A condition of which the rule gives the figure (derived: the figures are invented).</summary>
public sealed class FiguredConditionTests
{
    [Theory]
    [InlineData("4.5 in", "bumper-at-least-4-5-in-high", "bumper 4.5 in high")]
    [InlineData("4.50 in", "bumper-at-least-4-5-in-high", "bumper 4.5 in high")]
    [InlineData("100 mm", "bumper-at-least-100-mm-high", "bumper 100 mm high")]
    [InlineData("50 %", "bumper-at-least-50-percent-high", "bumper 50 % high")]
    [InlineData("100 km/h", "bumper-at-least-100-km-h-high", "bumper 100 km/h high")]
    public void With_its_figure_it_has_a_name_that_a_job_can_state_and_says_the_figure(string written, string name, string title)
    {
        var condition = new FiguredCondition(
            "bumper-height",
            Dimension.Length,
            new Term("bumper-at-least-{figure}-high", "bumper {figure} high", "At least {figure}.", new Mark("conditions.yaml", 1, 1))
        );

        var term = condition.With(Quantity.Parse(written));

        (term.Name, term.Title, term.Figured).ShouldBe((name, title, "bumper-height"));
    }
}
