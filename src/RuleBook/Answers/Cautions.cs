using System.Collections.Immutable;
using RuleBook.Facts;
using RuleBook.InForce;
using RuleBook.Jobs;
using RuleBook.Law;
using RuleBook.Physics.Tyres;
using RuleBook.Tables;
using RuleBook.Units;

namespace RuleBook.Answers;

/// <summary>What a reader should bear in mind beside the verdict.</summary>
internal static class Cautions
{
    public static IEnumerable<string> Of(Book book, Jurisdiction place, Job job, FactSet facts, ImmutableArray<Finding> findings)
    {
        foreach (var text in Weak(findings).Concat(Days(place, job, findings)).Concat(Disputed(findings)).Distinct())
            yield return text;
        var own = place.Cautions.Concat(place.Within is { } nation ? book.Jurisdiction(nation)?.Cautions ?? [] : []);
        var scopes = TableBook.Of(book).Scopes(place);
        var row = scopes.Place(facts);
        foreach (var caution in own.Where(caution => scopes.Holds(caution.When, row) == Truth.Yes))
            yield return caution.Text.Trim();
        foreach (var caution in book.Cautions)
            yield return caution;
    }

    /// <summary>What comes before everything, because it can turn the answer.</summary>
    public static IEnumerable<string> Foremost(Book book, Jurisdiction place, Job job, Judgement judged, IEnumerable<Finding> findings)
    {
        if (!place.Registers)
            yield return place.RegistersNote ?? $"Nobody registers a vehicle in {place.Name}.";
        if (Flip(job, judged) is { } flip)
            yield return flip;
        foreach (var later in Later(book, place, judged, findings))
            yield return later;
        foreach (var finding in findings.Where(finding => finding.Version.WarningOnly && finding.Outcome.Worst == Pathway.Prohibited))
            yield return Warned(book, judged, finding.Version, OfTheJob);
        string[] unasked = [.. NotAskedFor(book, job, findings)];
        if (unasked.Length > 0)
            yield return $"No rule that judges this asks for: {string.Join(", ", unasked)}.";
        string[] uncovered = [.. judged.UseNotCovered().Select(topic => book.Vocabulary.Topics[topic].Title)];
        if (uncovered.Length > 0)
            yield return $"No rule of use in the book covers this vehicle on {string.Join(" and ", uncovered)}: ask {place.Ask.Name}.";
    }

    /// <summary>
    /// What the next version gives that is more onerous, where the day of inspection decides: it then binds what was done before, too.
    /// </summary>
    private static IEnumerable<string> Later(Book book, Jurisdiction place, Judgement judged, IEnumerable<Finding> findings)
    {
        foreach (var finding in findings)
        {
            var rule = finding.Version.Rule;
            var (version, day) = (finding.Version, DateOnly.MinValue);
            while (LooksAhead(version, place) && version.Ends is { } until && until.Latest > day)
            {
                day = until.Latest;
                var later = On(book, judged, rule, day);
                if (later.Outcome.Worst > finding.Outcome.Worst)
                {
                    yield return $"{rule.Title}: from {until.Words} on {Wording.Spoken(later.Outcome)}, whenever the work was done.";
                    break;
                }

                version = later.Version;
            }
        }
    }

    /// <summary>Until when a breach brings a warning only, and what comes then: in full, no rule any more, or something else.</summary>
    private static string Warned(Book book, Judgement judged, ResolvedVersion version, Func<VersionOnRow, string> words)
    {
        var (until, then) = Warnings(book, judged, version, words);
        var day = until?.Words ?? "a day that is not known";
        return $"{version.Rule.Title}: until {day} a breach brings a warning only; from then on {then}.";
    }

    private static (PartialDate? Until, string Then) Warnings(
        Book book,
        Judgement judged,
        ResolvedVersion version,
        Func<VersionOnRow, string> words
    )
    {
        if (version.Until is not { } end)
            return (null, "it counts in full");
        var later = On(book, judged, version.Rule, end.Latest);
        return later.Version.WarningOnly && later.Version.Until != end ? Warnings(book, judged, later.Version, words) : (end, words(later));
    }

    private static string OfTheJob(VersionOnRow later) =>
        later.Version.Content is Stated && later.Outcome.Worst < Pathway.Prohibited ? Wording.Spoken(later.Outcome) : OfTheRule(later);

    private static string OfTheRule(VersionOnRow later) =>
        later.Version.Content switch
        {
            NotRegulated => "it is not regulated",
            NotEstablished => "what holds is not established",
            _ => "it counts in full",
        };

    /// <summary>The version of the day on what the job states.</summary>
    private static VersionOnRow On(Book book, Judgement judged, Rule rule, DateOnly day)
    {
        var table = TableBook.Of(book).Table(rule, day);
        var row = table.NewRow();
        row.Set(judged.Facts);
        return new VersionOnRow(table, row, 0, 0);
    }

