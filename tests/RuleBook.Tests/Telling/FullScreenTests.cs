using RuleBook.Answers;
using RuleBook.Jobs;
using RuleBook.Telling;
using RuleBook.Tests.Answers;
using RuleBook.Tests.Figures;

namespace RuleBook.Tests.Telling;

/// <summary>What goes from a first screen that is full, counted by a plain filling of lines. Derived, on a scenario of our own.</summary>
[Trait("Basis", "derived")]
public sealed class FullScreenTests
{
    /// <summary>The order in which the rows go, as README's promise of twelve lines asks for one: what is told elsewhere first.</summary>
    private static readonly string[] Order = ["Combination", "Ratings", "Tyres", "On the road", "Rests on", "Masses", "To show"];

    private static readonly Job Job = Reckoned.Read(
        $$"""
        "vehicle": { {{Reckoned.Wagon}} }, "trailer": { "mass": "2000 kg", "ball-load": "200 kg", "braked": "yes" },
        "modification": { "tyres": "265/65R17 112S" }
        """
    );

    private static readonly Assessment Answer = Assessor.Assess(Reckoned.Book, Job);

    [Fact]
    public void A_row_goes_only_where_there_is_no_room_for_it_and_no_more_than_twelve_lines_are_told_while_one_can_go()
    {
        var rows = Rows(Screen(""));
        rows.Keys.Intersect(Order).Count().ShouldBeGreaterThanOrEqualTo(3);
        var mostGone = 0;
        for (var words = 0; words < 200; words++)
        {
            var screen = Screen(string.Join(' ', Enumerable.Repeat("more", words)));
            var kept = Rows(screen);
            string[] gone = [.. Order.Where(label => rows.ContainsKey(label) && !kept.ContainsKey(label))];
            gone.ShouldBe(Order.Where(rows.ContainsKey).Take(gone.Length), $"{words} words");
            kept.Count.ShouldBe(rows.Count - gone.Length);
            if (gone.Length > 0)
                (Height(screen) + Filled(rows[gone[^1]], 67)).ShouldBeGreaterThan(12, $"{words} words");
            if (Order.Any(kept.ContainsKey))
                Height(screen).ShouldBeLessThanOrEqualTo(12, $"{words} words");
            mostGone = Math.Max(mostGone, gone.Length);
        }

        mostGone.ShouldBe(rows.Keys.Intersect(Order).Count());
    }

    /// <summary>"2 more" takes eight letters with what parts it from the rest; the last part needs no room for it.</summary>
    [Theory]
    [InlineData(9, "aaaa; 2 more")]
    [InlineData(17, "aaaa; 2 more")]
    [InlineData(18, "aaaa; bbbb; cccc")]
    public void As_many_parts_as_fit_are_told_and_how_many_more_there_are(int width, string told) =>
        FirstScreen.Fitting(["aaaa", "bbbb", "cccc"], width).ShouldBe(told);

    /// <summary>Load index 98 is 750 kg a tyre (ETRTO table, schema/reference/tables.yaml): 1500 kg an axle.</summary>
    [Theory]
    [InlineData("1500 kg", "1500 kg", true)]
    [InlineData("1500 kg", "1501 kg", false)]
    [InlineData("1501 kg", "1500 kg", false)]
    public void Tyres_carry_the_axle_ratings_where_they_carry_each(string front, string rear, bool carry)
    {
        var answer = Reckoned.Assess(
            $$"""
            "vehicle": { "ratings": { "front-axle": "{{front}}", "rear-axle": "{{rear}}" } }, "modification": { "tyres": "265/65R17 98S" }
            """
        );
        var finding = Scenario.Assess(Scenario.Stating(Scenario.Tiers), Scenario.Lift("40 mm")).Findings.Single();
        var rule = finding.Version.Rule with { Topic = "tyres-and-wheels" };

        SubjectRows
            .Of(answer with { Findings = [finding with { Version = finding.Version with { Rule = rule } }] })
            .Single(row => row.Label == "Tyres")
            .Parts.Contains("carry the axle ratings")
            .ShouldBe(carry);
    }

    private static List<string> Screen(string more)
    {
        var page = new Told();
        new FirstScreen(page, Reckoned.Book.Vocabulary).Write(Answer, Job, null, more);
        return page.Lines;
    }

    private static Dictionary<string, string> Rows(IEnumerable<string> lines) =>
        lines.Select(line => line.Split('|')).Where(parts => parts.Length == 2).ToDictionary(parts => parts[0], parts => parts[1]);

    private static int Height(IEnumerable<string> lines) =>
        lines.Sum(line => line.Split('|') is [_, var text] ? Filled(text, 67) : Filled(line, 80));

    /// <summary>How many lines hold the words, each as many as fit.</summary>
    private static int Filled(string text, int width)
    {
        var (lines, used) = (1, -1);
        foreach (var word in text.Split(' '))
        {
            if (used >= 0 && used + 1 + word.Length > width)
                (lines, used) = (lines + 1, -1);
            used += 1 + word.Length;
        }

        return lines;
    }
}
