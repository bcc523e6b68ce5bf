using Newtonsoft.Json.Linq;
using NJsonSchema;
using RuleBook.Authoring.Schemas;
using RuleBook.Authoring.Tests;

namespace RuleBook.Cli.Tests;

/// <summary>
/// <c>rulebook changes</c> on Queensland's amendment of 26 October 2018: 75 mm became free with stability control too, 150 mm could be
/// certified instead of 125 mm (the department's notice and the minister's release, jurisdictions/au-qld/sources.yaml:
/// standards-notifications-2018, ministers-release-2018-09-20, lift-standards-2018).
/// </summary>
public sealed class ChangesCommandTests(GitBook git) : IClassFixture<GitBook>
{
    private const string Certified = """
        { "job": "W-1", "registered-in": "au-qld", "on": "2018-11-01",
          "vehicle": { "category": "MC", "four-wheel-drive": "yes", "stability-control": "yes" },
          "modification": { "suspension-lift": "75 mm", "tyre-diameter-growth": "50 mm", "body-lift": "50 mm" } }
        """;

    /// <summary>
    /// Ministerial statement, 20 September 2018: from 26 October 50 mm of suspension and 25 mm of tyre are free together; before it was 50
    /// mm with stability control, 75 mm without (lift-standards-2018).
    /// </summary>
    [Fact]
    public async Task A_register_tells_on_which_of_its_rows_the_amendment_of_2018_gives_another_verdict()
    {
        using var folder = new TemporaryFolder();
        var file = Path.Combine(folder.Path, "register.csv");
        await File.WriteAllTextAsync(
            file,
            "job,registered-in,on,vehicle.category,vehicle.four-wheel-drive,vehicle.stability-control,"
                + "modification.suspension-lift,modification.tyre-diameter-growth\n"
                + "A,au-qld,2026-11-20,MC,yes,yes,45 mm,40 mm\nB,au-qld,2026-11-20,MC,yes,yes,20 mm,0 "
                + "mm\nC,au-qld,2026-11-20,MC,yes,yes,50 mm,50 mm\n",
            TestContext.Current.CancellationToken
        );
        var answer = await Invocation.Of(["fleet", file, "--book", git.Folder, "--against", git.Old]);
        answer.Code.ShouldBe(0, answer.Error);
        answer.Error.ShouldContain("another verdict on 2 rows");
        answer.Error.ShouldContain("certificate -> no-certificate: 2, such as row 1 (au-qld)");
        var rows = answer.Out.Split("\r\n");
        rows[0].ShouldEndWith(",verdict-before");
        rows[2].ShouldEndWith(",no-certificate");
    }

    [Fact]
    public async Task Two_revisions_are_compared_and_the_change_is_told_with_a_job()
    {
        var answer = await Of("changes", "HEAD~1", "HEAD", "--book", git.Folder);

        answer.Code.ShouldBe(1);
        answer.Words.ShouldContain("Queensland (au-qld), ride height");
        answer.Words.ShouldContain(
            "electronic stability control yes, from 26 October 2018: allowed with a certificate -> allowed without a certificate"
        );
        answer.Words.ShouldContain("not allowed -> allowed with a certificate");
        answer.Words.ShouldContain("registered-in: au-qld on: 2018-10-26");
        answer.Error.ShouldBeEmpty();
    }

    [Fact]
    public async Task A_folder_and_a_revision_of_the_same_book_give_the_same_answer()
    {
        var folder = await Of("changes", git.Old, "--book", git.Folder);
        var revision = await Of("changes", "main~1", "--book", git.Folder);

        folder.Code.ShouldBe(1);
        folder.Out.ShouldBe(revision.Out);
    }

    [Fact]
    public async Task A_book_that_is_as_committed_changes_no_answer()
    {
        var answer = await Of("changes", "HEAD", "--book", git.Folder);

        answer.Code.ShouldBe(0);
        answer.Out.Trim().ShouldBe("No answer changes.");
    }

    [Fact]
    public async Task A_case_whose_id_the_new_book_does_not_have_is_told()
    {
        var folder = Directory.CreateTempSubdirectory("rulebook-gone-");
        try
        {
            var (before, after) = (Sound("before", "{ id: kept }, { id: gone }"), Sound("after", "{ id: kept }, { id: come }"));
            var told = await Of("changes", before, after, "--book", git.Folder);
            var back = await Of("changes", before, before, "--book", git.Folder);

            (told.Code, back.Code).ShouldBe((1, 0));
            told.Words.ShouldContain("only the old book has gone:");
            told.Words.ShouldNotContain("kept");

            // Four are named; of more, four and how many there are beside them.
            const string four = "{ id: kept }, { id: a }, { id: b }, { id: c }, { id: d }";
            (await Of("changes", Sound("four", four), after)).Words.ShouldContain("only the old book has a, b, c, d: nothing says");
            (await Of("changes", Sound("five", $"{four}, {{ id: e }}"), after)).Words.ShouldContain(
                "has a, b, c, d and 1 more: nothing says"
            );
        }
        finally
        {
            folder.Delete(recursive: true);
        }

        string Sound(string name, string cases)
        {
            var book = Path.Combine(folder.FullName, name);
            GitBook.CopyTo(Path.Combine(Invocation.Root, "tests", "bad-books", "sound"), book);
            Directory.CreateDirectory(Path.Combine(book, "tests", "cases", "xa"));
            File.WriteAllText(Path.Combine(book, "tests", "cases", "xa", "ride-height.yaml"), $"cases: [{cases}]\n");
            return book;
        }
    }

