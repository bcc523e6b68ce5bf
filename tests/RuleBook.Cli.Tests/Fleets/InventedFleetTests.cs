using System.Globalization;
using System.Text;
using RuleBook.Authoring.Inspecting;
using RuleBook.Cli.Fleets;
using RuleBook.Jobs.Reading;

namespace RuleBook.Cli.Tests.Fleets;

/// <summary>
/// What a fleet says, whole and by hand, before one invented rule: 50 mm without a certificate where all wheels are driven, 75 mm with one
/// after a lane-change test, nothing beyond. Vehicles are invented.
/// </summary>
public sealed class InventedFleetTests : IDisposable
{
    private const string Header =
        "job,owner,registered-in,on,vehicle.category,vehicle.four-wheel-drive,vehicle.ratings.gvm,vehicle.tare,"
        + "modification.suspension-lift";

    private const string Answer = "verdict,headline,tightest-limit,margin,blockers,missing,to-show,beside-the-verdict,weakest-evidence";

    private const string Known = "authority's text (xa-n/ride-height/raise)";
    private const string Free = "no-certificate,allowed without a certificate,suspension lift: 50 mm";
    private const string Certified = "certificate,allowed with a certificate,suspension lift: 75 mm";

    /// <summary>
    /// Rows with what is behind each: the verdict, what is left of 50 or 75 mm, over what and by how much, what is to be asked and shown.
    /// </summary>
    private static readonly (string Row, string Answer)[] Rows =
    [
        ("A,\"Bo, sons\",xa-n,2026-11-20,MC,yes,3000 kg,,40 mm", $"{Free},10 mm,,,,,{Known}"),
        ("B,'=1+1,xa-n,2026-11-20,MC,yes,3000 kg,,40.5 mm", $"{Free},9.5 mm,,,,,{Known}"),
        ("C,Ann,xa-n,2026-11-20,MC,yes,3000 kg,,49.999 mm", $"{Free},0.001 mm,,,,,{Known}"),
        ("D,Ann,xa-n,2026-11-20,MC,yes,3000 kg,,50 mm", $"{Free},0 mm,,,,,{Known}"),
        ("E,Ann,xa-n,2026-11-20,MC,yes,3000 kg,,60.25 mm", $"{Certified},14.75 mm,,,lane-change test passed,,{Known}"),
        ("F,Ann,xa-n,2026-11-20,MC,no,3000 kg,,40 mm", $"{Certified},35 mm,,,lane-change test passed,,{Known}"),
        ("G,Ann,xa-n,2026-11-20,MC,yes,3000 kg,,75.001 mm", $"prohibited,not allowed,,,,,,,{Known}"),
        (
            "H,Ann,xa-n,2026-11-20,MC,yes,3000 kg,,450 mm",
            $"prohibited,not allowed,,,,,,Check the row: a suspension lift of 450 mm is hardly possible.,{Known}"
        ),
        (
            "I,Ann,xa-n,2026-11-20,MC,,3000 kg,,unknown",
            $"undecided,undecided: no certificate to not allowed,,,,Can all wheels be driven?; What is the suspension lift?,,,{Known}"
        ),
        (
            "J,Ann,xa-n,2026-11-20,MC,yes,3000 kg,3100 kg,40 mm",
            "blocked,\"NOT AS PLANNED, 1 blocker; no certificate\",suspension lift: 50 mm,10 mm,at least 100 kg over before anybody gets "
                + "in,,,\"Loads not judged against the front axle rating, the rear axle rating: not all of it is stated.\","
                + Known
        ),
        ("K,Ann,xa-n,2026-11-20,MC,yes,3000 kg,,0 mm", "nothing-to-judge,nothing to judge,,,,,,,"),
        ("L,Ann,xa-n,2026-11-20,MC,yes,3000 kg,,20 mm", $"{Free},30 mm,,,,,{Known}"),
        ("M,Ann,xa-n,2026-11-20,MC,yes,3000 kg,,'-40 mm", $"{Free},90 mm,,,,,{Known}"),
    ];

    private readonly string folder = InventedBookTests.Copy();

    public InventedFleetTests() =>
        File.WriteAllText(
            In("jurisdictions/xa-n/ride-height.yaml"),
            """
            jurisdiction: xa-n
            topic: ride-height
            rules:
              - rule: raise
                title: Raising
                from: 2015-01-01
                sources: [ { cite: act, clause: "3" } ]
                tiers:
                  - { pathway: no-certificate, when: { four-wheel-drive: yes }, within: { suspension-lift: 50 mm } }
                  - { pathway: certificate, provided: [lane-change-test], within: { suspension-lift: 75 mm } }
                beyond: prohibited
            """
        );

