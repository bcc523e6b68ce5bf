using RuleBook.Authoring.Cases;
using RuleBook.Authoring.Inspecting;

namespace RuleBook.Cli.Tests;

/// <summary>What a maintainer starts from is sound at once and says that nothing is established; the places are invented.</summary>
public sealed class NewCommandTests : IDisposable
{
    private readonly string folder = Copy();

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public async Task A_new_state_with_a_rule_is_sound_and_its_case_holds()
    {
        var made = await Of("new", "jurisdiction", "nz-zz", "--name", "Zenland: \"north\"", "--ask", "Zenland Roads", "--within", "nz");
        (made.Code, made.Out, made.Error).ShouldBe((0, "jurisdictions/nz-zz/jurisdiction.yaml\njurisdictions/nz-zz/sources.yaml\n", ""));
        Inspection.Run(folder, new DateOnly(2026, 11, 25)).Problems.ShouldBeEmpty();

        await ReplaceAsync(
            "jurisdictions/nz-zz/sources.yaml",
            "sources: []",
            """
            sources:
              - source: heights-act
                title: Heights Act
                publisher: Zenland
                read-as: memory
                checked: 2026-11-25
                recheck-after: 2027-11-25
            """
        );
        var rule = await Of("new", "rule", "nz-zz/ride-height/bumpers", "--title", "Heights of bumpers", "--source", "heights-act");
        (rule.Code, rule.Out, rule.Error).ShouldBe((0, "jurisdictions/nz-zz/ride-height.yaml\ntests/cases/nz-zz/ride-height.yaml\n", ""));
        var second = await Of("new", "rule", "nz-zz/ride-height/frames", "--title", "Heights of frames", "--source", "heights-act");
        (second.Code, second.Out).ShouldBe((0, "jurisdictions/nz-zz/ride-height.yaml\n"));

        var report = Inspection.Run(folder, new DateOnly(2026, 11, 25));
        report.Problems.ShouldBeEmpty();
        report.Book!.Rule("nz-zz/ride-height/bumpers")!.Title.ShouldBe("Heights of bumpers");
        report.Book.Rule("nz-zz/ride-height/frames").ShouldNotBeNull();
        report.Book.Jurisdiction("nz-zz")!.Name.ShouldBe("Zenland: \"north\"");
        CaseFolder.Load(CaseFolder.Within(folder), report.Book).ShouldHaveSingleItem();
        (await Of("cases")).Code.ShouldBe(0);
    }

    [Theory]
    [InlineData("new jurisdiction NZ --name N --ask A", "error bad-id")]
    [InlineData("new jurisdiction ../x --name N --ask A", "error bad-id")]
    [InlineData("new jurisdiction nz --name N --ask A", "error duplicate-jurisdiction")]
    [InlineData("new jurisdiction nz-zz --name N --ask A --within nzz", "(did you mean 'nz'?)")]
    [InlineData("new rule nz/ride-height --title T --source s", "error bad-id")]
    [InlineData("new rule nz/ride-height/../x --title T --source s", "error bad-id")]
    [InlineData("new rule nz/ride-hight/x --title T --source s", "(did you mean 'ride-height'?)")]
    [InlineData("new rule nz/ride-height/x --title T --source no-such-source", "error unknown-source")]
    public async Task What_cannot_be_made_is_told_and_nothing_is_written(string line, string told)
    {
        var before = Files();
        var answer = await Of(line.Split(' '));
        (answer.Code, answer.Out).ShouldBe((2, ""));
        answer.Error.ShouldContain(told);
        Files().ShouldBe(before);
    }

    private string[] Files() =>
        [.. Directory.EnumerateFileSystemEntries(folder, "*", SearchOption.AllDirectories).Order(StringComparer.Ordinal)];

    private Task<Invocation> Of(params string[] args) => Invocation.Of([.. args, "--book", folder]);

    private async Task ReplaceAsync(string file, string old, string text)
    {
        var path = Path.Combine(folder, file);
        await File.WriteAllTextAsync(path, (await File.ReadAllTextAsync(path)).Replace(old, text, StringComparison.Ordinal));
    }

    /// <summary>The words of the book and a nation without rules.</summary>
    private static string Copy()
    {
        var folder = Directory.CreateTempSubdirectory("rulebook-new-").FullName;
        foreach (var file in Directory.EnumerateFiles(Path.Combine(Invocation.Root, "schema", "vocabulary"), "*.yaml"))
        {
            Directory.CreateDirectory(Path.Combine(folder, "schema", "vocabulary"));
            File.Copy(file, Path.Combine(folder, "schema", "vocabulary", Path.GetFileName(file)));
        }

        Directory.CreateDirectory(Path.Combine(folder, "tests", "cases"));
        Directory.CreateDirectory(Path.Combine(folder, "jurisdictions", "nz"));
        File.WriteAllText(
            Path.Combine(folder, "jurisdictions", "nz", "jurisdiction.yaml"),
            """
            jurisdiction: nz
            name: New Zealand
            registers: yes
            ask: { authority: Waka Kotahi }
            coverage: [ { topic: other, state: none, lacks: Nothing. } ]
            """
        );
        return folder;
    }
}
