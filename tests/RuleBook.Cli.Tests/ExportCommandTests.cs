namespace RuleBook.Cli.Tests;

/// <summary><c>rulebook export</c> writes a folder of plain tables with the query that judges by them.</summary>
public sealed class ExportCommandTests
{
    /// <summary>On the invented book, with a limit that is a share of another measure in it, which no decimal holds.</summary>
    [Fact]
    public async Task An_export_says_how_much_it_is_of_which_day_and_what_it_leaves_open()
    {
        var book = InventedBookTests.Copy();
        try
        {
            var law = Path.Combine(book, "jurisdictions", "xa-n", "ride-height.yaml");
            await File.WriteAllTextAsync(
                law,
                (await File.ReadAllTextAsync(law, TestContext.Current.CancellationToken)).Replace(
                    "within: { suspension-lift: 30 mm }",
                    "within: { front-bumper-height: { at-most: [600 mm, { share: 20 %, of: wheelbase }] } }",
                    StringComparison.Ordinal
                ),
                TestContext.Current.CancellationToken
            );
            foreach (var kind in (string[])["sql", "csv", "dmn", "parquet"])
            {
                var target = Path.Combine(book, kind);
                var answer = await Invocation.Of(["export", target, "--for", kind, "--book", book]);
                var files = new DirectoryInfo(target).GetFiles().Where(file => file.Name != "rulebook-export.txt").ToArray();
                answer.Code.ShouldBe(0);
                answer.Out.ShouldBe(
                    $"{target}: {files.Length} files, {files.Sum(file => file.Length) / 1024} KiB, limits in force on 2026-11-25\n"
                );
                answer.Error.ShouldBe(
                    "not reckoned, no decimal holds every share: front-bumper-height-per-wheelbase; "
                        + "a vehicle that does not state it stays open\n"
                );
            }
        }
        finally
        {
            Directory.Delete(book, recursive: true);
        }
    }

    [Fact]
    public async Task The_limits_in_force_on_a_day_are_written_as_tables_with_the_query()
    {
        var folder = Directory.CreateTempSubdirectory();
        try
        {
            var target = Path.Combine(folder.FullName, "limits");
            var written = await Invocation.Of(["export", target, "--for", "csv", "--on", "2017-06-01"]);
            written.Code.ShouldBe(0, written.Error);
            written.Out.ShouldContain("limits in force on 2017-06-01");
            (await File.ReadAllTextAsync(Path.Combine(target, "limits.csv"), TestContext.Current.CancellationToken)).ShouldStartWith(
                "place,topic,rule,tier,"
            );
            File.Exists(Path.Combine(target, "judge.sql")).ShouldBeTrue();

            var models = await Invocation.Of(["export", target, "--for", "dmn", "--on", "2017-06-01"]);
            models.Out.ShouldContain("limits in force on 2017-06-01");
            File.Exists(Path.Combine(target, "judge.sql")).ShouldBeFalse(); // the export is replaced whole
            (await File.ReadAllTextAsync(Path.Combine(target, "au-qld.dmn"), TestContext.Current.CancellationToken)).ShouldContain(
                "hitPolicy=\"FIRST\""
            );

            (await Invocation.Of(["export", target, "--for", "parquet", "--on", "2017-06-01"])).Code.ShouldBe(0);
            File.Exists(Path.Combine(target, "limits.parquet")).ShouldBeTrue();
            File.Exists(Path.Combine(target, "au-qld.dmn")).ShouldBeFalse();

            await File.WriteAllTextAsync(Path.Combine(target, "letter.odt"), "mine", TestContext.Current.CancellationToken);
            var refused = await Invocation.Of(["export", target]);
            refused.Code.ShouldBe(2);
            refused.Error.ShouldBe(
                $"{target}:1:1: error not-writable: the folder holds what is no export: letter.odt (name a new folder, or an export "
                    + "to replace)\n"
            );
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }
}
