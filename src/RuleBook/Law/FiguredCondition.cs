using RuleBook.Units;

namespace RuleBook.Law;

/// <summary>
/// A condition of which each rule gives the figure: <c>{ bumper-bar-height: 4.5 in }</c>. With its figure it is a condition like any other.
/// </summary>
/// <param name="Name">As a rule writes it.</param>
/// <param name="Dimension">What the figure measures.</param>
/// <param name="Pattern">What it says and how a job names it, each with <see cref="Place"/> where the figure goes.</param>
internal sealed record FiguredCondition(string Name, Dimension Dimension, Term Pattern)
{
    /// <summary>Where the figure goes.</summary>
    public const string Place = "{figure}";

    /// <summary>The condition with a figure: named <c>bumper-at-least-4-5-in-high</c>, and telling <c>4.5 in</c>.</summary>
    /// <param name="figure">A quantity of <see cref="Dimension"/>.</param>
    public Term With(Quantity figure)
    {
        var text = figure.ToString();
        return Pattern with
        {
            Name = Pattern.Name.Replace(Place, Slug(text), StringComparison.Ordinal),
            Title = Pattern.Title.Replace(Place, text, StringComparison.Ordinal),
            Definition = Pattern.Definition.Replace(Place, text, StringComparison.Ordinal),
            Figured = Name,
            Figure = figure,
        };
    }

    private static string Slug(string text) =>
        string.Concat(
            text.Replace("%", "percent", StringComparison.Ordinal)
                .Select(letter => char.IsAsciiLetterOrDigit(letter) ? char.ToLowerInvariant(letter) : '-')
        );
}
