namespace RuleBook.Physics.Masses;

/// <summary>A fact that the job does not give, and what giving it would add to the answer.</summary>
/// <param name="Fact">The path of the fact in a job, such as <c>vehicle.wheelbase</c>.</param>
/// <param name="Adds">What would become known, as the rest of a sentence that starts with "would give".</param>
public sealed record MissingFact(string Fact, string Adds);
