using System.Text.Json;
using RuleBook.Answers;
using RuleBook.Authoring.Inspecting;
using RuleBook.Cli.Fleets;
using RuleBook.Jobs.Reading;
using RuleBook.Telling;
using RuleBook.Text;
using RuleBook.Yaml;

namespace RuleBook.Cli.Tests;

/// <summary>A row of a fleet says what <c>assess</c> says of the job, whatever rows came before it.</summary>
public sealed class FleetRowTests : IDisposable
{
    private static readonly Lazy<Law.Book> Book = new(() => BookReading.Open(Authoring.Books.BookFolder.Load(Invocation.Root)));

    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory();

    public void Dispose() => folder.Delete(recursive: true);

    [Fact]
    public async Task Every_example_says_in_a_fleet_what_assess_says_of_it()
    {
        string[] files = [.. Directory.EnumerateFiles(Path.Combine(Invocation.Root, "examples"), "*.yaml").Order(StringComparer.Ordinal)];
        files.Length.ShouldBeGreaterThan(5);
        var answer = await Fleet(
            "all.ndjson",
            string.Join('\n', files.Select(file => JsonSerializer.Serialize(Plain(YamlText.ReadFile(file)))))
        );
        answer.Code.ShouldBe(0, answer.Error);
        var told = answer.Out.Split('\n', StringSplitOptions.RemoveEmptyEntries);
        told.Length.ShouldBe(files.Length);
        for (var at = 0; at < files.Length; at++)
        {
            var assessment = Assessor.Assess(Book.Value, JobReader.Read(YamlText.ReadFile(files[at]), Book.Value));
            using var row = JsonDocument.Parse(told[at]);
            row.RootElement.GetProperty("answer")
                .GetProperty("verdict")
                .GetString()
                .ShouldBe(Headlines.Word(assessment.Headline), files[at]);
        }
    }

    [Fact]
    public async Task Random_rows_say_what_assess_says_whether_or_not_an_equal_row_came_before()
    {
        var random = new Random(17);
        string[][] cells =
        [
            .. Enumerable
                .Range(0, 40)
                .Select(_ =>
                    new[]
                    {
                        Of("au-qld", "au-nsw", "au-vic", "au-wa", "us-ak"),
                        Of("2015-03-01", "2026-11-20"),
                        Of("MC", "NA", ""),
                        Of("yes", "no", "unknown", ""),
                        Of("45 mm", "50 mm", "50.1 mm", "75 mm", "151 mm", "unknown", ""),
                        Of("", "0 mm", "30 mm"),
                    }
                ),
        ];
        const string Header =
            "registered-in,on,vehicle.category,vehicle.stability-control,modification.suspension-lift,modification.body-lift\n";
        var told = (await Fleet("fleet.csv", Header + string.Join('\n', cells.Select(row => string.Join(',', row))))).Out.Split("\r\n")[
            1..
        ];
        var book = Book.Value;
        for (var at = 0; at < cells.Length; at++)
        {
            string[] paths = Header.Trim().Split(',');
            var job = new Mapping([], new Mark("row", 1, 1));
            for (var cell = 0; cell < paths.Length; cell++)
                if (cells[at][cell].Length > 0)
                    job = NodeEdit.Set(job, paths[cell], cells[at][cell]);
            var assessment = Assessor.Assess(book, JobReader.Read(job, book));
            var expected = string.Join(
                ',',
                cells[at].Append(Headlines.Word(assessment.Headline)).Append(Csv.Cell(ShortAnswer.Of(assessment)))
            );
            told[at].ShouldStartWith(expected);
        }

        string Of(params string[] from) => from[random.Next(from.Length)];
    }

    /// <summary>Rows in the same cells of the rules share an answer; what is left to a limit is each row's own.</summary>
    [Fact]
    public void Rows_that_differ_by_tenths_say_all_that_assess_says_though_few_of_them_are_assessed()
    {
        var (random, book) = (new Random(5), Book.Value);
        string[] paths =
        [
            "registered-in",
            "vehicle.category",
            "vehicle.four-wheel-drive",
            "vehicle.stability-control",
            "modification.suspension-lift",
            "modification.body-lift",
            "modification.track-increase",
            "modification.tyre-diameter-growth",
        ];
        var answers = new FleetAnswers(book, "fleet.csv", new FleetColumns("fleet.csv", paths), new DateOnly(2026, 11, 20));
        for (var at = 0; at < 300; at++)
        {
            string[] cells =
            [
                Of("au-qld", "au-nsw", "us-ga"),
                "MC",
                Of("yes", "no"),
                "yes",
                $"{Of("", "-")}{random.Next(0, 800) / 10m} mm",
                Of("", "0 mm", "unknown", $"{random.Next(0, 600) / 10m} mm", "1 in"),
                Of("", "", $"{random.Next(0, 500)}/7 mm", "20 mm"),
                Of("", "14 mm"),
            ];
            var row = new FleetRow(at, at + 1, cells);
            var (told, wrong) = answers.Of(row);
            try
            {
                var assessed = Answered.Of(Assessor.Assess(book, JobReader.Read(answers.Node(row), book)), book.Vocabulary);
                told.ShouldNotBeNull(string.Join(',', cells)).Line.ShouldBe(assessed.Line, string.Join(',', cells));
                told.Reasons.ShouldBe(assessed.Reasons);
            }
            catch (InputException refused)
            {
                var first = refused.Problems.First(problem => problem.Severity == Severity.Error);
                wrong.ShouldNotBeNull().Text.ShouldStartWith(first.Text);
                (wrong with { Text = first.Text }).ShouldBe(first);
            }
        }

        string Of(params string[] from) => from[random.Next(from.Length)];
    }

