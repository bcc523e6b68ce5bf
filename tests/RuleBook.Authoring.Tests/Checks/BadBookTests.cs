using System.Globalization;
using System.Text;
using RuleBook.Authoring.Inspecting;
using RuleBook.Authoring.Tests.Inspecting;
using RuleBook.Text;

namespace RuleBook.Authoring.Tests.Checks;

/// <summary>
/// Every code fires on a book that has the fault, where the fault is, and nothing else does (places set by hand: derived).
/// </summary>
public sealed class BadBookTests
{
    private static readonly DateOnly Today = new(2026, 11, 25);

    public static TheoryData<string> Codes => [.. BadBook.Codes];

    [Theory]
    [MemberData(nameof(Codes))]
    public void A_fault_is_reported_at_its_place_and_nothing_else_is(string code)
    {
        using var book = BadBook.Open(code);

        var problems = Inspection.Run(book.Folder, Today).Problems;
        var found = problems.Select(problem =>
            $"{(problem.Mark.File == book.Folder ? "." : problem.Mark.File)}:{problem.Mark.Line}:{problem.Mark.Column} {problem.Code}"
        );

        found.ShouldBe(book.Expected);
        problems.ShouldAllBe(problem => problem.Text.Length > 0 && CheckList.All.Any(info => info.Code == problem.Code));
        book.Expected.ShouldContain(line => line.EndsWith(" " + code, StringComparison.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Codes))]
    public void A_book_with_an_error_is_never_used_and_is_refused_with_what_an_inspection_prints(string code)
    {
        using var book = BadBook.Open(code);
        Problem[] errors =
        [
            .. Inspection.Run(book.Folder, DateOnly.MaxValue).Problems.Where(problem => problem.Severity == Severity.Error),
        ];
        if (errors.Length == 0)
            BookReading.Open(book.Folder).ShouldNotBeNull();
        else
            Should.Throw<InputException>(() => BookReading.Open(book.Folder)).Problems.ShouldBe(errors);
    }

    [Fact]
    public void A_document_that_has_no_clauses_is_cited_without_one()
    {
        using var book = BadBook.Open("no-clause");
        var path = Path.Combine(book.Folder, "jurisdictions/xa-n/sources.yaml");
        File.WriteAllText(
            path,
            File.ReadAllText(path).Replace("read-as: primary", "read-as: primary\n    clauses: none", StringComparison.Ordinal)
        );
        Inspection.Run(book.Folder, Today).Problems.ShouldBeEmpty();
    }

    /// <summary>The version is from 2011-01-01, and work done that day is the first that it judges.</summary>
    [Theory]
    [InlineData("to: 2010-12-31", "is never met")]
    [InlineData("before: 2011-01-01", "is never met")]
    [InlineData("to: 2011-01-01", "is met on that day alone")]
    [InlineData("before: 2011-01-02", null)]
    [InlineData("to: 2011-01-02", null)]
    public void Alterations_of_the_first_day_of_a_version_and_before_are_no_grace(string bound, string? told)
    {
        using var book = BadBook.Open("altered-too-early");
        var path = Path.Combine(book.Folder, "jurisdictions/xa/ride-height.yaml");
        File.WriteAllText(path, File.ReadAllText(path).Replace("before: 2011-01-01", bound, StringComparison.Ordinal));

        var texts = Inspection
            .Run(book.Folder, Today)
            .Problems.Where(problem => problem.Code == "altered-too-early")
            .Select(each => each.Text);
        if (told is null)
            texts.ShouldBeEmpty();
        else
            texts.ShouldHaveSingleItem().ShouldEndWith(told);
    }

    /// <summary>
    /// A grace that ends is told by nobody where the day that decides is not said, and kept by who adopts it as of a day.
    /// </summary>
    [Theory]
    [InlineData(
        "grace-end-untold",
        "xa",
        "    versions:\n      - from: 2011",
        "    decided-by: inspection\n    versions:\n      - from: 2011",
        0
    )]
    [InlineData("grace-end-untold", "xa", "change: [ { tier: earlier, drop: yes } ]", "warning-only: yes", 0)]
    [InlineData("grace-end-untold", "xa", "before: 2011-01-01", "from: 2011-01-01", 0)]
    [InlineData("grace-end-untold", "xa-n", "as-of: 2011-06-30", "as-of: amended", 2)]
    [InlineData("grace-kept", "xa-n", "as-of: 2011-06-30", "as-of: 2012-07-01", 0)]
    [InlineData("grace-kept", "xa-n", "        except:", "        except:\n          - { tier: earlier, drop: yes }", 0)]
    [InlineData("grace-kept", "xa", "change: [ { tier: earlier, drop: yes } ]", "warning-only: yes", 0)]
    public void A_grace_is_warned_of_where_its_end_is_lost_and_nowhere_else(string code, string place, string from, string to, int told)
    {
        using var book = BadBook.Open(code);
        var path = Path.Combine(book.Folder, $"jurisdictions/{place}/ride-height.yaml");
        var text = File.ReadAllText(path);
        text.ShouldContain(from);
        File.WriteAllText(path, text.Replace(from, to, StringComparison.Ordinal));

        Inspection.Run(book.Folder, Today).Problems.Count(problem => problem.Code == code).ShouldBe(told);
    }

