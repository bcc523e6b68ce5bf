using System.Text.Json;

namespace RuleBook.Cli.Tests;

/// <summary>
/// A book is given a name, cited by it, and kept answers are asked again by the next one. Derived: on a copy of the book.
/// </summary>
public sealed class EditionCommandTests : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory();

    public EditionCommandTests()
    {
        foreach (
            var file in Directory
                .EnumerateFiles(Path.Combine(Invocation.Root, "jurisdictions"), "*.yaml", SearchOption.AllDirectories)
                .Concat(Directory.EnumerateFiles(Path.Combine(Invocation.Root, "schema"), "*.yaml", SearchOption.AllDirectories))
                .Where(file => Path.GetFileName(file) != "editions.yaml")
        )
        {
            var to = Path.Combine(Book, Path.GetRelativePath(Invocation.Root, file));
            Directory.CreateDirectory(Path.GetDirectoryName(to)!);
            File.Copy(file, to);
        }
    }

    private string Book => Path.Combine(_folder.FullName, "book");

    private string Kept => Path.Combine(_folder.FullName, "kept", "wagon.json");

    private string Height => Path.Combine(Book, "jurisdictions", "au-qld", "ride-height.yaml");

    public void Dispose() => _folder.Delete(recursive: true);

    [Fact]
    public async Task An_edition_has_a_name_until_the_book_is_changed_and_cannot_be_named_twice()
    {
        var named = await Run("edition", "2026.11.1");
        named.Code.ShouldBe(0, named.Error);
        named.Out.ShouldMatch(
            "^edition 2026\\.11\\.1: sha256:[0-9a-f]{64}, 0 news drafted in /.*/jurisdictions/editions\\.yaml: edit them by hand\n$"
        );
        (await Run("assess", Example, "--in", "au-qld")).Words.ShouldContain("edition 2026.11.1");
        (await Invocation.Of(["inspect", Book])).Code.ShouldBe(0);
        (await Run("editions")).Words.ShouldContain("This is edition 2026.11.1 of the book.");

        (await Run("edition", "2026.11.2")).Error.ShouldContain("the book as it is has a name: edition 2026.11.1");
        await Edit("suspension-lift: 75 mm", "suspension-lift: 70 mm");
        (await Run("editions")).Words.ShouldContain("This book is no edition; it was changed after edition 2026.11.1.");
        (await Run("edition", "2026.11.1")).Error.ShouldContain("there is an edition 2026.11.1");
        (await Run("edition", "2026.10.7")).Error.ShouldBe(
            "NAME:1:1: error editions-out-of-order: edition 2026.10.7 of today does not come after 2026.11.1 of 2026-11-25 (take a "
                + "later month, or the next number)\n"
        );
        (await Run("edition", "2026-12")).Error.ShouldContain("editions.yaml");
    }

    [Fact]
    public async Task The_news_of_an_edition_are_drafted_from_what_changes_against_the_one_before()
    {
        var packed = Path.Combine(_folder.FullName, "first.rulebook");
        (await Run("edition", "2026.10.1")).Code.ShouldBe(0);
        (await Run("pack", packed)).Code.ShouldBe(0);
        await Edit("suspension-lift: 75 mm", "suspension-lift: 70 mm");
        var named = await Run("edition", "2026.11.1", "--since", packed);
        named.Code.ShouldBe(0, named.Error);

        using var json = JsonDocument.Parse((await Run("editions", "--format", "json")).Out);
        var news = json.RootElement.GetProperty("editions")[1].GetProperty("news");
        news.GetArrayLength().ShouldBeGreaterThan(0);
        // The figure was in force since 2018: answers given for past days were others.
        news[0].GetProperty("kind").GetString().ShouldBe("corrected");
        news[0].GetProperty("jurisdictions")[0].GetString().ShouldBe("au-qld");
        (await Run("editions", "--format", "markdown")).Out.ShouldContain("## Past answers corrected");
    }

    [Fact]
    public async Task A_kept_answer_that_no_longer_stands_is_told_with_a_letter_and_kept_behind_the_new_one()
    {
        Directory.CreateDirectory(Path.GetDirectoryName(Kept)!);
        (await Run("assess", Example, "--format", "record", "--output", Kept)).Error.ShouldBeEmpty();
        (await Run("replay", Kept)).ShouldSatisfyAllConditions(
            again => again.Code.ShouldBe(0),
            again => again.Words.ShouldStartWith("The same answer, to the byte.")
        );
        var first = await File.ReadAllTextAsync(Kept, TestContext.Current.CancellationToken);

        var text = await File.ReadAllTextAsync(Height, TestContext.Current.CancellationToken);
        var at = text.IndexOf("- from: 2018-10-26", StringComparison.Ordinal);
        await File.WriteAllTextAsync(
            Height,
            text[..at] + text[at..].Replace("suspension-lift: 50 mm", "suspension-lift: 40 mm", StringComparison.Ordinal),
            TestContext.Current.CancellationToken
        );
        var replayed = await Run("replay", Kept);
        replayed.Code.ShouldBe(1);
        replayed.Words.ShouldStartWith("ANOTHER ANSWER: allowed without a certificate -> allowed with a certificate.");
        replayed.Words.ShouldContain(
            "figure corrected: au-qld/ride-height/raise-four-wheel-drive, suspension-lift (no-certificate): at-most 50 mm -> at-most 40 mm"
        );

        var letters = Path.Combine(_folder.FullName, "letters");
        (await Run("recheck", Path.GetDirectoryName(Kept)!)).Code.ShouldBe(1);
        (await File.ReadAllTextAsync(Kept, TestContext.Current.CancellationToken)).ShouldBe(first);
        var rechecked = await Run("recheck", Path.GetDirectoryName(Kept)!, "--letters", letters, "--write");
        rechecked.Code.ShouldBe(1);
        rechecked.Words.ShouldContain("wagon.json: NO LONGER STANDS: allowed without a certificate -> allowed with a certificate");
        var letter = await File.ReadAllTextAsync(Path.Combine(letters, "wagon.txt"), TestContext.Current.CancellationToken);
        letter.ShouldContain("What we said:  allowed without a certificate");
        letter.ShouldContain("the licensed certifier decide");

        using var now = JsonDocument.Parse(await File.ReadAllTextAsync(Kept, TestContext.Current.CancellationToken));
        using var before = JsonDocument.Parse(first);
        now.RootElement.GetProperty("earlier")[0]
            .GetProperty("answer")
            .GetRawText()
            .ShouldBe(before.RootElement.GetProperty("answer").GetRawText());
        (await Run("recheck", Path.GetDirectoryName(Kept)!)).Code.ShouldBe(0);
    }

    [Fact]
    public async Task A_folder_without_records_and_a_record_of_a_newer_format_are_refused()
    {
        (await Run("recheck", _folder.FullName)).Error.ShouldContain("no record is here");
        Directory.CreateDirectory(Path.GetDirectoryName(Kept)!);
        await File.WriteAllTextAsync(Kept, """{ "record": 7 }""", TestContext.Current.CancellationToken);
        (await Run("replay", Kept)).ShouldSatisfyAllConditions(
            refused => refused.Code.ShouldBe(2),
            refused => refused.Error.ShouldContain("its format is 7")
        );
        (await Run("recheck", Path.GetDirectoryName(Kept)!)).ShouldSatisfyAllConditions(
            refused => refused.Code.ShouldBe(2),
            refused => refused.Words.ShouldContain("its format is 7")
        );
    }

    private static string Example => Path.Combine(Invocation.Root, "examples", "touring-wagon.yaml");

    private Task<Invocation> Run(params string[] args) => Invocation.Of([.. args, "--book", Book]);

    private async Task Edit(string before, string after) =>
        await File.WriteAllTextAsync(Height, (await File.ReadAllTextAsync(Height)).Replace(before, after, StringComparison.Ordinal));
}
