namespace RuleBook.Cli.Tests.Commands;

/// <summary>
/// What a command cannot carry out is one line: the argument by its name, what is wrong, what would be right; the exit code is 2, nothing
/// is printed and no file is written. On the invented book; a job of it lies beside as <c>job.yaml</c>.
/// </summary>
public sealed class RefusalTests(RefusalTests.Desk desk) : IClassFixture<RefusalTests.Desk>
{
    private const string Empty =
        "error empty-path: the path that is given is empty (name a file or folder; a variable of a script may be unset)";
    private const string NoPlace = "error unknown-jurisdiction: 'xb' is not a jurisdiction of the book (did you mean 'xa'?)";
    private const string NoTopic = "error unknown-topic: 'ride-hight' is not a topic (did you mean 'ride-height'?)";
    private const string NoDay =
        "error not-a-date: 'soon' is not a day of the calendar (write year-month-day, such as 2018-10-26, of the years 1900 to 2999)";

    [Theory]
    [InlineData("JOB", "assess", "")]
    [InlineData("JOB", "across", " ")]
    [InlineData("JOB", "margin", "")]
    [InlineData("JOB", "remedy", "")]
    [InlineData("JOB", "assess", "jo\0b.yaml")]
    [InlineData("--output", "assess", "job.yaml", "--output", "")]
    [InlineData("--output", "limits", "xa", "--output", " ")]
    [InlineData("--output", "job", "--template", "wagon", "--output", "")]
    [InlineData("--output", "fleet", "fleet.csv", "--output", "")]
    [InlineData("FILE", "fleet", "")]
    [InlineData("--rejected", "fleet", "fleet.csv", "--rejected", "")]
    [InlineData("--against", "fleet", "fleet.csv", "--against", "")]
    [InlineData("DIR", "cases", "")]
    [InlineData("DIR", "inspect", "")]
    [InlineData("--jobs", "changes", "book", "--jobs", "")]
    [InlineData("OUT", "site", "")]
    [InlineData("--check-page", "site", "out", "--check-page", "")]
    [InlineData("FILE", "pack", "")]
    [InlineData("OUT", "export", "")]
    [InlineData("--since", "edition", "2026.11.1", "--since", "")]
    [InlineData("RECORD", "replay", "")]
    [InlineData("DIR", "recheck", "")]
    [InlineData("--letters", "recheck", "kept", "--letters", "")]
    public async Task An_empty_path_is_told_by_the_name_of_its_argument(string name, params string[] args) =>
        await Refused($"{name}:1:1: {Empty}", args);

    [Theory]
    [InlineData("assess")]
    [InlineData("limits")]
    [InlineData("editions")]
    [InlineData("fleet")]
    [InlineData("site")]
    [InlineData("pack")]
    [InlineData("inspect")]
    public async Task An_empty_name_of_the_book_is_never_the_book_that_happens_to_be_here(string command)
    {
        string[] args = command is "editions" or "inspect" ? [command] : [command, command == "limits" ? "xa" : "job.yaml"];
        var answer = await Invocation.Of([.. args.Select(desk.In), "--book", ""]);
        (answer.Code, answer.Out, answer.Error).ShouldBe((2, "", $"--book:1:1: {Empty}\n"));
    }

    [Theory]
    [InlineData("--in", NoPlace, "assess", "job.yaml", "--in", "xb")]
    [InlineData("--in", NoPlace, "margin", "job.yaml", "--in", "xb")]
    [InlineData("ID", NoPlace, "limits", "xb")]
    [InlineData("ID", NoPlace, "limits", "xb", "--coverage")]
    [InlineData("ID", NoPlace, "gaps", "xb")]
    [InlineData("--topic", NoTopic, "limits", "xa", "--topic", "ride-hight")]
    [InlineData("TOPIC", NoTopic, "timeline", "ride-hight")]
    [InlineData("--in", "error not-a-word: 'xb' is not in the book (did you mean 'xa'?)", "cases", "--walk", "--in", "xb")]
    [InlineData(
        "--topic",
        "error not-a-word: 'ride-hight' is not in the book (did you mean 'ride-height'?)",
        "cases",
        "--walk",
        "--topic",
        "ride-hight"
    )]
    [InlineData("--on", NoDay, "assess", "job.yaml", "--on", "soon")]
    [InlineData("--on", NoDay, "limits", "xa", "--on", "soon")]
    [InlineData("--on", NoDay, "timeline", "ride-height", "--on", "soon")]
    [InlineData("--on", NoDay, "gaps", "--on", "soon")]
    [InlineData("--on", NoDay, "inspect", "--on", "soon")]
    [InlineData("--on", NoDay, "export", "out", "--on", "soon")]
    [InlineData("--on", NoDay, "site", "out", "--on", "soon")]
    public async Task A_word_that_the_book_has_not_got_and_a_day_that_is_none_are_told_with_the_nearest(
        string name,
        string told,
        params string[] args
    ) => await Refused($"{name}:1:1: {told}", args);