    public void Dispose() => Directory.Delete(folder, recursive: true);

    /// <summary>
    /// Twice over, so that each is also answered as one like it before; in lines that nothing odd is about, or all in quotes.
    /// </summary>
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task A_fleet_is_answered_row_by_row_and_told_at_the_end_by_verdict_place_and_reason(bool quoted)
    {
        string[] rows = [.. Rows.Concat(Rows).Select(each => each.Row), "N,Ann,xb,soon,MC,yes,,,40 mm", "O,Ann,xa-n,2026-11-20,MC,yes"];
        // What the answer defuses stands in the file as it is.
        var file = string.Concat(
            rows.Select(row => row.Replace("'", "", StringComparison.Ordinal)).Select(row => (quoted ? Quoted(row) : row) + "\n")
        );
        var answer = await Invocation.Fleet(In("fleet.csv"), $"{Header}\n{file}", "--book", folder, "--rejected", In("rejected.csv"));
        var told = string.Concat(Rows.Select(each => $"{each.Row},{each.Answer}\r\n"));
        answer.Out.ShouldBe($"{Header},{Answer}\r\n{told}{told}");
        const string place =
            "'xb' is not a jurisdiction of the book (did you mean 'xa'?); also in column 4 'soon' is not a day of the "
            + "calendar (write year-month-day, such as 2018-10-26, of the years 1900 to 2999)";
        const string shape = "the row has 6 cells, the header 9";
        answer.Error.ShouldBe(
            $"""
            passed through, no keys of a job: owner
            {In("fleet.csv")}:28:3: error unknown-jurisdiction: {place}
            {In("fleet.csv")}:29:7: error wrong-shape: {shape} (quote a cell that holds the separator)
            28 rows: 12 no-certificate, 4 certificate, 4 prohibited, 2 blocked, 2 nothing-to-judge, 2 undecided, 2 rejected
              xa-n blocked: 2
              xa-n certificate: 4
              xa-n no-certificate: 12
              xa-n nothing-to-judge: 2
              xa-n prohibited: 4
              xa-n undecided: 2
            most common reasons:
              4: xa-n/ride-height/raise
              2: Can all wheels be driven?
              2: What is the suspension lift?
              2: over-rating: GVM
            4 cells begin like a formula of a spreadsheet: each has an apostrophe before it in what was written
            This is not legal advice: the authority and the certifier decide. One row in full: --explain ROW

            """
        );
        answer.Code.ShouldBe(2);
        File.ReadAllText(In("rejected.csv"))
            .ShouldBe(
                $"row,line,column,header,reason,tip\r\n27,28,3,registered-in,\"{place}\",\r\n"
                    + $"28,29,7,vehicle.ratings.gvm,\"{shape}\",quote a cell that holds the separator\r\n"
            );
    }

    /// <summary>
    /// Between rows alike: a sign that a spreadsheet would run gets an apostrophe, and what acts in a log is shown by its code.
    /// </summary>
    [Fact]
    public async Task A_cell_that_nobody_asks_for_is_passed_through_so_that_it_does_nothing()
    {
        var large = new string('x', 3000);
        (string Typed, string Shown)[] owners =
        [
            ("Ann", "Ann"),
            ("Bo", "Bo"),
            ("a:b", "a:b"),
            ("a::b", @"a:\u{3A}b"),
            ("#[", "#["),
            ("##[x", @"#\u{23}[x"),
            ("Büro", "Büro"),
            ("\u202E", @"\u{202E}"),
            ("=1", "'=1"),
            ("+x", "'+x"),
            ("@x", "'@x"),
            ("-5", "-5"), // a number
            ("-x", "'-x"),
            ("1=", "1="),
            (large, large),
            ("", ""),
        ];
        const string vehicle = "xa-n,2026-11-20,MC,yes,3000 kg,";
        var rows = owners.Select(owner => $"A,Cy,{vehicle},40 mm\nA,{owner.Typed},{vehicle},30 mm\n");
        var nowhere = $"A,Ann,{large},2026-11-20,MC,yes,3000 kg,,40 mm\n";
        var answer = await Invocation.Fleet(In("fleet.csv"), $"{Header}\n{string.Concat(rows)}{nowhere}", "--book", folder);
        var told = owners.Select(owner =>
            $"A,Cy,{vehicle},40 mm,{Free},10 mm,,,,,{Known}\r\nA,{owner.Shown},{vehicle},30 mm,{Free},20 mm,,,,,{Known}\r\n"
        );
        answer.Out.ShouldBe($"{Header},{Answer}\r\n{string.Concat(told)}");
        answer.Error.ShouldContain("\n33 rows: 32 no-certificate, 1 rejected\n");
        answer.Error.ShouldContain("\n4 cells begin like a formula of a spreadsheet: ");
    }

