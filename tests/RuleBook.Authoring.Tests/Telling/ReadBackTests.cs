using System.Globalization;
using CsCheck;
using RuleBook.Answers;
using RuleBook.Authoring.Tests.Books;
using RuleBook.Authoring.Tests.Figures;
using RuleBook.Law;
using RuleBook.Physics.Masses;
using RuleBook.Text;
using RuleBook.Units;

namespace RuleBook.Authoring.Tests.Telling;

/// <summary>
/// What an answer tells, read back by a reader that shares nothing with its writer: each fact is told, with its own word and figure, and
/// nothing is told that is not in it. Basis: the words are those of a table written here by hand.
/// </summary>
public sealed class ReadBackTests
{
    /// <summary>RULEBOOK_RANDOM_JOBS sets how many jobs are tried; a failure prints its seed.</summary>
    private static readonly long Jobs = long.TryParse(
        Environment.GetEnvironmentVariable("RULEBOOK_RANDOM_JOBS"),
        CultureInfo.InvariantCulture,
        out var tries
    )
        ? tries
        : 60;

    private static readonly Dictionary<Pathway, string> Pathways = new()
    {
        [Pathway.NoCertificate] = "allowed without a certificate",
        [Pathway.Certificate] = "allowed with a certificate",
        [Pathway.Approval] = "allowed with the authority's approval first",
        [Pathway.Prohibited] = "not allowed",
    };

    private static readonly Dictionary<Truth, string> Marks = new()
    {
        [Truth.Yes] = "ok",
        [Truth.No] = "x",
        [Truth.Unknown] = "?",
    };

    private static readonly Dictionary<Truth, string> Boxes = new() { [Truth.Yes] = "[x]", [Truth.Unknown] = "[ ]" };

    private static readonly Dictionary<ReadAs, string> Known = new()
    {
        [ReadAs.Primary] = "the authority's own text",
        [ReadAs.Secondary] = "known at second hand",
        [ReadAs.CommonPractice] = "no published source",
        [ReadAs.Memory] = "from memory, not verified",
    };

    [Fact]
    public void The_first_lines_tell_the_blockers_and_then_the_verdict_in_its_own_words() =>
        Check(
            (answer, told) =>
            {
                var verdict = told.First.SkipWhile(line => line.StartsWith("NOT AS PLANNED", StringComparison.Ordinal)).First();
                (told.First[0].StartsWith("NOT AS PLANNED", StringComparison.Ordinal) || answer.Headline == Headline.Prohibited).ShouldBe(
                    !answer.Blockers.IsEmpty || answer.Headline == Headline.Prohibited
                );
                if (answer.JudgesNothing)
                    return;
                if (answer.Verdict is { } one)
                    verdict.ShouldContain(Pathways[one], Case.Insensitive);
                else
                    verdict.ShouldContain("undecided", Case.Insensitive);
                told.Part("What stands in the way").Items.Count(item => item.Mark == "x").ShouldBe(answer.Blockers.Length);
            }
        );

    [Fact]
    public void Each_rule_is_told_with_what_it_gives_and_with_every_limit_on_its_own_side() =>
        Check(
            (answer, told) =>
            {
                // A rule stands there once for each of its versions that may be in force.
                foreach (
                    var rule in answer
                        .Findings.Where(finding => finding.Outcome.Worst > Pathway.NoCertificate)
                        .GroupBy(finding => finding.Version.Rule.Id)
                )
                {
                    var parts = told
                        .Parts.Where(part => part.Lines.Any(line => line.StartsWith(rule.Key + ",", StringComparison.Ordinal)))
                        .ToArray();
                    foreach (var finding in rule)
                        parts.ShouldContain(part => part.Heading == $"{finding.Version.Rule.Title}: {Gives(finding)}");
                    var part = new ReadPart(rule.Key, [.. parts.SelectMany(each => each.Lines)]);
                    LimitCheck[] checks =
                    [
                        .. answer
                            .Findings.Where(finding => finding.Version.Rule.Id == rule.Key)
                            .SelectMany(finding =>
                                finding.Limits.Concat(
                                    finding.Closed.Where(closed => closed.Facts.IsEmpty).SelectMany(closed => closed.Limits)
                                )
                            ),
                    ];
                    foreach (var check in checks.Where(check => check.Limit.Kind == LimitKind.Bounded && check.Value.Exact is not null))
                        Tells(part, check);
                    foreach (var limit in part.Limits)
                        checks.ShouldContain(
                            check => check.Measure.Title == limit.Measure && Marks[check.Holds] == limit.Mark,
                            $"told, and in no tier: {limit}"
                        );
                }
            }
        );

