using System.Text.Json;
using RuleBook.Authoring.Files;
using RuleBook.Cli.Fleets;

namespace RuleBook.Cli.Tests;

/// <summary>What <c>fleet</c> reads and writes, puts aside, goes on with and refuses.</summary>
public sealed class FleetCommandTests : IDisposable
{
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory();

    public void Dispose() => folder.Delete(recursive: true);

    [Fact]
    public async Task A_link_planted_where_a_fleet_is_written_aside_is_refused_and_what_it_leads_to_is_kept()
    {
        var (mine, output) = (Path.Combine(folder.FullName, "mine.txt"), Path.Combine(folder.FullName, "out.csv"));
        await File.WriteAllTextAsync(mine, "mine", TestContext.Current.CancellationToken);
        File.CreateSymbolicLink(WrittenAside.Beside(Destination.Of(output), "part"), mine);
        var rows = Path.Combine(folder.FullName, "fleet.csv");
        await File.WriteAllTextAsync(
            rows,
            "registered-in,modification.suspension-lift\nau-qld,45 mm\n",
            TestContext.Current.CancellationToken
        );
        var answer = await Invocation.Of(["fleet", rows, "--output", output]);
        (answer.Code, answer.Error.Contains("a link lies where the file is written aside", StringComparison.Ordinal)).ShouldBe((2, true));
        (await File.ReadAllTextAsync(mine, TestContext.Current.CancellationToken)).ShouldBe("mine");
        File.Exists(output).ShouldBeFalse();
    }

    /// <summary>
    /// The lift alone is free in Queensland (announcement of October 2018); that a trailer of 3200 kg without brakes is left open, with its
    /// loads, and a lift that is hardly possible, are told in the row too, whether or not an equal row came before.
    /// </summary>
    [Fact]
    public async Task What_is_left_open_beside_the_verdict_stands_in_the_row()
    {
        const string wagon = "au-qld,2026-11-28,MC,yes,yes,265/65R17 112S,3000 kg";
        var answer = await Fleet(
            "open.csv",
            "job,registered-in,on,vehicle.category,vehicle.four-wheel-drive,vehicle.stability-control,vehicle.tyres,vehicle.ratings.gvm,"
                + "modification.suspension-lift,trailer.braked,trailer.mass\n"
                + $"1,{wagon},40 mm,,\n2,{wagon},40 mm,no,3200 kg\n3,{wagon},280 mm,,\n4,{wagon},450 mm,,\n5,{wagon},450 "
                + $"mm,,\n6,{wagon},281 mm,,\n"
        );
        var rows = answer.Out.TrimEnd().Split('\n')[1..];
        rows[0].ShouldContain(",two thirds of the suspension travel kept,,");
        rows[1].ShouldContain("no-certificate,no certificate; more left open,");
        rows[1].ShouldContain("Rules of use left open: mass of the trailer behind a light vehicle. Loads not judged against GVM,");
        foreach (var row in (string[])[rows[3], rows[4]])
            row.ShouldContain("Check the row: a suspension lift of 450 mm is hardly possible.");
        foreach (var row in (string[])[rows[2], rows[5]])
            row.ShouldNotContain("Check the row");
    }

    [Fact]
    public async Task The_template_is_a_fleet_of_one_that_Queensland_allows_without_a_certificate()
    {
        var template = (await Invocation.Of(["fleet", "--template"])).Out;
        var answer = await Fleet("template.csv", template);
        answer.Code.ShouldBe(0, answer.Error);
        // Ministerial statement, 20 September 2018: 50 mm of suspension and 25 mm of tyre without a certificate.
        answer.Out.ShouldContain(",no-certificate,");
    }

    [Fact]
    public async Task A_row_that_cannot_be_read_is_put_aside_with_line_column_and_reason_and_the_rest_goes_on()
    {
        var aside = Path.Combine(folder.FullName, "rejected.csv");
        var answer = await Fleet(
            "fleet.csv",
            "owner,on,registered-in,modification.suspension-lift\n=1+1,2026-11-20,au-qld,45 mm\nB,soon,au-qld,45 "
                + "furlongs\nC,2026-11-20\n\"D, E\",2026-11-20,au-qld,45 mm\n",
            "--rejected",
            aside
        );
        answer.Code.ShouldBe(2);
        answer.Out.Split("\r\n", StringSplitOptions.RemoveEmptyEntries).Length.ShouldBe(3);
        answer.Out.ShouldContain("'=1+1,2026");
        answer.Out.ShouldContain("\"D, E\",2026");
        answer.Error.ShouldContain("passed through, no keys of a job: owner");
        answer.Error.ShouldContain("4 rows: ");
        answer.Error.ShouldContain("2 rejected");
        answer.Error.ShouldContain("1 cells begin like a formula");
        var rejected = (await File.ReadAllTextAsync(aside, TestContext.Current.CancellationToken)).Split("\r\n");
        rejected[1].ShouldStartWith("2,3,2,on,");
        rejected[1]
            .ShouldContain("'soon' is not a day of the calendar (write year-month-day, such as 2018-10-26, of the years 1900 to 2999)");
        rejected[1].ShouldContain("; also in column 4 '45 furlongs'");
        rejected[2].ShouldStartWith("3,4,3,registered-in,");
    }

