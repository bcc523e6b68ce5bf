using System.Runtime.ExceptionServices;

namespace RuleBook.Authoring.AllCores;

/// <summary>Work on all cores, by parallel loops, whose caller works too: such work may hold more of it and none waits for a thread.</summary>
internal static class InOrder
{
    /// <summary>What is made of each part, in the order of the parts. What a part throws is thrown.</summary>
    public static TResult[] Each<T, TResult>(IReadOnlyList<T> parts, Func<T, TResult> made)
    {
        var results = new TResult[parts.Count];
        try
        {
            Parallel.For(0, parts.Count, i => results[i] = made(parts[i]));
        }
        catch (AggregateException thrown)
        {
            ExceptionDispatchInfo.Throw(thrown.InnerExceptions[0]);
        }

        return results;
    }
}