    [Fact]
    public void Each_load_is_told_once_a_budget_with_its_limit_and_what_is_left_or_too_much() =>
        Check(
            (answer, told) =>
            {
                if (answer.Masses is not { } masses)
                    return;
                Tells(told.Part("Mass budget, unladen"), masses.Unladen.Left);
                if (masses.Loaded is { } loaded)
                    Tells(told.Part("Mass budget, loaded"), loaded.Left);
                var failing = told.Part("OVERLOADED");
                failing.Loads.Count().ShouldBe(masses.Failing.Count());
                failing.Loads.ShouldAllBe(load => load.Mark == "x" && load.Side == "too much");
            }
        );

    [Fact]
    public void What_is_to_show_has_an_empty_box_and_what_was_shown_a_ticked_one() =>
        Check(
            (answer, told) =>
            {
                var asked = answer
                    .Findings.SelectMany(finding => finding.Conditions.Select(condition => (finding.Outcome, Condition: condition)))
                    .Where(each => each.Condition.State != Truth.No)
                    .ToArray();
                var shown = told.Part("To be shown at the inspection").Lines.ToHashSet();
                foreach (var (_, condition) in asked.Where(each => each.Outcome.Worst > Pathway.NoCertificate))
                    shown.ShouldContain($"{Boxes[condition.State]} {condition.Condition.Title}");
                shown.ShouldBeSubsetOf(asked.Select(each => $"{Boxes[each.Condition.State]} {each.Condition.Condition.Title}"));
            }
        );

    [Fact]
    public void Each_source_is_told_by_how_it_is_known() =>
        Check(
            (answer, told) =>
            {
                var sources = answer
                    .Findings.SelectMany(finding => finding.Version.Sources.Concat(finding.TierSources))
                    .Select(cited => cited.Source)
                    .ToArray();
                foreach (var (_, text) in told.Part("Sources").Items)
                    sources.ShouldContain(
                        source =>
                            text.StartsWith(source.Title, StringComparison.Ordinal)
                            && text.Contains(Known[source.ReadAs], StringComparison.Ordinal),
                        text
                    );
            }
        );

    private static string Gives(Finding finding) =>
        finding.Outcome.Decided
            ? Pathways[finding.Outcome.Best]
            : $"from {Pathways[finding.Outcome.Best]} to {Pathways[finding.Outcome.Worst]}";

    private static void Tells(ReadPart part, LimitCheck check)
    {
        var unit = check.Measure.Unit;
        var value = (check.Value.Exact!.Value / unit.ToBase).ToDecimal();
        var left = check.Margin is { } margin ? (margin / unit.ToBase).ToDecimal() : 0;
        part.Limits.ShouldContain(
            told =>
                told.Measure == check.Measure.Title
                && told.Mark == Marks[check.Holds]
                && Near(told.Value, value)
                && (told.Side != "left" || (check.Holds == Truth.Yes && Near(told.Apart, left)))
                && (!told.Side.StartsWith("too", StringComparison.Ordinal) || (check.Holds == Truth.No && Near(told.Apart, -left))),
            $"{check.Measure.Name} {value}, {left} left, in\n{string.Join('\n', part.Lines)}"
        );
    }

    private static void Tells(ReadPart part, IEnumerable<LoadCheck> checks)
    {
        var told = part.Loads.ToArray();
        told.Length.ShouldBe(checks.Count());
        foreach (var (check, load) in checks.Zip(told))
        {
            load.What.ShouldBe(check.What);
            load.Side.ShouldBe(check.Holds ? "left" : "too much");
            (load.Mark == "ok").ShouldBe(check.Holds);
            (
                Near(load.Value, check.ValueKg.ToDecimal())
                && Near(load.Limit, check.LimitKg.ToDecimal())
                && Near(load.Apart, Math.Abs(check.MarginKg.ToDecimal()))
            ).ShouldBeTrue($"{check} told as {load}");
        }
    }

    /// <summary>Figures are told in whole units, or to the tenth where that decides.</summary>
    private static bool Near(decimal told, decimal exact) => Math.Abs(told - exact) <= 0.5m;

    private static void Check(Action<Assessment, ReadAnswer> holds)
    {
        var answered = 0L;
        RandomJob.Jobs.Sample(
            job =>
            {
                try
                {
                    var answer = RealBook.Assess(job.ToString());
                    Interlocked.Increment(ref answered);
                    holds(answer, ReadAnswer.Of(answer));
                }
                catch (InputException)
                {
                    // A job that contradicts itself has no answer.
                }
            },
            iter: Jobs,
            threads: 1
        );
        answered.ShouldBeGreaterThan(Jobs / 2);
    }
}