    [Theory]
    [InlineData("no-such-branch")]
    [InlineData("HEAD~99")]
    [InlineData("empty")] // a commit without a book
    [InlineData("")]
    [InlineData("HEAD;touch x")]
    public async Task What_is_neither_a_book_nor_a_revision_is_refused_in_one_line(string name)
    {
        var answer = await Of("changes", name, "--book", git.Folder);

        answer.Code.ShouldBe(2);
        answer.Out.ShouldBeEmpty();
        answer.Error.ShouldContain("error not-a-book: ");
        answer.Error.TrimEnd().Split('\n').Length.ShouldBe(1);
    }

    [Fact]
    public async Task A_mistake_in_the_book_of_a_revision_is_reported_with_the_revision()
    {
        var answer = await Of("changes", "broken", "--book", git.Folder);

        answer.Code.ShouldBe(2);
        answer.Error.ShouldStartWith("broken:jurisdictions/au-qld/ride-height.yaml:");
    }

    [Fact]
    public async Task Nothing_unpacked_is_left_behind()
    {
        await Of("changes", "HEAD~1", "--book", git.Folder);
        await Of("changes", "broken", "--book", git.Folder);

        for (var i = 0; i < 300 && Left().Length > 0; i++)
            await Task.Delay(100, TestContext.Current.CancellationToken); // another test may be comparing
        Left().ShouldBeEmpty();

        static string[] Left() => Directory.GetDirectories(Path.GetTempPath(), $"rulebook-revision-{Environment.ProcessId}-*");
    }

    [Fact]
    public async Task Saved_jobs_that_change_are_named_and_one_that_cannot_be_read_stops_none_of_them()
    {
        var folder = Jobs();
        await File.WriteAllTextAsync(Path.Combine(folder, "broken.json"), "{ \"registered-in\": }", TestContext.Current.CancellationToken);

        var answer = await Of("changes", "HEAD~1", "--jobs", folder, "--book", git.Folder);

        answer.Code.ShouldBe(2);
        answer.Words.ShouldContain("Saved jobs: 2 answered, 1 changed");
        answer.Words.ShouldContain("not allowed -> allowed with a certificate");
        var markdown = await Of("changes", "HEAD~1", "--jobs", folder, "--format", "markdown", "--book", git.Folder);
        markdown.Out.Split("### Saved jobs")[1].ShouldContain(" to not allowed | allowed with a certificate |");
        answer.Words.ShouldContain("broken.json:1:20: error ");
        answer.Words.ShouldNotContain("standard.yml");
        Directory.Delete(folder, recursive: true);
    }

    [Fact]
    public async Task The_answer_for_a_program_has_the_shape_of_its_schema_and_no_key_without_a_description()
    {
        var folder = Jobs();
        var schema = await JsonSchema.FromJsonAsync(SchemaCheck.Text("changes"), TestContext.Current.CancellationToken);
        var answer = await Of("changes", "HEAD~1", "--jobs", folder, "--format", "json", "--book", git.Folder);
        var json = JToken.Parse(answer.Out);

        answer.Code.ShouldBe(1);
        schema.Validate(json).ShouldBeEmpty();
        Undescribed(json, schema, "").ShouldBeEmpty();
        json["answers"]!.ShouldContain(change => change["after"]!.Values<string>().All(pathway => pathway == "certificate"));
        json["jobs"]!["changed"]!.Single()["file"]!.Value<string>().ShouldBe("2018/certified.json");
        Directory.Delete(folder, recursive: true);
    }

    [Fact]
    public async Task A_comment_for_a_pull_request_goes_to_a_file_whole()
    {
        var file = Path.Combine(Path.GetTempPath(), $"comment-{Guid.NewGuid():N}.md");
        var answer = await Of("changes", "HEAD~1", "--format", "markdown", "--output", file, "--book", git.Folder);
        var text = await File.ReadAllTextAsync(file, TestContext.Current.CancellationToken);
        File.Delete(file);

        answer.Code.ShouldBe(1);
        answer.Out.ShouldBeEmpty();
        text.ShouldStartWith("## Answers that change\n");
        text.ShouldContain("### Queensland (au-qld)\n");
        text.ShouldContain("<details><summary>Jobs that show it</summary>");
        text.ShouldContain("```yaml\nregistered-in: au-qld\n");
    }

    private static Task<Invocation> Of(params string[] args) => Invocation.Of(args, width: 200);

    private static string Jobs()
    {
        var folder = Directory.CreateTempSubdirectory("rulebook-jobs-").FullName;
        Directory.CreateDirectory(Path.Combine(folder, "2018"));
        File.WriteAllText(Path.Combine(folder, "2018", "certified.json"), Certified);
        File.WriteAllText(
            Path.Combine(folder, "standard.yml"),
            "registered-in: au-qld\nvehicle: { category: MC, four-wheel-drive: yes }\nmodification: { suspension-lift: 40 mm }\n"
        );
        File.WriteAllText(Path.Combine(folder, "notes.txt"), "not a job");
        return folder;
    }

    private static IEnumerable<string> Undescribed(JToken token, JsonSchema schema, string path) =>
        token switch
        {
            JObject keys when schema.ActualSchema.Properties.Count > 0 => keys.Properties()
                .SelectMany(entry =>
                    schema.ActualSchema.Properties.TryGetValue(entry.Name, out var inner)
                        ? Undescribed(entry.Value, inner.ActualSchema, $"{path}/{entry.Name}")
                        : [$"{path}/{entry.Name}"]
                ),
            JArray items when schema.ActualSchema.Item is { } item => items.SelectMany(each => Undescribed(each, item.ActualSchema, path)),
            _ => [],
        };
}
