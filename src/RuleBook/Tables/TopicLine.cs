using System.Numerics;

namespace RuleBook.Tables;

/// <summary>A topic.</summary>
/// <param name="Rules">Indexes of its rules.</param>
/// <param name="Bindings">For each column on which it hangs whether a rule binds, which rules may.</param>
internal readonly record struct TopicLine(int[] Rules, RulesByCell[] Bindings)
{
    /// <summary>How many of its rules, the first ones, have a bit.</summary>
    public const int Told = 64;

    /// <summary>
    /// Of its first rules those of which some version may bind for what is known, and those of which all versions do, a bit each: a few
    /// words of bits instead of the tests of every rule.
    /// </summary>
    public (ulong May, ulong Must) Bind(ReadOnlySpan<ulong> row)
    {
        var (may, must) = (ulong.MaxValue, ulong.MaxValue);
        foreach (ref readonly var binding in Bindings.AsSpan())
        {
            var here = 0ul;
            for (var left = row[binding.Column]; left != 0; left &= left - 1)
            {
                var cell = BitOperations.TrailingZeroCount(left);
                here |= binding.Some[cell];
                must &= binding.All[cell];
            }

            may &= here;
        }

        return (may, must);
    }
}

/// <summary>Which rules of a topic bind in each cell of a column, as far as that column decides it, a bit each.</summary>
/// <param name="Column">The column.</param>
/// <param name="Some">By cell, the rules of which some version binds.</param>
/// <param name="All">By cell, the rules of which all versions do.</param>
internal readonly record struct RulesByCell(int Column, ulong[] Some, ulong[] All);