    /// <summary>
    /// Of the limits that bind the job, whatever it gets by them: whether a breach only warns, and when what they spare ends.
    /// </summary>
    public static IEnumerable<string> OfLimits(Book book, Jurisdiction place, Judgement judged)
    {
        foreach (var finding in judged.Findings())
        {
            if (finding.Version.WarningOnly)
                yield return Warned(book, judged, finding.Version, OfTheRule);
            if (Spares(finding.Judged) && EndOfSparing(book, place, judged, finding.Version, DateOnly.MinValue) is { } end)
                yield return $"{finding.Version.Rule.Title}: what is spared here as altered earlier is spared until {end.Words} only.";
        }
    }

    /// <summary>Whether a tier for earlier alterations is open to the job, or may be.</summary>
    private static bool Spares(VersionOnRow judged) =>
        judged.Version.Content is Stated stated
        && stated.Tiers.Any(tier =>
            tier.When.Tests.Any(test => test.Fact == KnownWords.Altered && test.Bounds?.Upper is not null) && judged.When(tier) != Truth.No
        );

    private static PartialDate? EndOfSparing(Book book, Jurisdiction place, Judgement judged, ResolvedVersion version, DateOnly after)
    {
        if (!LooksAhead(version, place) || version.Ends is not { } end || end.Latest <= after)
            return null;
        var later = On(book, judged, version.Rule, end.Latest);
        return Spares(later) ? EndOfSparing(book, place, judged, later.Version, end.Latest) : end;
    }

    /// <summary>Whether the version after this one binds what is judged by this one, too.</summary>
    internal static bool LooksAhead(ResolvedVersion version, Jurisdiction place) =>
        version.Ends is not null && (version.Rule.DecidedBy ?? place.DecidedBy) == "inspection";

    /// <summary>What the job says was shown, or was not, and no rule that judges it asks for.</summary>
    private static IEnumerable<string> NotAskedFor(Book book, Job job, IEnumerable<Finding> findings)
    {
        if (job.Shown.IsEmpty)
            return [];
        var asked = new HashSet<string>(StringComparer.Ordinal);
        foreach (var finding in findings)
        foreach (var tier in finding.Version.Tiers())
        foreach (var name in tier.Provided)
        {
            asked.Add(name);
            asked.UnionWith(book.Vocabulary.Conditions[name].AnyOf);
        }

        return job
            .Shown.Where(stated => !asked.Contains(stated.Key))
            .OrderBy(stated => stated.Key, StringComparer.Ordinal)
            .Select(stated =>
                $"{book.Vocabulary.Conditions[stated.Key].Title} ({(stated.Value ? "stated as shown" : "stated as not met")})"
            );
    }

    /// <summary>The basis of tyre diameters can flip a legal answer.</summary>
    private static string? Flip(Job job, Judgement judged)
    {
        if (job.FittedTyre is null)
            return null;
        var nominal = judged.On(DiameterBasis.Nominal);
        return nominal == judged.Outcome
            ? null
            : $"The basis of the tyre diameters decides: {Wording.Spoken(judged.Outcome)} by the handbook's, "
                + $"{Wording.Spoken(nominal)} by the nominal ones unrounded. "
                + "Measure the tyre and ask the certifier.";
    }

    private static IEnumerable<string> Weak(ImmutableArray<Finding> findings)
    {
        foreach (var finding in findings)
        {
            var standing = (WeakestEvidence.Of(finding)?.Standing ?? finding.Version.Evidence.Of(Part.Existence)).Basis;
            if (finding.Version.Sources.IsEmpty || standing == ReadAs.Primary)
                continue;
            var how = standing switch
            {
                ReadAs.Secondary => "known only at second hand",
                ReadAs.CommonPractice => "known only as common practice, without a published source",
                ReadAs.Memory => "known only from memory",
                _ => "carried by none of the sources that the book cites for it",
            };
            var (title, id) = (finding.Version.Rule.Title, finding.Version.Rule.Id);
            yield return $"{title} ({id}): what decides here is {how}; open the document itself before relying on it.";
        }
    }

    private static IEnumerable<string> Days(Jurisdiction place, Job job, ImmutableArray<Finding> findings)
    {
        foreach (var finding in findings)
            if ((finding.Version.Rule.DecidedBy ?? place.DecidedBy) is null && job.Dates.For(null).Length > 1)
                yield return $"Which day picks the version in {place.Name} is not established; every day stated was tried.";
        var on = job.Dates.Latest;
        foreach (var source in findings.SelectMany(finding => finding.Version.Sources).Select(cited => cited.Source))
            if (source.RecheckAfter.Latest < on)
                yield return $"\"{source.Title}\" was last compared {source.Checked} and is due for a re-check since "
                    + $"{source.RecheckAfter}.";
    }

    private static IEnumerable<string> Disputed(ImmutableArray<Finding> findings) =>
        findings
            .SelectMany(finding => finding.Version.Disputes)
            .Select(dispute =>
                $"Sources disagree on {dispute.About}: {string.Join("; ", dispute.Readings.Select(reading => reading.Says))}. Taken "
                + $"here: {dispute.Taken}. Why: {dispute.Because.Trim()}"
            );
}