    /// <summary>Rows that differ in one figure, which lies in the same cells of the rules, and are told apart all the same.</summary>
    [Theory]
    [InlineData("au-qld", "measured.suspension-travel-lost", "20 %", "40 %")] // two thirds of the travel are to be kept
    [InlineData("au-qld", "measured.ground-clearance", "200 mm", "80 mm")] // at least 100 mm
    [InlineData("at", "modification.track-increase", "-20 mm", "-10 mm")] // nobody judges it; told with its figure
    public void A_figure_that_more_than_the_rules_read_is_each_rows_own(string place, string path, params string[] figures)
    {
        var book = Book.Value;
        string[] paths =
        [
            "registered-in",
            "vehicle.category",
            "vehicle.four-wheel-drive",
            "vehicle.stability-control",
            "modification.suspension-lift",
            path,
        ];
        var answers = new FleetAnswers(book, "fleet.csv", new FleetColumns("fleet.csv", paths), new DateOnly(2026, 11, 20));
        var told = new HashSet<string>();
        foreach (var (at, figure) in figures.Index())
        {
            var row = new FleetRow(at, at + 1, [place, "MC", "yes", "yes", "45 mm", figure]);
            var assessed = Answered.Of(Assessor.Assess(book, JobReader.Read(answers.Node(row), book)), book.Vocabulary);
            answers.Of(row).Answer.ShouldNotBeNull().Line.ShouldBe(assessed.Line);
            told.Add(assessed.Line);
        }

        told.Count.ShouldBe(figures.Length);
    }

    /// <summary>Rows are answered as bytes once one like them was: whatever is odd about a row, it is told as if it stood alone.</summary>
    [Fact]
    public async Task Rows_with_odd_cells_among_thousands_alike_say_what_each_says_alone()
    {
        var random = new Random(6);
        string[] paths =
        [
            "job",
            "owner",
            "registered-in",
            "vehicle.category",
            "vehicle.stability-control",
            "modification.suspension-lift",
            "modification.body-lift",
        ];
        string[][] rows =
        [
            .. Enumerable
                .Range(0, 600)
                .Select(at =>
                    new[]
                    {
                        $"W-{at}",
                        Of("Ann", "Bo", "a::b", "Büro", "=1+1", "x ##[y", "-5", ""),
                        Of("au-qld", "au-nsw"),
                        "MC",
                        Of("yes", "no"),
                        $"{Of("", "", "", "-", "+")}{random.Next(0, 900) / 10m}"
                            + $"{Of("", "", "0", "05")}{Of(" mm", " mm", "mm", "  mm", " in", "")}",
                        Of("", "0 mm", "30 mm", "30.0000 mm"),
                    }
                ),
        ];
        var fleet = await Fleet(
            "fleet.csv",
            $"{string.Join(',', paths)}\n{string.Concat(rows.Select(row => string.Join(',', row) + Of("\n", "\r\n")))}"
        );
        fleet.Error.ShouldContain("600 rows: ");
        var told = fleet.Out.Split("\r\n")[1..^1];
        var answers = new FleetAnswers(Book.Value, "fleet.csv", new FleetColumns("fleet.csv", paths), new DateOnly(2026, 11, 25));
        var writer = new FleetWriter(new FleetColumns("fleet.csv", paths), false);
        var alone = rows.Select((row, at) => new FleetRow(at + 1, at + 2, row))
            .Select(row => (Row: row, answers.Of(row).Answer))
            .Where(row => row.Answer is not null)
            .Select(row => writer.Row(row.Row, row.Answer!, null).Text.TrimEnd());
        told.ShouldBe(alone);

        string Of(params string[] from) => from[random.Next(from.Length)];
    }

    [Fact]
    public async Task One_row_in_full_is_what_assess_prints_in_full()
    {
        var row = await Fleet(
            "fleet.csv",
            "on,registered-in,modification.suspension-lift\n2026-11-20,au-nsw,10 mm\n2026-11-20,au-qld,45 mm\n",
            "--explain",
            "2"
        );
        var job = await Invocation.Assess("on: 2026-11-20\nregistered-in: au-qld\nmodification: { suspension-lift: 45 mm }\n", "--full");
        row.Out.ShouldBe(job.Out);
        row.Code.ShouldBe(job.Code);
    }

    private static object Plain(Node node) =>
        node switch
        {
            Mapping map => map.Entries.ToDictionary(each => each.Key.Text, each => Plain(each.Value)),
            Sequence list => list.Items.Select(Plain).ToArray(),
            _ => ((Scalar)node).Text,
        };

    private Task<Invocation> Fleet(string name, string text, params string[] options) =>
        Invocation.Fleet(Path.Combine(folder.FullName, name), text, options);
}
