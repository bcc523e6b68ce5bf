using System.IO.Compression;
using RuleBook.Authoring.Packing;
using RuleBook.Authoring.Records;
using RuleBook.Law;
using RuleBook.Telling;

namespace RuleBook.Authoring.Tests.Editions;

/// <summary>
/// Editions that were packed once, and answers that were kept with them (<c>tests/editions</c>, never changed): every later version reads
/// the one and decides the other alike. Words may differ; what decides may not, but for what was too sure and is put right here.
/// </summary>
public sealed class ArchivedEditionTests
{
    private static readonly string Folder = Path.Combine(TestBook.Folder, "tests", "editions");

    /// <summary>
    /// Until November 2026 an added tank counted with its fuel alone. The tank of the wagon stands among its accessories, which nothing
    /// can know: its masses are at least so much.
    /// </summary>
    private static readonly Dictionary<string, string[]> PutRight = new()
    {
        ["2026.11.1.wagon-touring.json"] =
        [
            "at least 237 kg over GVM when loaded (3737 of 3500 kg)",
            "at least 22 kg over GVM before anybody gets in (3522 of 3500 kg)",
        ],
    };

    public static TheoryData<string> Editions =>
        [
            .. Directory
                .GetFiles(Folder, "*.rulebook.gz")
                .Select(file => Path.GetFileName(file)[..^".rulebook.gz".Length])
                .Order(StringComparer.Ordinal),
        ];

    [Theory]
    [MemberData(nameof(Editions))]
    public void An_edition_that_was_packed_is_read_and_decides_what_was_kept_with_it(string edition)
    {
        var book = Open(edition);
        var kept = Directory.GetFiles(Folder, $"{edition}.*.json");
        kept.ShouldNotBeEmpty();
        foreach (var file in kept)
        {
            var record = SavedRecord.Read(File.ReadAllText(file), file);
            record.Book.ShouldBe(book.Digest);
            var comparison = AnswerComparison.Of(record.Answer, AssessmentJson.Write(record.Ask(book)).TrimEnd('\n'));
            comparison.Decision.ShouldBeNull(file);
            comparison
                .Differences.Select(difference => difference.Now)
                .ShouldBe(PutRight.GetValueOrDefault(Path.GetFileName(file), []), file);
        }
    }

    [Theory]
    [MemberData(nameof(Editions))]
    public void The_list_of_editions_has_the_digest_of_every_edition_that_was_packed(string edition) =>
        TestBook.Book.Editions.Single(each => each.Name == edition).Digest.ShouldBe(Open(edition).Digest);

    private static Book Open(string edition)
    {
        using var packed = new GZipStream(File.OpenRead(Path.Combine(Folder, $"{edition}.rulebook.gz")), CompressionMode.Decompress);
        using var bytes = new MemoryStream();
        packed.CopyTo(bytes);
        return PackedBook.Read(bytes.ToArray(), edition).Open();
    }
}