    [Fact]
    public async Task Jobs_a_line_each_are_answered_with_the_answer_beside_each_as_a_row_is()
    {
        const string job =
            """{"job":"A","registered-in":"xa-n","vehicle":{"category":"MC","four-wheel-drive":"yes"},"""
            + """ "modification":{"suspension-lift":"40 mm"}}""";
        var answer = await Invocation.Fleet(In("fleet.txt"), $"{job}\n[1]\n{job} x\n{{\"on\"\n", "--book", folder, "--ndjson");
        answer.Out.ShouldBe(
            $"{{\"job\":{job},\"answer\":{{\"verdict\":\"no-certificate\",\"headline\":\"allowed without a certificate\","
                + "\"tightest-limit\":\"suspension lift: 50 mm\",\"margin\":\"10 mm\",\"blockers\":\"\",\"missing\":\"\",\"to-show\":\"\","
                + "\"beside-the-verdict\":\"\",\"weakest-evidence\":\"authority\\u0027s text (xa-n/ride-height/raise)\"}}\n"
        );
        answer
            .Error.Split('\n')[..4]
            .ShouldBe([
                $"{In("fleet.txt")}:2:1: error wrong-shape: a line is one job: keys with values (write {{\"registered-in\": ...}})",
                $"{In("fleet.txt")}:3:{job.Length + 2}: error not-json: the line is not JSON (a line is one job, whole)",
                $"{In("fleet.txt")}:4:6: error not-json: the line is not JSON (a line is one job, whole)",
                "4 rows: 1 no-certificate, 3 rejected",
            ]);
        answer.Code.ShouldBe(2);
    }

    [Fact]
    public async Task A_run_that_goes_on_where_none_has_died_begins_with_the_first_row()
    {
        var answer = await Invocation.Fleet(
            In("fleet.csv"),
            $"{Header}\n{Rows[2].Row}\n",
            "--book",
            folder,
            "--output",
            In("out.csv"),
            "--resume"
        );
        answer.Error.ShouldStartWith("no run that died has noted how far it came: from the first row\npassed through");
        answer.Code.ShouldBe(0);
        File.ReadAllText(In("out.csv")).ShouldBe($"{Header},{Answer}\r\n{Rows[2].Row},{Rows[2].Answer}\r\n");
        // What was noted by a run of another book, day or input is not gone on with.
        new FleetState("another", 1, 1, 0, new FleetCounts(0, 0, 0, [], [], []), null, []).Write(
            Authoring.Files.Destination.Of(In("out.csv"))
        );
        (
            await Invocation.Of(["fleet", In("fleet.csv"), "--book", folder, "--output", In("out.csv"), "--resume"])
        ).ShouldSatisfyAllConditions(
            refused => refused.Code.ShouldBe(2),
            refused =>
                refused.Error.ShouldStartWith($"{In("out.csv")}:1:1: error not-resumable: the run that died was of another book, day")
        );
    }

    /// <summary>By an earlier book that had 45 mm for 50: D changes its verdict, A only what is left, E nothing.</summary>
    [Fact]
    public async Task Against_an_earlier_book_each_row_has_the_verdict_before_and_what_changed_is_counted()
    {
        var earlier = Directory.CreateDirectory(In("earlier")).FullName;
        foreach (var part in (string[])["jurisdictions", "schema"])
            GitBook.CopyTo(In(part), Path.Combine(earlier, part));
        var law = Path.Combine(earlier, "jurisdictions", "xa-n", "ride-height.yaml");
        File.WriteAllText(law, File.ReadAllText(law).Replace("50 mm", "45 mm", StringComparison.Ordinal));
        var answer = await Invocation.Fleet(
            In("fleet.csv"),
            $"{Header}\n{Rows[0].Row}\n{Rows[3].Row}\n{Rows[4].Row}\n",
            "--book",
            folder,
            "--against",
            earlier
        );
        answer.Out.ShouldBe(
            $"{Header},{Answer},verdict-before\r\n"
                + $"{Rows[0].Row},{Rows[0].Answer},no-certificate\r\n{Rows[3].Row},{Rows[3].Answer},certificate\r\n"
                + $"{Rows[4].Row},{Rows[4].Answer},certificate\r\n"
        );
        answer
            .Error.Split('\n')[1..5]
            .ShouldBe([
                $"against {earlier}: another verdict on 1 rows",
                "  certificate -> no-certificate: 1, such as row 2 (xa-n)",
                "  still no-certificate, with another limit, margin, question or evidence: 1, such as row 1 (xa-n)",
                "3 rows: 2 no-certificate, 1 certificate, 0 rejected",
            ]);
        answer.Code.ShouldBe(0);
    }

