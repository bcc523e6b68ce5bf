using System.Text;
using System.Text.Json;
using RuleBook.Cli.Fleets;
using RuleBook.Law;
using RuleBook.Law.Reading;
using RuleBook.Text;
using RuleBook.Yaml;

namespace RuleBook.Cli.Tests;

/// <summary>Rows of a fleet against what RFC 4180 makes of them and against jobs written by hand; vehicles are invented.</summary>
public sealed class FleetReadingTests
{
    /// <summary>
    /// What each row is, by hand: its line and its cells, or where it is wrong; a blank row is a number that nothing has.
    /// </summary>
    private static readonly (string File, string[] Rows)[] Files =
    [
        ("job,registered-in\nA,xa\nB,xb\n", ["1 2 A|xa", "2 3 B|xb"]),
        ("job,registered-in\r\nA,xa\r\n\r\nB,xb", ["1 2 A|xa", "3 4 B|xb"]),
        ("job,registered-in\n\"A, the first\",xa\n\"says \"\"B\"\"\",xb\n", ["1 2 A, the first|xa", "2 3 says \"B\"|xb"]),
        ("job,registered-in\n\"two\nlines\",xa\nB,xb\n", ["1 2 two\nlines|xa", "2 4 B|xb"]),
        ("\"job\",\"registered-in\"\nA,xa\n,\n , \nB,xb\n", ["1 2 A|xa", "4 5 B|xb"]),
        (
            "job,registered-in\nA\nA,xa,more\nA,xa\n",
            ["1 2 A (2: the row has 1 cells, the header 2)", "2 3 A|xa|more (3: the row has 3 cells, the header 2)", "3 4 A|xa"]
        ),
        ("job,registered-in\nA,\"xa\nB,xb\nC,xc\n", ["1 2  (2: a quote in the row is not closed)", "2 3 B|xb", "3 4 C|xc"]),
        ("job;registered-in\nA;xa,b\n", ["1 2 A|xa,b"]),
        ("job\tregistered-in\nA\txa\n", ["1 2 A|xa"]),
        ("sep=|\njob|registered-in\nA|xa\n", ["1 3 A|xa"]),
        ("registered-in\nxa\n\nxb\n", ["1 2 xa", "2 3 ", "3 4 xb"]),
    ];

    public static TheoryData<int> All => [.. Enumerable.Range(0, Files.Length)];

    [Theory]
    [MemberData(nameof(All))]
    public void A_row_is_its_cells_with_its_number_and_its_line_however_many_rows_are_passed_over(int at)
    {
        var (file, rows) = Files[at];
        Read(file, 0).ShouldBe(rows);
        for (var after = 1; after <= 6; after++)
            Read(file, after).ShouldBe(rows.Where(row => row[0] - '0' > after), $"{at}, after {after}");
    }

    [Fact]
    public void A_file_of_jobs_has_one_a_line_and_no_blank_ones()
    {
        using var stream = new MemoryStream("{\"a\":1}\n\n  \n{\"b\":2}"u8.ToArray());
        using var reader = new FleetReader("fleet.ndjson", stream, isJson: true);
        reader.Columns.ShouldBeNull();
        reader.Rows().Select(Told).ShouldBe(["1 1 {\"a\":1}", "2 4 {\"b\":2}"]);
    }

    /// <summary>Longer than any piece in which it is read, by a stream that gives a few bytes at a time or many.</summary>
    [Theory]
    [InlineData("utf-8", 70_001, false)]
    [InlineData("utf-8", 4_093, true)]
    [InlineData("utf-16", 70_001, false)]
    [InlineData("utf-16BE", 4_093, true)]
    public void A_long_file_is_read_row_by_row_as_it_is_written(string encoding, int atOnce, bool quoted)
    {
        string[] names = [.. Enumerable.Range(0, 9_000).Select(at => $"Wägen Nr. {at}{new string('x', at % 97)}")];
        var rows = names.Select(name => quoted && name.Length % 5 == 0 ? $"\"{name}\",xa" : $"{name},xa");
        var text = $"job,registered-in\r\n{string.Join("\r\n", rows)}";
        byte[] bytes = [.. Encoding.GetEncoding(encoding).GetPreamble(), .. Encoding.GetEncoding(encoding).GetBytes(text)];
        using var reader = new FleetReader("fleet.csv", new Slow(bytes, atOnce), isJson: false);
        var read = reader.Rows().ToArray();
        read.Select(row => row.Cells[0]).ShouldBe(names);
        read.Select(row => row.Line).ShouldBe(Enumerable.Range(2, names.Length));
        read.ShouldAllBe(row => row.Wrong == null && row.Cells.Length == 2);
    }

