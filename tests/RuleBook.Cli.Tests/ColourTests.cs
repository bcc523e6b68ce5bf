using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using RuleBook.Authoring.Changes;
using RuleBook.Authoring.Pinning;
using RuleBook.Authoring.Records;
using RuleBook.Authoring.Walk;
using RuleBook.Cli.Answers;
using RuleBook.Telling;
using RuleBook.Text;
using Spectre.Console;
using static RuleBook.Cli.Tests.TextByHand;

namespace RuleBook.Cli.Tests;

/// <summary>
/// The colours of a terminal, read from the signs that ECMA-48 has for them (SGR: 1 bold, 2 faint, 30 to 37 the colours; 90 to 97 the same
/// brighter): green where nothing stops, red where something does, yellow where a person has to look.
/// </summary>
public sealed partial class ColourTests
{
    private static readonly string[] Colours = ["black", "red", "green", "yellow", "blue", "magenta", "cyan", "white"];

    [Theory]
    [InlineData(VerdictColour.Free, "green")]
    [InlineData(VerdictColour.Certified, "blue")]
    [InlineData(VerdictColour.Prohibited, "red")]
    [InlineData(VerdictColour.Open, "yellow")]
    [InlineData(VerdictColour.None, "")]
    public void A_verdict_has_the_colour_of_what_it_allows(VerdictColour verdict, string colour)
    {
        var told = Signs(console => Page.Write(console, page => page.Title("NOT AS PLANNED", verdict)));
        ColourOf(told).ShouldBe(colour);
        told.ShouldContain(1);
    }

    [Fact]
    public void A_heading_is_bold_and_what_stands_behind_an_answer_is_faint()
    {
        Signs(console => Page.Write(console, page => page.Heading("Masses"))).ShouldBe([1]);
        Signs(console => Page.Write(console, page => page.Row("Masses", "unladen"))).ShouldBe([1]);
        Signs(console => Page.Write(console, page => page.Aside("the act, 4"))).ShouldContain(2);
        Signs(console => Page.Write(console, page => page.Item("50 mm"))).ShouldBeEmpty();
        Signs(console => Page.Write(console, page => page.Line("50 mm"))).ShouldBeEmpty();
    }

    [Fact]
    public void What_was_looked_through_is_green_where_nothing_was_found_and_red_where_something_was()
    {
        var witness = new Witness("xa", Day, ImmutableDictionary<string, string>.Empty, [], []);
        Unpinned unpinned = new("xa/ride-height/raise", Line7, "50 mm", "49 mm", witness, "no-certificate", "certificate");
        WalkFault fault = new(FaultKind.Hole, "xa/ride-height/raise", Line7, "A hole.", witness);
        ColourOf(console => PinText.Write(console, IsleBook, new(1, 1, 1, 0, []))).ShouldBe("green");
        ColourOf(console => PinText.Write(console, IsleBook, new(1, 0, 1, 0, [unpinned]))).ShouldBe("red");
        ColourOf(console => WalkText.Write(console, IsleBook, new(1, 1, 1, 1, 1, []))).ShouldBe("green");
        ColourOf(console => WalkText.Write(console, IsleBook, new(1, 1, 1, 1, 1, [fault]))).ShouldBe("red");
        ColourOf(console => CasesText.Write(console, [WholeTextTests.Result("lift-50")])).ShouldBe("green");
        ColourOf(console => CasesText.Write(console, [WholeTextTests.Result("lift-50", failures: "another")])).ShouldBe("red");
    }

    [Fact]
    public void Two_books_that_answer_alike_are_green_and_others_are_to_be_looked_at()
    {
        ComparedBooks Compared(params ImmutableArray<Remark> remarks) =>
            new(new("old", "sha256:1"), new("new", "sha256:2"), new([], remarks), null);
        ColourOf(console => ChangesText.Write(console, Compared())).ShouldBe("green");
        ColourOf(console =>
                ChangesText.Write(console, Compared(new Remark(RemarkKind.Other, "xa", "The isle", "a rule", null, "codes named", Line7)))
            )
            .ShouldBe("yellow");
    }

