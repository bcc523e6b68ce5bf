using RuleBook.Authoring.Changes;
using RuleBook.Law;
using RuleBook.Text;
using static RuleBook.Authoring.Tests.Changes.EditedBook;

namespace RuleBook.Authoring.Tests.Changes;

/// <summary>Saved jobs of a folder put to two small books: 50 mm free, then 75 mm from 2020 on (derived).</summary>
[Trait("Basis", "derived")]
public sealed class JobChangesTests : IDisposable
{
    private static readonly Book Before = SmallBook.WithVersions(Version("2012-01-01", "50 mm"));
    private static readonly Book After = SmallBook.WithVersions($"{Version("2012-01-01", "50 mm")}\n{Version("2020-01-01", "75 mm")}");
    private static readonly DateOnly Today = new(2026, 11, 28);
    private readonly TemporaryFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void Jobs_of_all_folders_within_are_answered_and_those_that_change_are_told_in_the_order_of_their_files()
    {
        folder.Write("b.yaml", Job("60 mm", "job: W-1, on: 2021-01-01, "));
        folder.Write("sub/a.yml", Job("60 mm", ""));
        folder.Write("sub/c.JSON", """{ "registered-in": "au-qld", "on": "2021-01-01", "modification": { "suspension-lift": "60 mm" } }""");
        folder.Write("before.yaml", Job("60 mm", "on: 2019-12-31, "));
        folder.Write("days.yaml", Job("60 mm", "dates: { work: 2019-01-01, certification: 2019-01-01, inspection: 2019-01-01 }, "));
        folder.Write("small.yaml", Job("40 mm", ""));
        folder.Write("letter.txt", "no job");
        File.CreateSymbolicLink(Path.Combine(folder.Path, "link.yaml"), Path.Combine(folder.Path, "b.yaml"));
        Directory.CreateSymbolicLink(Path.Combine(folder.Path, "again"), Path.Combine(folder.Path, "sub"));

        var report = JobChanges.In(folder.Path, Before, After, Today);

        report.Answered.ShouldBe(6);
        report.Changed.ShouldBe([
            new("b.yaml", "W-1", Only(Pathway.Prohibited), Only(Pathway.NoCertificate)),
            new("sub/a.yml", null, Only(Pathway.Prohibited), Only(Pathway.NoCertificate)),
            new("sub/c.JSON", null, Only(Pathway.Prohibited), Only(Pathway.NoCertificate)),
        ]);
        report.Unreadable.ShouldBeEmpty();
    }

    [Fact]
    public void A_job_of_a_place_that_only_the_new_book_has_is_told_without_an_answer_before()
    {
        folder.Write("a.yaml", Job("60 mm", ""));
        JobChanges
            .In(folder.Path, SmallBook.WithVersions(Version("2012-01-01", "50 mm"), "au-vic"), After, Today)
            .Changed.ShouldBe([new("a.yaml", null, null, Only(Pathway.NoCertificate))]);
    }

    [Fact]
    public void One_that_cannot_be_read_is_told_at_its_place_and_stops_no_other()
    {
        folder.Write("a.yaml", "registered-in: nowhere\non: 2021-01-01\n");
        folder.Write("b.yaml", Job("60 mm", ""));
        var report = JobChanges.In(folder.Path, Before, After, Today);
        (report.Answered, report.Changed.Length).ShouldBe((1, 1));
        report.Unreadable.ShouldHaveSingleItem().Mark.ShouldBe(new Mark("a.yaml", 1, 16));
    }

    [Theory]
    [InlineData(" ")]
    [InlineData("/no/such/folder")]
    public void A_folder_that_is_not_there_is_refused(string path) =>
        Should
            .Throw<InputException>(() => JobChanges.In(path, Before, After, Today))
            .Problems.ShouldHaveSingleItem()
            .ToString()
            .ShouldBe($"{path}:1:1: error no-folder: there is no such folder (name the folder of the job files)");

    private static string Job(string lift, string more) =>
        $"{{ {more}registered-in: au-qld, modification: {{ suspension-lift: {lift} }} }}\n";

    private static string Version(string from, string limit) =>
        $"- {{from: {from}, sources: [{{cite: law}}], tiers: [{{pathway: no-certificate, within: {{suspension-lift: {limit}}}}}], beyond: "
        + "prohibited}";
}
