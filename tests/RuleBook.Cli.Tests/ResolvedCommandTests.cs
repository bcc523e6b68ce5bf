namespace RuleBook.Cli.Tests;

/// <summary>What <c>resolved</c> says of texts that are fresh, missing, stale and written anew.</summary>
public sealed class ResolvedCommandTests : IDisposable
{
    private readonly string book = InventedBookTests.Copy();

    public void Dispose() => Directory.Delete(book, recursive: true);

    [Fact]
    public async Task The_texts_of_the_project_are_fresh() =>
        (await Invocation.Of(["resolved", "--book", Invocation.Root])).ShouldBe(
            new Invocation(0, "fresh: tests/resolved says what the book says\n", "")
        );

    [Fact]
    public async Task A_text_that_is_missing_or_differs_is_named_and_written_when_asked()
    {
        const string advice = "run 'rulebook resolved --write' and look at what changed\n";
        var both = await Resolved();
        (both.Code, both.Out, both.Error).ShouldBe((1, "not fresh: tests/resolved/xa-n.txt\nnot fresh: tests/resolved/xa.txt\n", advice));
        var made = await Resolved("--write");
        (made.Code, made.Out, made.Error).ShouldBe((0, "written: tests/resolved/xa-n.txt\nwritten: tests/resolved/xa.txt\n", ""));
        (await Resolved()).Code.ShouldBe(0);

        var text = Path.Combine(book, "tests", "resolved", "xa.txt");
        var fresh = await File.ReadAllTextAsync(text, TestContext.Current.CancellationToken);
        await File.WriteAllTextAsync(text, fresh.Replace("mm", "cm", StringComparison.Ordinal), TestContext.Current.CancellationToken);
        var stale = await Resolved();
        (stale.Code, stale.Out, stale.Error).ShouldBe((1, "not fresh: tests/resolved/xa.txt\n", advice));
        (await Resolved("--write")).Out.ShouldBe("written: tests/resolved/xa.txt\n");
        (await File.ReadAllTextAsync(text, TestContext.Current.CancellationToken)).ShouldBe(fresh);
    }

    private Task<Invocation> Resolved(params string[] options) => Invocation.Of(["resolved", "--book", book, .. options]);
}