    /// <summary>The mark too comes in pieces; a letter beyond the basic plane is two units of UTF-16 and four bytes of UTF-8.</summary>
    [Theory]
    [InlineData("utf-8", true)]
    [InlineData("utf-8", false)]
    [InlineData("utf-16", true)]
    [InlineData("utf-16BE", true)]
    public void A_file_that_comes_byte_by_byte_is_read_as_it_is_written(string encoding, bool marked)
    {
        var by = Encoding.GetEncoding(encoding);
        byte[] bytes = [.. marked ? by.GetPreamble() : [], .. by.GetBytes("job,registered-in\nBüro \U0001F69A,xa\r\n\"B\",xb")];
        using var reader = new FleetReader("fleet.csv", new Slow(bytes, 1), isJson: false);
        reader.Columns!.Header.ShouldBe(["job", "registered-in"]);
        reader.Rows().Select(Told).ShouldBe(["1 2 Büro \U0001F69A|xa", "2 3 B|xb"]);
    }

    /// <summary>What is not a unit of UTF-16 is told as the replacement character of Unicode, and nothing else is lost.</summary>
    [Fact]
    public void Half_a_letter_of_UTF_16_costs_itself_alone()
    {
        byte[] bytes =
        [
            0xFF,
            0xFE,
            .. Encoding.Unicode.GetBytes("job,registered-in\nA"),
            0x3D,
            0xD8,
            .. Encoding.Unicode.GetBytes(",xa\nB,xb"),
            0x0A,
        ];
        using var reader = new FleetReader("fleet.csv", new MemoryStream(bytes), isJson: false);
        reader.Rows().Select(Told).ShouldBe(["1 2 A\uFFFD|xa", "2 3 B|xb\uFFFD"]);
    }

    [Theory]
    [InlineData("")]
    [InlineData("\"")] // among lines that are looked at one by one
    public void A_row_longer_than_a_megabyte_is_told_as_such_and_the_next_is_read(string quote)
    {
        var rows = $"{quote}A{quote},{new string('x', 1 << 20)}\nB,xb\n\n{new string('y', 5 << 20)}\nC,xc\n";
        using var reader = new FleetReader(
            "fleet.csv",
            new MemoryStream(Encoding.UTF8.GetBytes($"job,registered-in\n{rows}")),
            isJson: false
        );
        reader
            .Rows()
            .Select(Told)
            .ShouldBe([
                "1 2  (1: the row has more than 1048576 characters)",
                "2 3 B|xb",
                "4 5  (1: the row has more than 1048576 characters)",
                "5 6 C|xc",
            ]);
    }

    [Fact]
    public void A_job_longer_than_a_megabyte_is_told_as_such_and_the_next_is_read()
    {
        byte[] bytes = [.. new byte[(1 << 20) + 1], .. "\n{}\n{ "u8, 0xFF, (byte)'}'];
        using var reader = new FleetReader("fleet.ndjson", new MemoryStream(bytes), isJson: true);
        reader
            .Rows()
            .Select(row => $"{row.Number} {row.Wrong}")
            .ShouldBe([
                "1 fleet.ndjson:1:1: error not-json: the line has more than 1048576 characters (a line is one job)",
                "2 ",
                "3 fleet.ndjson:3:3: error not-utf-8: the line is not UTF-8 (save the file as UTF-8)",
            ]);
    }

    /// <summary>A quote that is closed a few lines on is one cell; one that is closed half a file on has lost its end.</summary>
    [Fact]
    public void A_cell_may_go_over_a_hundred_lines_and_not_over_two_hundred()
    {
        string[] lines = [.. Enumerable.Range(1, 200).Select(at => $"{at},xa")];
        Read($"job,registered-in\n\"{string.Join('\n', lines[..100].Select(line => line[..^3]))}\",xa\nB,xb\n", 0).Length.ShouldBe(2);
        var open = Read($"job,registered-in\n\"A\n{string.Join('\n', lines)}\n\",xa\n", 0);
        (open.Length, open[0], open[1]).ShouldBe((202, "1 2  (1: a quote in the row is not closed)", "2 3 1|xa"));
    }