    [Theory]
    [InlineData("ID:1:1: error missing-key: no jurisdiction is named (name one, such as au-qld, or ask for --coverage)", "limits")]
    [InlineData(
        "--write:1:1: error one-content: only the coverage of all jurisdictions is written into the README (say 'limits "
            + "--coverage --write')",
        "limits",
        "xa",
        "--coverage",
        "--write"
    )]
    [InlineData(
        "--write:1:1: error one-content: only the coverage of all jurisdictions is written into the README (say 'limits "
            + "--coverage --write')",
        "limits",
        "--write"
    )]
    [InlineData(
        "--format:1:1: error one-content: the coverage is told as text (ask for the limits of a jurisdiction, or leave --format out)",
        "limits",
        "--coverage",
        "--format",
        "json"
    )]
    [InlineData("--template:1:1: error one-content: a job begins from a template or by questions (give --template wagon, or --ask)", "job")]
    [InlineData(
        "--template:1:1: error one-content: a job begins from a template or by questions (give --template wagon, or --ask)",
        "job",
        "--ask",
        "--template",
        "ute"
    )]
    [InlineData(
        "--set:1:1: error wrong-shape: '=no' is not PATH=VALUE (write --set vehicle.stability-control=no)",
        "assess",
        "job.yaml",
        "--set",
        "=no"
    )]
    [InlineData(
        "FILE:1:1: error no-file: no file is named (name a CSV or NDJSON file; 'fleet --template' writes one to start from)",
        "fleet"
    )]
    [InlineData(
        "--resume:1:1: error not-resumable: only a run from a file to a file can be gone on with (name both, as the run that died did)",
        "fleet",
        "fleet.csv",
        "--resume"
    )]
    [InlineData(
        "--resume:1:1: error not-resumable: only a run from a file to a file can be gone on with (name both, as the run that died did)",
        "fleet",
        "-",
        "--resume",
        "--output",
        "out"
    )]
    [InlineData(
        "--explain:1:1: error no-row: @fleet.csv has no row 3 (rows count from 1; the header is none)",
        "fleet",
        "fleet.csv",
        "--explain",
        "3"
    )]
    [InlineData(
        "--require:1:1: error not-a-share: '101%' is not a share (write a whole per cent, such as 100%)",
        "cases",
        "none",
        "--pin",
        "--require",
        "101%"
    )]
    [InlineData(
        "--require:1:1: error not-a-share: 'all' is not a share (write a whole per cent, such as 100%)",
        "cases",
        "none",
        "--pin",
        "--require",
        "all"
    )]
    [InlineData(
        "@gone:1:1: error not-a-folder: there is no such folder (name the folder with the records)",
        "recheck",
        "gone",
        "--letters",
        "out"
    )]
    [InlineData(
        "--format:1:1: error one-at-a-time: several jobs are told as text, a line each (give one job)",
        "assess",
        "job.yaml",
        "job.yaml",
        "--full"
    )]
    [InlineData(
        "--format:1:1: error one-at-a-time: several jobs are told as text, a line each (give one job)",
        "assess",
        "none",
        "--format",
        "html"
    )]
    [InlineData("JOB:1:1: error no-file: the folder holds no job (name one with files that end in .yaml, .yml or .json)", "assess", "none")]
    [InlineData(
        "--output:1:1: error same-file: '@fleet.csv' is what the same run reads or writes (name another file)",
        "fleet",
        "fleet.csv",
        "--output",
        "fleet.csv"
    )]
    [InlineData(
        "--rejected:1:1: error same-file: '@fleet.csv' is what the same run reads or writes (name another file)",
        "fleet",
        "fleet.csv",
        "--rejected",
        "fleet.csv"
    )]
    [InlineData(
        "--rejected:1:1: error same-file: '@out' is what the same run reads or writes (name another file)",
        "fleet",
        "fleet.csv",
        "--output",
        "out",
        "--rejected",
        "out"
    )]
    [InlineData(
        "@4wd.csv:1:2: error unknown-key: 'vehicle.Four Wheel Drive' is not a key of a job (if it is meant, "
            + "head it 'vehicle.four-wheel-drive', "
            + "with units in the cells; a column of your own needs another name)",
        "fleet",
        "4wd.csv"
    )]
    [InlineData(
        "@list.yaml:1:1: error wrong-shape: a job is keys with values (start with 'registered-in:' and 'vehicle:')",
        "assess",
        "list.yaml"
    )]
    [InlineData(
        "@job.yaml:1:1: error not-writable: the file is there already (name another; what you have typed is not replaced)",
        "job",
        "--template",
        "wagon",
        "--output",
        "job.yaml"
    )]
    public async Task What_cannot_be_asked_so_is_told_with_what_can(string told, params string[] args) =>
        await Refused(told.Replace("@", desk.Folder, StringComparison.Ordinal), args);