    /// <summary>
    /// What is like a row before, but for a figure in the same cells of the rule and what nobody asks for, is not read as a job.
    /// </summary>
    [Fact]
    public void A_row_like_one_before_is_not_read_again_and_an_equal_one_has_its_very_answer()
    {
        var book = BookReading.Open(Authoring.Books.BookFolder.Load(folder));
        var columns = new FleetColumns("fleet.csv", Header.Split(','));
        var (like, read) = (new LikeRows(book, columns), 0);
        string Margin(string lift, string drive = "yes") =>
            like.Of(
                Row(drive, lift),
                row =>
                {
                    read++;
                    return JobReader.Read(columns.Job(row), book);
                }
            ).Own.Cells[3];

        (string Lift, string Margin, int Read)[] rows =
        [
            ("40 mm", "10 mm", 1), // nothing is known
            ("30 mm", "20 mm", 2), // what 30 mm is
            ("40 mm", "10 mm", 2),
            ("60 mm", "15 mm", 3), // in another cell
            ("30 mm", "20 mm", 3),
            ("60 mm", "15 mm", 3),
        ];
        foreach (var (lift, margin, times) in rows)
            (Margin(lift), read).ShouldBe((margin, times), lift);
        (Margin("30 mm", "no"), read).ShouldBe(("45 mm", 4)); // another vehicle
        (Margin("40 mm", "no"), read).ShouldBe(("35 mm", 4));

        var answers = new FleetAnswers(book, "fleet.csv", columns, new DateOnly(2026, 11, 20));
        answers.Of(Row("yes", "40 mm")).Answer.ShouldBeSameAs(answers.Of(Row("yes", "40 mm")).Answer);

        static FleetRow Row(string drive, string lift) => new(1, 2, ["A", "Ann", "xa-n", "2026-11-20", "MC", drive, "3000 kg", "", lift]);
    }

    /// <summary>
    /// A row without quotes that is like one before is written without becoming text: a block of them leaves nothing behind.
    /// </summary>
    [Theory]
    [InlineData("{0}.5 mm", 45)] // each with its own margin
    [InlineData("unknown", 1)] // all just the same
    public void A_block_of_rows_like_those_before_takes_no_memory_however_many_they_are(string lift, int lifts)
    {
        var book = BookReading.Open(Authoring.Books.BookFolder.Load(folder));
        var rows = string.Concat(
            Enumerable
                .Range(0, 2000)
                .Select(at =>
                    $"W-{at},Ann,xa-n,2026-11-20,MC,yes,3000 kg,,{string.Format(CultureInfo.InvariantCulture, lift, at % lifts)}\n"
                )
        );
        using var reader = new FleetReader("fleet.csv", new MemoryStream(Encoding.UTF8.GetBytes($"{Header}\n{rows}")), isJson: false);
        var answers = new FleetAnswers(book, "fleet.csv", reader.Columns, new DateOnly(2026, 11, 20));
        var plain = new PlainRows(reader, answers, new FleetWriter(reader.Columns, false));
        var block = reader.Blocks().ToArray().ShouldHaveSingleItem().ShouldBeOfType<PlainBlock>();
        using var first = new AnsweredBlock(2000);
        using var second = new AnsweredBlock(2000);
        plain.Answer(block, first);
        var before = GC.GetAllocatedBytesForCurrentThread();
        plain.Answer(block, second);
        (GC.GetAllocatedBytesForCurrentThread() - before).ShouldBeLessThan(2000);
        second.Written.ToArray().ShouldBe(first.Written.ToArray());
        (second.Counts.Values.Sum(), first.Counts.Values.Sum()).ShouldBe((2000, 2000));
    }

    private string In(string name) => Path.Combine(folder, name);

    private static string Quoted(string row) => string.Join(',', row.Contains('"') ? [row] : row.Split(',').Select(cell => $"\"{cell}\""));
}
