using RuleBook.Answers;
using RuleBook.Law;
using RuleBook.Text;

namespace RuleBook.Authoring.Cases;

/// <summary>Where the answer of a case is from: outside the project, or said to be common practice or memory.</summary>
/// <param name="Basis">How it is known; that of the source where one is cited.</param>
/// <param name="Source">
/// Id of a source of the book, <c>jurisdiction/id</c> for another jurisdiction's; null for practice and memory.
/// </param>
/// <param name="Clause">Clause of the source; null where it has none.</param>
/// <param name="Text">What it says there, or what is common practice or remembered; null when the clause says enough.</param>
/// <param name="Mark">Where it is written.</param>
public sealed record Because(ReadAs Basis, string? Source, string? Clause, string? Text, Mark Mark)
{
    /// <summary>For a reader: <c>au-qld/notice-2018, item LS9: 150 mm</c>.</summary>
    public override string ToString() =>
        string.Join(", ", new[] { Source ?? Wording.Of(Basis), Clause }.OfType<string>()) + (Text is null ? "" : $": {Text}");
}