    /// <summary>
    /// 75 mm of the adopted rule reach to 80 with its tolerance of 5 mm; an adoption that measures otherwise has its own or none.
    /// </summary>
    [Theory]
    [InlineData(5, null, 75, 0)]
    [InlineData(5, null, 76, 1)]
    [InlineData(5, 0, 80, 0)]
    [InlineData(5, 0, 81, 1)]
    [InlineData(0, 5, 70, 0)]
    [InlineData(0, 5, 71, 1)]
    [InlineData(5, 5, 75, 0)]
    [InlineData(5, 5, 76, 1)]
    public void An_exception_loosens_where_its_figure_reaches_beyond_that_of_the_adopted_rule(int theirs, int? own, int figure, int told)
    {
        using var book = BadBook.Open("sound");
        Edit("xa", "mass-state: unladen", Tolerance(theirs));
        Edit("xa-n", "suspension-lift: 65 mm", $"suspension-lift: {figure} mm");
        if (own is { } tolerance)
            Edit("xa-n", "        adopts:", $"        measured: {{ {Tolerance(tolerance)}, total: [suspension-lift] }}\n        adopts:");

        Inspection.Run(book.Folder, Today).Problems.Select(problem => problem.Code).ShouldBe(Enumerable.Repeat("exception-loosens", told));

        void Edit(string place, string from, string to)
        {
            var path = Path.Combine(book.Folder, $"jurisdictions/{place}/ride-height.yaml");
            var text = File.ReadAllText(path);
            text.ShouldContain(from);
            File.WriteAllText(path, text.Replace(from, to, StringComparison.Ordinal));
        }

        static string Tolerance(int mm) =>
            mm == 0 ? "mass-state: unladen" : $"mass-state: unladen, tolerance: {{ suspension-lift: {mm} mm }}";
    }

    [Theory]
    [InlineData("", "the version says neither since when it is in force nor that it is only announced")]
    [InlineData("from: 2011, announced: 2027, ", "from and announced cannot both be given")]
    [InlineData("from: 2011, announced: 2027, proposed: yes, ", "from and announced and proposed cannot both be given")]
    [InlineData("from: 2011, proposed: no, ", null)]
    [InlineData("from: unknown, ", "the start is unknown, and nothing says by when it is seen in force")]
    [InlineData("from: unknown, in-force-by: 2012, ", null)]
    [InlineData("from: 2011, in-force-by: 2012, ", "in-force-by is for an unknown start only")]
    [InlineData("announced: 2027, in-force-by: 2012, ", "what is only announced or proposed is not in force by any day")]
    [InlineData("proposed: yes, until: 2028, ", "what is only announced or proposed does not end")]
    [InlineData("announced: 2027, until: 2028, ", "what is only announced or proposed does not end")]
    public void The_start_of_a_version_is_given_in_one_way(string start, string? told)
    {
        using var book = BadBook.Open("sound");
        var path = Path.Combine(book.Folder, "jurisdictions/xa/ride-height.yaml");
        File.WriteAllText(
            path,
            File.ReadAllText(path)
                .Replace(
                    "\njurisdiction: xa\n",
                    $"\n  - {{ rule: lower, title: Lowering, versions: [ {{ {start}sources: [ {{ cite: code, clause: \"1\" }} "
                        + "], not-regulated: No. } ] }\njurisdiction: xa\n",
                    StringComparison.Ordinal
                )
        );
        Inspection
            .Run(book.Folder, Today)
            .Problems.Where(problem => problem.Code == "wrong-start")
            .Select(problem => problem.Text)
            .ShouldBe(told is null ? [] : [told]);
    }

