namespace RuleBook.Authoring.Walk;

/// <summary>Work on all cores, by parallel loops, whose caller works too: such work may hold more of it and none waits for a thread.</summary>
internal static class InOrder
{
    /// <summary>What is made of each part, in the order of the parts.</summary>
    public static TResult[] Each<T, TResult>(IReadOnlyList<T> parts, Func<T, TResult> made)
    {
        var results = new TResult[parts.Count];
        Parallel.For(0, parts.Count, i => results[i] = made(parts[i]));
        return results;
    }
}
