using System.Diagnostics;

namespace RuleBook.Authoring.Tests.Books;

/// <summary>
/// Anybody can reckon the digest of a book from its documentation: a script in another language, written from that alone, agrees.
/// </summary>
public sealed class DigestTests
{
    [Fact]
    public async Task A_script_in_another_language_reckons_the_same_digest()
    {
        var script = Path.Combine(TestBook.Folder, "tests", "RuleBook.Authoring.Tests", "Books", "digest.mjs");
        using var node = Started(script);
        if (node is null)
            Assert.Skip("node is not installed");
        var printed = await node.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken);
        await node.WaitForExitAsync(TestContext.Current.CancellationToken);
        printed.Trim().ShouldBe(TestBook.Book.Digest);
    }

    private static Process? Started(string script)
    {
        try
        {
            return Process.Start(new ProcessStartInfo("node", [script, TestBook.Folder]) { RedirectStandardOutput = true });
        }
        catch (System.ComponentModel.Win32Exception) when (Environment.GetEnvironmentVariable("CI") is null)
        {
            return null;
        }
    }
}