    [Fact]
    public void A_row_that_is_no_text_says_from_which_cell_on()
    {
        byte[] bytes = [.. "job,registered-in\nA,x"u8, 0xFF, .. "\nB,xb\n"u8];
        using var reader = new FleetReader("fleet.csv", new MemoryStream(bytes), isJson: false);
        reader.Rows().Select(Told).ShouldBe(["1 2  (2: the row is not UTF-8)", "2 3 B|xb"]);
        Should
            .Throw<InputException>(() => new FleetReader("fleet.csv", new MemoryStream([]), isJson: false))
            .Message.ShouldContain("no header");
        Should
            .Throw<InputException>(() => new FleetReader("fleet.csv", new MemoryStream([(byte)'a', 0xFF, (byte)'\n']), isJson: false))
            .Problems.ShouldHaveSingleItem()
            .ToString()
            .ShouldStartWith("fleet.csv:1:2: error not-utf-8");
    }

    [Fact]
    public void A_row_is_the_job_that_somebody_would_have_written()
    {
        var columns = new FleetColumns(
            "fleet.csv",
            [" job ", "registered-in", "owner", "vehicle.category", "vehicle.ratings.gvm", "vehicle.tyres", "vehicle.ratings.gcm", "on"]
        );
        columns.PassedThrough.ShouldBe(["owner"]);
        columns.Asked.ShouldBe([1, 3, 4, 5, 6, 7]);
        var row = new FleetRow(1, 2, ["W-1", " xa ", "Ann", "MC", "3500 kg", "265/65R17; 265/70R17 ;", "", "  "]);
        Plain(columns.Job(row))
            .ShouldBe(
                Plain(
                    YamlText.Read(
                        """
                        job: W-1
                        registered-in: xa
                        vehicle:
                          category: MC
                          ratings: { gvm: 3500 kg }
                          tyres: [ 265/65R17, 265/70R17 ]
                        """,
                        "by hand"
                    )
                )
            );
        columns.Combination(row).ShouldBe(columns.Combination(row with { Cells = ["other", .. row.Cells[1..2], "Bo", .. row.Cells[3..]] }));
        columns.Combination(row).ShouldNotBe(columns.Combination(row with { Cells = [.. row.Cells[..^1], "2026-11-20"] }));
    }

    [Theory]
    [InlineData("registered-in,registered-in", "2: error duplicate-key: the column 'registered-in' stands twice (keep one of the two)")]
    [InlineData(
        "registered-in,verdict",
        "2: error duplicate-key: the column 'verdict' is one that the answer has (rename it or take it out)"
    )]
    [InlineData(
        "registered-in,verdict-before",
        "2: error duplicate-key: the column 'verdict-before' is one that the answer has (rename it or take it out)"
    )]
    [InlineData("job,on", "1: error missing-key: no column is headed 'registered-in' ('fleet --template' writes a header)")]
    [InlineData(
        "job,registeredin",
        "1: error missing-key: no column is headed 'registered-in' (did you mean 'registeredin'? 'fleet --template' writes a header)"
    )]
    public void A_header_that_cannot_be_is_told_with_its_column(string header, string told)
    {
        var refused = Should.Throw<InputException>(() => new FleetColumns("fleet.csv", header.Split(','))).Problems.ShouldHaveSingleItem();
        $"{refused}".ShouldBe($"fleet.csv:1:{told}");
    }

    [Theory]
    [InlineData("\u0001q3", "3: a quote in the row is not closed (close it; a quote inside of a quoted cell is written twice)")]
    [InlineData("\u0001l1", "1: the row has more than 1048576 characters (look for a line end that is missing)")]
    [InlineData("\u0001u2", "2: the row is not UTF-8 (save the file as UTF-8)")]
    [InlineData("\u0001qx", null)] // a cell that somebody wrote so
    [InlineData("\u0001x1", null)]
    [InlineData("q1", null)]
    [InlineData("", null)]
    public void A_line_that_could_not_be_a_row_says_why_and_what_to_do(string cell, string? told) =>
        (ClosedQuotes.WhatIsWrong(cell) is var (text, tip, column) ? $"{column}: {text} ({tip})" : null).ShouldBe(told);

    [Theory]
    [InlineData("", "1:1: error empty-file: the file has no header ('fleet --template' writes one)")]
    [InlineData("sep=;\n", "1:1: error empty-file: the file has no header ('fleet --template' writes one)")]
    [InlineData("sep=;\njob;on\n", "2:1: error missing-key: no column is headed 'registered-in' ('fleet --template' writes a header)")]
    [InlineData("sep=é\njobéon\n", "1:5: error not-csv: 'é' cannot part the cells (part them by a comma, a semicolon, a bar or a tab)")]
    [InlineData("SEP=#\njob#on\n", "1:5: error not-csv: '#' cannot part the cells (part them by a comma, a semicolon, a bar or a tab)")]
    [InlineData("\"job\n\",registered-in,on,on\n", "1:4: error duplicate-key: the column 'on' stands twice (keep one of the two)")]
    public void A_file_without_a_header_that_does_is_refused_at_its_place(string file, string told) =>
        Should.Throw<InputException>(() => Read(file, 0)).Problems.ShouldHaveSingleItem().ToString().ShouldBe($"fleet.csv:{told}");

