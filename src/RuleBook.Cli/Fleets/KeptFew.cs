using System.Collections.Concurrent;
using System.Diagnostics.CodeAnalysis;

namespace RuleBook.Cli.Fleets;

/// <summary>
/// Keeps values by key; when there are more than <paramref name="most"/>, all are forgotten, so that the memory stays the same. Safe for
/// any number of threads.
/// </summary>
/// <param name="most">About how many are kept.</param>
internal sealed class KeptFew<TKey, TValue>(int most)
    where TKey : notnull
{
    private readonly ConcurrentDictionary<TKey, TValue> kept = new();
    private int count; // the dictionary's own count takes all of its locks

    /// <summary>The values, to be looked up in other ways.</summary>
    public ConcurrentDictionary<TKey, TValue> Values => kept;

    public bool TryGet(TKey key, [MaybeNullWhen(false)] out TValue value) => kept.TryGetValue(key, out value);

    /// <summary>Keeps a value and gives the one that is kept: another thread may have been first.</summary>
    public TValue Keep(TKey key, TValue value)
    {
        if (Interlocked.Increment(ref count) > most)
        {
            kept.Clear();
            Volatile.Write(ref count, 1);
        }

        return kept.GetOrAdd(key, value);
    }
}
