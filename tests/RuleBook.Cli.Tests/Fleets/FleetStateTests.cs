using RuleBook.Authoring.Files;
using RuleBook.Cli.Fleets;
using RuleBook.Text;

namespace RuleBook.Cli.Tests.Fleets;

/// <summary>What a run of a fleet leaves beside its output, and what another makes of it.</summary>
public sealed class FleetStateTests : IDisposable
{
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("rulebook-state-");

    private Destination Output => Destination.Of(Path.Combine(folder.FullName, "out.csv"));

    public void Dispose() => folder.Delete(recursive: true);

    [Fact]
    public void What_a_run_noted_is_read_by_the_same_run_and_refused_to_any_other()
    {
        FleetState.Read(Output, "book day input").ShouldBeNull();
        var noted = new FleetState(
            "book day input",
            2048,
            70_000,
            12,
            new FleetCounts(
                2047,
                1,
                3,
                new() { ["certificate"] = 2047 },
                new() { ["xa certificate"] = 2047 },
                new() { ["the height"] = 5 }
            ),
            [new EffectCount("certificate", "undecided", 4, 7, "xa")],
            ["fleet.csv:9:1: error"]
        );
        noted.Write(Output);
        folder.GetFiles().ShouldHaveSingleItem().Name.ShouldBe(".out.csv.rulebook-state");
        var read = FleetState.Read(Output, "book day input").ShouldNotBeNull();
        (read.Run, read.Row, read.Output, read.Rejected).ShouldBe(("book day input", 2048, 70_000, 12));
        (read.Summary.Rows, read.Summary.Rejected, read.Summary.Defused).ShouldBe((2047, 1, 3));
        (read.Summary.Verdicts["certificate"], read.Summary.States["xa certificate"], read.Summary.Reasons["the height"]).ShouldBe(
            (2047, 2047, 5)
        );
        (read.Effect, read.Problems).ShouldSatisfyAllConditions(
            both => both.Effect.ShouldBe([new EffectCount("certificate", "undecided", 4, 7, "xa")]),
            both => both.Problems.ShouldBe(["fleet.csv:9:1: error"])
        );
        Should
            .Throw<InputException>(() => FleetState.Read(Output, "another book"))
            .Problems.ShouldHaveSingleItem()
            .ToString()
            .ShouldBe(
                $"{Output.Path}:1:1: error not-resumable: the run that died was of another book, day, input or output (run it "
                    + "without --resume, "
                    + "or with the same book and options)"
            );
        FleetState.Delete(Output);
        FleetState.Read(Output, "another book").ShouldBeNull();
    }

    [Theory]
    [InlineData("")]
    [InlineData("{ \"Run\": \"book")]
    [InlineData("null")]
    public void A_note_that_cannot_be_read_is_none(string text)
    {
        File.WriteAllText(WrittenAside.Beside(Output, "state"), text);
        FleetState.Read(Output, "book").ShouldBeNull();
    }

    /// <summary>Fourteen bytes are aside, of which the first ten were noted; what came behind them is written anew.</summary>
    [Fact]
    public void A_file_takes_its_name_once_it_is_whole_and_goes_on_behind_what_was_noted()
    {
        var aside = WrittenAside.Beside(Output, "part");
        File.WriteAllText(aside, "0123456789half");
        using (var kept = new WrittenAside(Output, 10))
        {
            kept.Length.ShouldBe(10);
            kept.Write("whole"u8.ToArray());
            kept.Length.ShouldBe(15);
            new FileInfo(aside).Length.ShouldBe(15); // what is noted is there, whatever becomes of the run
            File.Exists(Output.Path).ShouldBeFalse();
            kept.Keep();
        }

        File.ReadAllText(Output.Path).ShouldBe("0123456789whole");
        folder.GetFiles().Length.ShouldBe(1);

        using (var taken = new WrittenAside(Output))
            taken.Write("other"u8.ToArray());
        File.ReadAllText(Output.Path).ShouldBe("0123456789whole");
        folder.GetFiles().Length.ShouldBe(1);

        File.WriteAllText(aside, "less");
        Should
            .Throw<InputException>(() => new WrittenAside(Output, 5))
            .Problems.ShouldHaveSingleItem()
            .ToString()
            .ShouldBe(
                $"{Output.Path}:1:1: error not-resumable: less was written than the run that died had noted (run it again without --resume)"
            );
        File.ReadAllText(aside).ShouldBe("less");
        using (var all = new WrittenAside(Output, 4))
            all.Keep();
        File.ReadAllText(Output.Path).ShouldBe("less");
    }

    [Fact]
    public void Two_runs_never_write_the_same_file()
    {
        using var first = new WrittenAside(Output);
        Should.Throw<IOException>(() => new WrittenAside(Output));
        first.Keep();
        File.Exists(Output.Path).ShouldBeTrue();
    }
}
