namespace RuleBook.Cli.Tests;

/// <summary>
/// What <c>resolved</c> says of texts that are fresh, stale and written anew, on a copy of the book (derived: the texts are the book's
/// own).
/// </summary>
public sealed class ResolvedCommandTests : IDisposable
{
    private readonly string book = Directory.CreateTempSubdirectory("rulebook-resolved-").FullName;

    public ResolvedCommandTests()
    {
        foreach (var part in (string[])["jurisdictions", "schema", "tests/resolved"])
        foreach (var file in Directory.GetFiles(Path.Combine(Invocation.Root, part), "*", SearchOption.AllDirectories))
        {
            var copy = Path.Combine(book, Path.GetRelativePath(Invocation.Root, file));
            Directory.CreateDirectory(Path.GetDirectoryName(copy)!);
            File.Copy(file, copy);
        }
    }

    [Fact]
    public async Task The_texts_of_the_project_are_fresh()
    {
        var answer = await Resolved();
        answer.Code.ShouldBe(0, answer.Error);
        answer.Out.ShouldStartWith("fresh:");
    }

    [Fact]
    public async Task A_text_that_differs_is_named_and_written_when_asked()
    {
        var text = Path.Combine(book, "tests", "resolved", "au-qld.txt");
        var fresh = await File.ReadAllTextAsync(text, TestContext.Current.CancellationToken);
        await File.WriteAllTextAsync(text, fresh.Replace("mm", "cm", StringComparison.Ordinal), TestContext.Current.CancellationToken);

        var stale = await Resolved();
        stale.Code.ShouldBe(1);
        stale.Out.ShouldBe("not fresh: tests/resolved/au-qld.txt\n");
        stale.Error.ShouldContain("--write");

        var written = await Resolved("--write");
        written.Code.ShouldBe(0);
        written.Out.ShouldBe("written: tests/resolved/au-qld.txt\n");
        (await File.ReadAllTextAsync(text, TestContext.Current.CancellationToken)).ShouldBe(fresh);
    }

    public void Dispose() => Directory.Delete(book, recursive: true);

    private Task<Invocation> Resolved(params string[] options) => Invocation.Of(["resolved", "--book", book, .. options]);
}
