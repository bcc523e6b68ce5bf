using RuleBook.Authoring.Walk;
using RuleBook.Evaluation;

namespace RuleBook.Authoring.Changes;

/// <summary>A point at which two books answer differently on a topic.</summary>
/// <param name="Witness">The point.</param>
/// <param name="Before">What the old rules give; null where none binds.</param>
/// <param name="After">What the new rules give.</param>
internal sealed record Difference(Witness Witness, Outcome? Before, Outcome? After);