    /// <summary>
    /// A rule for vehicles up to 10,000 lb (4535.9 kg): who is over it is named, or is told; so of 4000 kg the one of 4001 kg.
    /// </summary>
    [Theory]
    [InlineData("10000 lb", "vehicles over 4.5 t", 0)]
    [InlineData("10000 lb", "vehicles over 10,000 lb", 0)]
    [InlineData("10000 lb", "which mass the 750 kg are counted by", 1)]
    [InlineData("10000 lb", "vehicles over 5 t", 1)]
    [InlineData("4000 kg", "vehicles over 4001 kg", 1)]
    [InlineData("4000 kg", "vehicles over 4000 kg", 0)]
    [InlineData("4000 kg", "vehicles over 4000 mm", 1)]
    public void Vehicles_that_no_rule_binds_are_told_unless_what_is_lacking_names_them(string limit, string lacks, int told)
    {
        using var book = BadBook.Open("vehicle-not-covered");
        Edit(
            "schema/vocabulary/measures.yaml",
            "measures:\n",
            "measures:\n  - { measure: gvm, title: GVM, unit: kg, job: vehicle.ratings.gvm, definition: Its greatest mass. }\n"
        );
        Edit("jurisdictions/xa/ride-height.yaml", "four-wheel-drive: yes", $"gvm: {{ at-most: {limit} }}");
        Edit("jurisdictions/xa/jurisdiction.yaml", "ride-height, state: complete", $"ride-height, state: partial, lacks: \"{lacks}\"");
        Inspection.Run(book.Folder, Today).Problems.Count(problem => problem.Code == "vehicle-not-covered").ShouldBe(told);

        void Edit(string file, string from, string to)
        {
            var path = Path.Combine(book.Folder, file);
            File.WriteAllText(path, File.ReadAllText(path).Replace(from, to, StringComparison.Ordinal));
        }
    }

    [Theory]
    [InlineData(12)]
    [InlineData(400)]
    public void Adoptions_that_go_round_in_a_circle_or_fan_out_are_errors_however_many_there_are(int rules)
    {
        using var book = BadBook.Open("sound");
        var text = new StringBuilder("topic: ride-height\nrules:\n");
        for (var rule = 0; rule < rules; rule++)
        {
            text.Append(CultureInfo.InvariantCulture, $"  - rule: r{rule}\n    title: Rule {rule}\n    versions:\n");
            for (var version = 0; version < 12; version++)
                text.Append(
                        CultureInfo.InvariantCulture,
                        $"      - from: \"[2001-01-{version + 1:00}..2020-01-{version + 1:00}]\"\n"
                            + $"        sources: [ {{ cite: code, clause: \"1\" }} ]\n"
                    )
                    .Append(
                        CultureInfo.InvariantCulture,
                        $"        adopts: {{ rule: xa/ride-height/r{(rule + 1) % rules}, as-of: amended }}\n"
                    );
        }

        File.WriteAllText(Path.Combine(book.Folder, "jurisdictions/xa/ride-height.yaml"), text.ToString());
        var problems = Inspection.Run(book.Folder, Today).Problems;
        var codes = problems.Select(problem => problem.Code).Distinct().ToArray();
        problems.ShouldContain(problem => problem.Text == "through 'xa/ride-height/r2' more than 64 versions may be in force on one day");
        codes.ShouldContain("adoption-circle");
        codes.ShouldContain("adoption-fan");
        codes.ShouldNotContain("check-failed");
        Should.Throw<InputException>(() => BookReading.Open(book.Folder));
    }

    [Fact]
    public void The_sound_book_has_no_problem()
    {
        using var book = BadBook.Open("sound");

        var report = Inspection.Run(book.Folder, Today);

        report.Problems.ShouldBeEmpty();
        report.IsSound.ShouldBeTrue();
        report.Book.ShouldNotBeNull().Jurisdictions.Select(place => place.Id).ShouldBe(["xa", "xa-n"]);
    }

    [Fact]
    public void Every_code_has_a_bad_book_and_every_bad_book_a_code() => CheckList.All.Select(info => info.Code).ShouldBe(BadBook.Codes);

    [Fact]
    public void Every_code_says_what_why_and_what_would_be_right() =>
        CheckList.All.ShouldAllBe(info => info.Title.Length > 0 && info.Why.Length > 0 && info.Tip.Length > 0);

    [Fact]
    public void Faults_in_several_files_are_reported_in_one_run()
    {
        using var book = BadBook.Open("unknown-key");
        File.WriteAllText(Path.Combine(book.Folder, "jurisdictions/xa/sources.yaml"), "sources: [");

        Inspection.Run(book.Folder, Today).Problems.Select(problem => problem.Code).ShouldBe(["unknown-key", "yaml-syntax"]);
    }

    [Fact]
    public void An_overdue_source_is_a_warning_and_leaves_the_book_sound()
    {
        using var book = BadBook.Open("source-overdue");

        var report = Inspection.Run(book.Folder, Today);

        (report.IsSound, report.Errors, report.Warnings).ShouldBe((true, 0, 1));
    }
}
