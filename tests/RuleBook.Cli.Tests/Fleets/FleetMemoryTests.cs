using RuleBook.Cli.Fleets;

namespace RuleBook.Cli.Tests.Fleets;

/// <summary>What is kept of rows, so that another like them is looked up.</summary>
public sealed class FleetMemoryTests
{
    [Fact]
    public void The_first_value_of_a_key_is_kept_until_there_are_too_many_and_then_all_are_forgotten()
    {
        var kept = new KeptFew<int, string>(3);
        kept.Keep(1, "one").ShouldBe("one");
        kept.Keep(1, "another").ShouldBe("one");
        kept.Keep(2, "two").ShouldBe("two");
        (kept.TryGet(1, out var one), one).ShouldBe((true, "one"));
        kept.Keep(3, "three").ShouldBe("three");
        (kept.TryGet(1, out _), kept.TryGet(2, out _), kept.TryGet(3, out var three), three).ShouldBe((false, false, true, "three"));
        kept.Keep(4, "four").ShouldBe("four");
        kept.Keep(5, "five").ShouldBe("five");
        (kept.TryGet(3, out _), kept.TryGet(4, out _), kept.TryGet(5, out _)).ShouldBe((true, true, true));
        kept.Keep(6, "six");
        kept.TryGet(5, out _).ShouldBeFalse();
    }

    /// <summary>Each byte counts, wherever it stands and however long the key is: of 5120 keys hardly two have the same 32 bits.</summary>
    [Fact]
    public void Keys_are_told_apart_by_every_byte()
    {
        byte[][] keys =
        [
            .. from length in (int[])[3, 8, 9, 20]
            from at in Enumerable.Range(0, length)
            from value in Enumerable.Range(1, 128)
            select (byte[])[.. Enumerable.Range(0, length).Select(place => (byte)(place == at ? value : 0))],
        ];
        keys.Select(ByteKeys.Same.GetHashCode).Distinct().Count().ShouldBeGreaterThan(keys.Length * 99 / 100);
        foreach (var key in keys)
        {
            ByteKeys.Same.Equals(key, key.ToArray()).ShouldBeTrue();
            ByteKeys.Same.Equals((ReadOnlySpan<byte>)key, key.ToArray()).ShouldBeTrue();
            ByteKeys.Same.GetHashCode((ReadOnlySpan<byte>)key).ShouldBe(ByteKeys.Same.GetHashCode(key));
            ByteKeys.Same.Equals(key, keys[0]).ShouldBe(key == keys[0]);
            ByteKeys.Same.Equals((ReadOnlySpan<byte>)key, keys[0]).ShouldBe(key == keys[0]);
        }
    }
}
