using System.Runtime.ExceptionServices;

namespace RuleBook.Authoring.AllCores;

/// <summary>
/// Work on all cores, by parallel loops, whose caller works too: such work may hold more of it and none waits for a thread.
/// </summary>
internal static class InOrder
{
    /// <summary>What is made of each part, in the order of the parts; what is thrown for the first of those that fail is thrown.</summary>
    public static TResult[] Each<T, TResult>(IReadOnlyList<T> parts, Func<T, TResult> made)
    {
        var results = new TResult[parts.Count];
        var thrown = new ExceptionDispatchInfo?[parts.Count];
        Parallel.For(
            0,
            parts.Count,
            i =>
            {
                try
                {
                    results[i] = made(parts[i]);
                }
                catch (Exception failed)
                {
                    thrown[i] = ExceptionDispatchInfo.Capture(failed);
                }
            }
        );
        thrown.FirstOrDefault(each => each is not null)?.Throw();
        return results;
    }
}