    [Theory] // as spreadsheets write where a comma is the decimal point
    [InlineData("sep=;\r\n", ';')]
    [InlineData("\uFEFFSEP=|\n", '|')]
    public async Task A_first_line_that_names_the_separator_is_none_of_the_rows(string first, char by)
    {
        string[] rows = ["registered-in,on,modification.suspension-lift", "au-qld,2026-11-20,45 mm", "xx,2026-11-20,45 mm"];
        var answer = await Fleet("fleet.csv", first + string.Join('\n', rows).Replace(',', by));
        answer.Code.ShouldBe(2);
        answer.Out.Split("\r\n", StringSplitOptions.RemoveEmptyEntries).Length.ShouldBe(2);
        answer.Out.ShouldContain("\nau-qld,2026-11-20,45 mm,");
        answer.Error.ShouldContain("fleet.csv:4:1: error unknown-jurisdiction");
        var wrong = await Fleet("fleet.csv", first + $"registered-in{by}suspension-lift\n");
        wrong.Error.ShouldContain("fleet.csv:2:2: error unknown-key");
    }

    [Theory]
    [InlineData("A,\"au-qld,45 mm\nB,au-qld,45 mm\nC,au-qld,45 mm\n", 2, "1,2,2,registered-in,")]
    // Another row's quote closes it.
    [InlineData("A,au-qld,\"45 mm\nB,au-qld,45 mm\nC\",au-qld,45 mm\n", 1, "1,2,3,modification.suspension-lift,", "3,4,1,job,")]
    [InlineData("A,au-qld,45 mm\nB,au-qld,\"45 mm", 1, "2,3,3,modification.suspension-lift,")]
    [InlineData("\"A\nand more\",au-qld,45 mm\nB,xx,45 mm\n", 1, "2,4,2,registered-in,")] // a cell may go over lines
    public async Task A_quote_that_is_not_closed_costs_its_own_row_and_no_other(string rows, int answered, params string[] rejected)
    {
        var aside = Path.Combine(folder.FullName, "rejected.csv");
        var answer = await Fleet("fleet.csv", "job,registered-in,modification.suspension-lift\n" + rows, "--rejected", aside);
        answer.Code.ShouldBe(2);
        answer.Out.Split("\r\n", StringSplitOptions.RemoveEmptyEntries).Length.ShouldBe(1 + answered);
        var told = (await File.ReadAllTextAsync(aside, TestContext.Current.CancellationToken)).Split(
            "\r\n",
            StringSplitOptions.RemoveEmptyEntries
        )[1..];
        told.Length.ShouldBe(rejected.Length);
        for (var at = 0; at < told.Length; at++)
            told[at].ShouldStartWith(rejected[at]);
    }

    /// <summary>
    /// Rows with a quote come in blocks of 1024, so 2100 rows in three. The clock goes on by so many seconds a block; what is noted when it
    /// is read is what a kill at that moment leaves, and a part of the next row is written.
    /// </summary>
    [Fact]
    public async Task A_run_tells_and_notes_once_a_second_how_far_it_is_and_after_a_kill_another_gives_the_same_bytes()
    {
        var (input, output, aside) = (In("fleet.csv"), In("out.csv"), In("rejected.csv"));
        await File.WriteAllTextAsync(
            input,
            "job,on,registered-in,modification.suspension-lift\n"
                + string.Concat(
                    Enumerable
                        .Range(1, 2100)
                        .Select(at => $"\"W-{at}, A\",2026-11-20,{(at % 700 == 0 ? "nowhere" : "au-qld")},{at % 50} mm\n")
                ),
            TestContext.Current.CancellationToken
        );
        var state = WrittenAside.Beside(Destination.Of(output), "state");
        var noted = "";
        string[] command = ["fleet", input, "--output", output, "--rejected", aside];
        var whole = await Invocation.Watched(command, 1, () => noted = File.Exists(state) ? File.ReadAllText(state) : "");
        whole.Error.ShouldStartWith("\r1024 rows, 1024 a second   \r2048 rows, 1024 a second   \r2100 rows, 700 a second   \n");
        var (right, refused) = (File.ReadAllBytes(output), File.ReadAllBytes(aside));

        File.Delete(output);
        File.Delete(aside);
        var killed = JsonSerializer.Deserialize<FleetState>(noted)!;
        await File.WriteAllTextAsync(state, noted, TestContext.Current.CancellationToken);
        Leave(output, right.AsSpan(0, (int)killed.Output));
        Leave(aside, refused.AsSpan(0, (int)killed.Rejected));
        var resumed = await Invocation.Watched([.. command, "--resume"], 1, () => { });
        resumed.Error.ShouldBe(
            $"goes on after row 2048\n\r2100 rows, 52 a second   {whole.Error[whole.Error.IndexOf('\n', StringComparison.Ordinal)..]}"
        );
        File.ReadAllBytes(output).ShouldBe(right);
        File.ReadAllBytes(aside).ShouldBe(refused);
        Directory.GetFiles(folder.FullName).Length.ShouldBe(3); // nothing is left aside

        (await Invocation.Watched(command, 0.4, () => { })).Error.ShouldStartWith("\r2100 rows, 1750 a second   \n");

        static void Leave(string file, ReadOnlySpan<byte> written) =>
            File.WriteAllBytes(WrittenAside.Beside(Destination.Of(file), "part"), [.. written, .. "W-2049, A"u8]);
    }

