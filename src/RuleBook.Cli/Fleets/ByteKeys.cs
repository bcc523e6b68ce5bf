using System.Runtime.InteropServices;

namespace RuleBook.Cli.Fleets;

/// <summary>Compares keys of bytes, also those that are only looked at.</summary>
internal sealed class ByteKeys : IEqualityComparer<byte[]>, IAlternateEqualityComparer<ReadOnlySpan<byte>, byte[]>
{
    private const ulong Prime = 0x9E3779B97F4A7C15; // 2^64 divided by the golden ratio: multiplicative hashing (Knuth, volume 3, 6.4)

    public static ByteKeys Same { get; } = new();

    public bool Equals(byte[]? x, byte[]? y) => x.AsSpan().SequenceEqual(y);

    public bool Equals(ReadOnlySpan<byte> alternate, byte[] other) => alternate.SequenceEqual(other);

    public int GetHashCode(byte[] obj) => GetHashCode((ReadOnlySpan<byte>)obj);

    public int GetHashCode(ReadOnlySpan<byte> alternate)
    {
        var hash = (ulong)alternate.Length;
        foreach (var part in MemoryMarshal.Cast<byte, ulong>(alternate))
            hash = Mixed(hash, part);
        foreach (var last in alternate[(alternate.Length & ~7)..])
            hash = Mixed(hash, last);
        return (int)(hash >> 32);
    }

    public byte[] Create(ReadOnlySpan<byte> alternate) => alternate.ToArray();

    private static ulong Mixed(ulong hash, ulong part)
    {
        hash = (hash ^ part) * Prime;
        return hash ^ hash >> 29;
    }
}