    [Fact]
    public void A_kept_answer_is_green_while_it_stands_and_to_be_looked_at_where_one_does_not_or_cannot_be_asked()
    {
        var same = new AnswerComparison(true, null, []);
        var words = new AnswerComparison(false, null, []);
        var moved = new AnswerComparison(
            false,
            ("allowed", "not allowed"),
            [new(DifferenceKind.Blocker, "", "over-gvm", null, "yes", null)]
        );
        var kept = new SavedRecord("1.2.0", null, "sha256:1", Day, null, new Mapping([], Line7), "{}", []);
        string Again(AnswerComparison compared) =>
            ColourOf(console => Page.Write(console, page => RecordText.Replayed(page, kept, IsleBook, compared, "2.0.0")));
        string All(params Rechecked[] all) => ColourOf(console => Page.Write(console, page => RecordText.Rechecked(page, all, IsleBook)));
        Again(same).ShouldBe("green");
        Again(words).ShouldBe("green");
        Again(moved).ShouldBe("yellow");
        All(new Rechecked("a", kept, kept, same, same, null, null)).ShouldBe("green");
        All(new Rechecked("a", kept, kept, moved, same, null, null)).ShouldBe("yellow");
        All(new Rechecked("a", kept, kept, same, moved, null, null)).ShouldBe("yellow");
        All(Rechecked.Refused("a", Problem.Error("not-a-record", Line7, "it is damaged", ""))).ShouldBe("yellow");
    }

    [Fact]
    public void Figures_of_a_table_end_under_one_another_and_words_begin_so()
    {
        var lines = Told(page =>
                page.Table(
                    ["state", "rules", "open"],
                    [
                        ["au-qld", "8", "5"],
                        ["nz", "123", "45"],
                    ],
                    numbersFrom: 1
                )
            )
            .Split('\n')
            .Where(line => line.Any(char.IsAsciiLetterOrDigit))
            .ToArray();
        lines.Length.ShouldBe(3);
        lines.Select(line => line.Length).Distinct().ShouldHaveSingleItem();
        lines[1].ShouldMatch("^ *au-qld +8 +5$");
        lines[2].ShouldMatch("^ *nz +123 +45$");
        Column("au-qld", "nz", word => lines[Array.FindIndex(lines, line => line.Contains(word))].IndexOf(word, StringComparison.Ordinal));
        Column(" 8", "123", word => lines.First(line => line.Contains(word)).IndexOf(word, StringComparison.Ordinal) + word.Length);

        static void Column(string one, string other, Func<string, int> at) => at(one).ShouldBe(at(other));
    }

    private static string ColourOf(Func<IAnsiConsole, string?> write) => ColourOf(Signs(write));

    private static string ColourOf(int[] signs) =>
        string.Join(' ', signs.Where(sign => sign is (>= 30 and <= 37) or (>= 90 and <= 97)).Select(sign => Colours[sign % 10]).Distinct());

    /// <summary>The graphic renditions that are set anywhere.</summary>
    private static int[] Signs(Func<IAnsiConsole, string?> write)
    {
        using var output = new StringWriter(CultureInfo.InvariantCulture) { NewLine = "\n" };
        var console = AnsiConsole.Create(
            new AnsiConsoleSettings
            {
                Ansi = AnsiSupport.Yes,
                ColorSystem = ColorSystemSupport.Standard,
                Out = new AnsiConsoleOutput(output),
            }
        );
        console.Profile.Width = 400;
        write(console);
        return
        [
            .. Sgr()
                .Matches(output.ToString())
                .SelectMany(sign => sign.Groups[1].Value.Split(';', StringSplitOptions.RemoveEmptyEntries))
                .Select(sign => int.Parse(sign, CultureInfo.InvariantCulture))
                .Where(sign => sign != 0)
                .Distinct()
                .Order(),
        ];
    }

    [GeneratedRegex(@"\u001b\[([0-9;]*)m")]
    private static partial Regex Sgr();
}
