using System.Security.Cryptography;
using System.Text;

namespace RuleBook.Authoring.Books;

/// <summary>
/// What names the state of a book for ever: SHA-256 over each path and its text, in ordinal order of the paths. The list of editions, which
/// names such digests, is left out.
/// </summary>
internal static class BookDigest
{
    /// <summary>Line ends are taken as LF, so that a checkout with CRLF has the same digest.</summary>
    internal static string Of(IEnumerable<BookText> texts)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        foreach (
            var (path, text) in texts.Where(file => file.Path != BookFolder.Editions).OrderBy(file => file.Path, StringComparer.Ordinal)
        )
        {
            hash.AppendData(Encoding.UTF8.GetBytes($"{path}\0{text.Replace("\r\n", "\n", StringComparison.Ordinal)}\0"));
        }

        return $"sha256:{Convert.ToHexStringLower(hash.GetHashAndReset())}";
    }
}
