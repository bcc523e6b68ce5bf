namespace RuleBook.Answers;

/// <summary>A change that the job states and of which no rule of the place in the book speaks.</summary>
/// <param name="Fact">Path in the job that states it.</param>
/// <param name="What">The change for a reader, as a noun: <c>increase in wheel track</c>.</param>
/// <param name="Ask">Whom to ask.</param>
public sealed record NotJudged(string Fact, string What, string Ask);
