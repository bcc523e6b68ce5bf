using RuleBook.Text;

namespace RuleBook.Authoring.Checks;

/// <summary>What a code means: the same text in messages, in SARIF and on the page about the code.</summary>
/// <param name="Code">A word with hyphens; stable.</param>
/// <param name="Title">What is wrong, in general.</param>
/// <param name="Why">Why it matters.</param>
/// <param name="Tip">What would be right.</param>
/// <param name="Severity">Whether the book cannot be used, or somebody should look.</param>
public sealed record CheckInfo(string Code, string Title, string Why, string Tip, Severity Severity = Severity.Error)
{
    /// <summary>A problem with this code.</summary>
    /// <param name="mark">Where.</param>
    /// <param name="text">What is wrong there.</param>
    /// <param name="tip">What would be right there; the general tip when null.</param>
    internal Problem At(Mark mark, string text, string? tip = null) => new(Code, Severity, mark, text, tip ?? Tip);
}