    /// <summary>In thousandths, from the decimals as written: what is not written so is left to the reader of jobs.</summary>
    [Theory]
    [InlineData("45.3 mm", 45_300L)]
    [InlineData("45.3mm", 45_300L)]
    [InlineData("045.300 mm", 45_300L)]
    [InlineData("0 mm", 0L)]
    [InlineData("0.001 mm", 1L)]
    [InlineData("100 mm", 100_000L)]
    [InlineData("45.3001 mm", null)]
    [InlineData("45. mm", null)]
    [InlineData(".5 mm", null)]
    [InlineData("-5 mm", null)]
    [InlineData("+5 mm", null)]
    [InlineData("45  mm", null)]
    [InlineData("45 mm ", null)]
    [InlineData("45", null)]
    [InlineData("45 in", null)]
    [InlineData("45,3 mm", null)]
    [InlineData("", null)]
    [InlineData("mm", null)]
    [InlineData("99999999999999999999 mm", null)]
    public void An_amount_is_read_to_the_thousandth_or_not_at_all(string cell, long? thousandths) =>
        Column("0 mm", "200 mm").Read(Encoding.UTF8.GetBytes(cell)).ShouldBe(thousandths);

    [Fact]
    public void An_amount_beyond_those_that_were_read_so_far_is_left_to_the_reader_of_jobs()
    {
        var column = Column("20 mm", "50 mm");
        foreach (var read in (string[])["20 mm", "35 mm", "50 mm"])
            column.Read(Encoding.UTF8.GetBytes(read)).ShouldNotBeNull(read);
        foreach (var beyond in (string[])["19.999 mm", "50.001 mm"])
            column.Read(Encoding.UTF8.GetBytes(beyond)).ShouldBeNull(beyond);
        Column().Read("20 mm"u8).ShouldBeNull();
        // No suspension raises a vehicle by a metre: such a figure is told, and nothing is learnt from it.
        Column("20 mm", "1000 mm").Read("35 mm"u8).ShouldBeNull();
    }

    private static PlainColumn Column(params string[] read)
    {
        var column = new PlainColumn(Words.Value.Measures["suspension-lift"]);
        foreach (var cell in read)
            column.Extend(Encoding.UTF8.GetBytes(cell));
        return column;
    }

    private static readonly Lazy<Vocabulary> Words = new(() =>
        VocabularyReader
            .Read(
                [
                    .. Directory
                        .EnumerateFiles(Path.Combine(Invocation.Root, "schema", "vocabulary"), "*.yaml")
                        .Select(file => new BookFile($"schema/vocabulary/{Path.GetFileName(file)}", YamlText.ReadFile(file))),
                ],
                []
            )
            .Vocabulary
    );

    private static string[] Read(string file, long after)
    {
        using var reader = new FleetReader("fleet.csv", new MemoryStream(Encoding.UTF8.GetBytes(file)), isJson: false, after);
        return [.. reader.Rows().Select(Told)];
    }

    private static string Told(FleetRow row) =>
        row.Wrong is { } wrong && row.Cells is [['\u0001', ..], ..] ? $"{row.Number} {row.Line}  ({wrong.Mark.Column}: {wrong.Text})"
        : row.Wrong is { } ragged ? $"{row.Number} {row.Line} {string.Join('|', row.Cells)} ({ragged.Mark.Column}: {ragged.Text})"
        : $"{row.Number} {row.Line} {string.Join('|', row.Cells)}";

    private static string Plain(Node node) =>
        node switch
        {
            Mapping map => $"{{{string.Join(',', Entries(map))}}}",
            Sequence list => $"[{string.Join(',', list.Items.Select(Plain))}]",
            _ => JsonSerializer.Serialize(((Scalar)node).Text),
        };

    private static IEnumerable<string> Entries(Mapping map) =>
        map.Entries.OrderBy(each => each.Key.Text, StringComparer.Ordinal).Select(each => $"{each.Key.Text}:{Plain(each.Value)}");

    private sealed class Slow(byte[] bytes, int atOnce) : MemoryStream(bytes)
    {
        public override int Read(byte[] buffer, int offset, int count) => base.Read(buffer, offset, Math.Min(count, atOnce));

        public override int Read(Span<byte> buffer) => base.Read(buffer[..Math.Min(buffer.Length, atOnce)]);
    }
}
