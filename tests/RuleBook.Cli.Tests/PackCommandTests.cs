namespace RuleBook.Cli.Tests;

/// <summary>A packed book answers as the folder it was packed from.</summary>
public sealed class PackCommandTests
{
    [Fact]
    public async Task A_job_gets_the_same_answer_from_the_packed_book_and_from_its_folder()
    {
        var folder = Directory.CreateTempSubdirectory();
        try
        {
            var file = Path.Combine(folder.FullName, "edition.rulebook");
            var packed = await Invocation.Of(["pack", file]);
            packed.Code.ShouldBe(0, packed.Error);
            Directory.GetFiles(folder.FullName).ShouldBe([file]);

            foreach (var job in Directory.GetFiles(Path.Combine(Invocation.Root, "examples"), "*.yaml"))
            {
                var fromFolder = await Invocation.Of(["assess", job, "--format", "json"]);
                var fromFile = await Invocation.Of(["assess", job, "--format", "json", "--book", file]);
                (fromFile.Code, fromFile.Out).ShouldBe((fromFolder.Code, fromFolder.Out));
            }
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    [Fact]
    public async Task A_file_that_is_no_packed_book_is_refused_by_name()
    {
        var answer = await Invocation.Of(["limits", "au-qld", "--book", Path.Combine(Invocation.Root, "README.md")]);

        answer.Code.ShouldBe(2);
        answer.Error.ShouldContain("README.md:1:1: error not-a-packed-book");
    }
}