    [Theory]
    [InlineData("Option '--name' is required", "new jurisdiction", "new", "jurisdiction", "xc", "--ask", "A")]
    [InlineData("Option '--ask' is required", "new jurisdiction", "new", "jurisdiction", "xc", "--name", "N")]
    [InlineData("Option '--title' is required", "new rule", "new", "rule", "xa/towing/pull", "--source", "code")]
    [InlineData("Option '--source' is required", "new rule", "new", "rule", "xa/towing/pull", "--title", "Pulling")]
    [InlineData("--pin and --walk are two runs: leave one out", "cases", "cases", "--pin", "--walk")]
    [InlineData("--require goes with --pin", "cases", "cases", "--require", "100%")]
    [InlineData("--in and --topic go with --pin or --walk", "cases", "cases", "--in", "xa")]
    [InlineData("--in and --topic go with --pin or --walk", "cases", "cases", "--topic", "towing")]
    [InlineData("--walk reads no cases and writes text", "cases", "cases", "--walk", "--format", "json")]
    [InlineData("--walk reads no cases and writes text", "cases", "cases", "none", "--walk")]
    [InlineData("--pin writes text or json", "cases", "cases", "--pin", "--format", "junit")]
    public async Task Options_that_lack_or_do_not_go_together_are_told_under_the_line_that_was_typed(
        string told,
        string command,
        params string[] args
    )
    {
        string[] typed = [.. args.Select(desk.In), "--book", desk.In("book")];
        var answer = await Invocation.Of(typed);
        (answer.Code, answer.Out).ShouldBe((2, ""));
        answer.Error.ShouldBe($"rulebook {string.Join(' ', typed)}\nerror: {told} ('rulebook {command} --help' tells what there is)\n");
    }

    /// <summary>A word that names a file or folder of the desk stands for it.</summary>
    private async Task Refused(string told, string[] args)
    {
        var before = desk.Files();
        var answer = await Invocation.Of([.. args.Select(desk.In), "--book", desk.In("book")]);
        (answer.Code, answer.Out, answer.Error).ShouldBe((2, "", told + "\n"));
        desk.Files().ShouldBe(before);
    }

    /// <summary>A folder with the invented book and what somebody may have beside it.</summary>
    public sealed class Desk : IDisposable
    {
        private static readonly string[] Names = ["4wd.csv", "book", "fleet.csv", "gone", "job.yaml", "kept", "list.yaml", "none", "out"];

        public string Folder { get; } = Directory.CreateTempSubdirectory("rulebook-desk-").FullName + Path.DirectorySeparatorChar;

        public Desk()
        {
            Directory.Move(InventedBookTests.Copy(), In("book"));
            foreach (var name in (string[])["none", "kept"])
                Directory.CreateDirectory(In(name));
            File.WriteAllText(In("job.yaml"), "{ registered-in: xa-n, on: 2026-11-20, vehicle: { category: MC } }\n");
            File.WriteAllText(In("list.yaml"), "[job]\n");
            File.WriteAllText(In("4wd.csv"), "registered-in,vehicle.Four Wheel Drive\nxa,yes\n");
            File.WriteAllText(In("fleet.csv"), "registered-in\nxa-n\nxa\n");
        }

        public void Dispose() => Directory.Delete(Folder, recursive: true);

        public string In(string word) => Names.Contains(word) ? Folder + word : word;

        public string[] Files() =>
            [.. Directory.EnumerateFileSystemEntries(Folder, "*", SearchOption.AllDirectories).Order(StringComparer.Ordinal)];
    }
}