    [Theory]
    [InlineData("--output", "fleet.csv")]
    [InlineData("--rejected", "link.csv")]
    [InlineData("--output", "out.csv", "--rejected", "out.csv")]
    public async Task The_rows_are_never_written_over_nor_two_files_onto_one_another(params string[] options)
    {
        const string rows = "registered-in,modification.suspension-lift\nau-qld,45 mm\nnowhere,45 mm\n";
        File.CreateSymbolicLink(In("link.csv"), In("fleet.csv"));
        var answer = await Fleet("fleet.csv", rows, [.. options.Select(each => each[0] == '-' ? each : In(each))]);
        (answer.Code, answer.Error.Contains("error same-file: ", StringComparison.Ordinal)).ShouldBe((2, true), answer.Error);
        (await File.ReadAllTextAsync(In("fleet.csv"), TestContext.Current.CancellationToken)).ShouldBe(rows);
    }

    /// <summary>A spreadsheet saves empty rows as separators alone.</summary>
    [Theory]
    [InlineData("job,registered-in,modification.suspension-lift\nA,au-qld,45 mm\n,,\n , ,\n,\n\nB,au-qld,45 mm\n,,\n")]
    [InlineData("job,registered-in,modification.suspension-lift\n\"A\",au-qld,45 mm\n,,\n,\"\",\nB,au-qld,45 mm\n")]
    public async Task A_row_of_empty_cells_is_none(string text)
    {
        var answer = await Fleet("fleet.csv", text);
        (answer.Code, answer.Error.Contains("2 rows: 2 ", StringComparison.Ordinal)).ShouldBe((0, true), answer.Error);
    }

    [Theory]
    [InlineData("", "has no header")]
    [InlineData("vehicle.category\nMC\n", "no column is headed 'registered-in'")]
    [InlineData("registered-in,on,on\nau-qld,2026-11-20,2026-11-20\n", "the column 'on' stands twice")]
    [InlineData("registered-in,verdict\nau-qld,x\n", "the column 'verdict' is one that the answer has")]
    [InlineData("registered-in,vehicle.4wd\nau-qld,yes\n", "fleet.csv:1:2: error unknown-key: '4wd' is not a key here")]
    [InlineData("registered-in,shown.lane-change\nau-qld,\n", "did you mean 'lane-change-test'?")]
    // What is passed through is not read: a lift under such a header would be none.
    [InlineData("registered-in,Body lift [mm]\nau-qld,50\n", "head it 'modification.body-lift', with units in the cells")]
    [InlineData("registered-in,modification.body-lift (mm)\nau-qld,\n", "head it 'modification.body-lift', with units in the cells")]
    [InlineData("registered-in,On\nau-qld,2026-11-20\n", "head it 'on'")]
    [InlineData("state,date\nau-qld,2026-11-20\n", "no column is headed 'registered-in' ('fleet --template' writes a header)")]
    public async Task A_header_that_does_not_do_is_refused(string text, string says)
    {
        var answer = await Fleet("fleet.csv", text);
        answer.Code.ShouldBe(2);
        answer.Error.ShouldContain(says);
        answer.Out.ShouldBeEmpty();
    }

    private string In(string name) => Path.Combine(folder.FullName, name);

    private Task<Invocation> Fleet(string name, string text, params string[] options) =>
        Invocation.Fleet(Path.Combine(folder.FullName, name), text, options);
}
