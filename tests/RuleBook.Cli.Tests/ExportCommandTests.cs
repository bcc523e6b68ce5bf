namespace RuleBook.Cli.Tests;

/// <summary><c>rulebook export</c> writes a folder of plain tables with the query that judges by them.</summary>
public sealed class ExportCommandTests
{
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
