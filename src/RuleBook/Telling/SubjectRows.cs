using RuleBook.Answers;
using RuleBook.Figures;
using RuleBook.Law;
using RuleBook.Physics.Masses;
using RuleBook.Units;

namespace RuleBook.Telling;

/// <summary>One line a subject: masses, what each topic's rules give, the combination.</summary>
internal static class SubjectRows
{
    private const string Tyres = "tyres-and-wheels";

    public static IEnumerable<(string Label, IReadOnlyList<string> Parts)> Of(Assessment assessment)
    {
        if (assessment.Masses is { } masses)
            yield return ("Masses", [.. Masses(masses)]);
        foreach (
            var topic in assessment
                .Findings.GroupBy(finding => finding.Version.Rule.Topic)
                .OrderBy(same => same.Key, StringComparer.Ordinal)
        )
            yield return (
                Label(topic.Key),
                [
                    .. topic
                        .OrderBy(MayBeForOthers)
                        .SelectMany(Finding)
                        .Concat(topic.Key == Tyres ? Carried(assessment.Tyres) : [])
                        .Distinct(),
                ]
            );
        if ((assessment.Masses?.Towing?.Weighed ?? assessment.Masses?.Towing?.Planned) is { Checks.IsEmpty: false } combination)
            yield return (
                "Combination",
                [
                    .. combination
                        .Checks.Where(check => check.Subject is "gcm" or "atm" or "gtm" or "ball" or "braked-tow" or "unbraked-tow")
                        .Select(Load),
                ]
            );
        foreach (var finding in assessment.OfUse.Take(1))
            yield return ("On the road", [OfUse(finding)]);
        foreach (var road in assessment.Roads.Where(road => road.Rules.IsEmpty).Take(1))
            yield return ("On the road", [Road(road)]);
    }

    /// <summary>What is known of the rules that follow the roads of a place.</summary>
    public static string Road(RoadElsewhere road) =>
        road switch
        {
            { Rules.IsEmpty: false } => $"{road.Name}: {string.Join("; ", road.Rules.Select(rule => rule.Title))}",
            { Looked: true } => $"{road.Name}: no rule in the book follows its roads",
            _ => $"{road.Name}: nobody has looked which rules follow its roads",
        };

    private static IEnumerable<string> Masses(MassAnswer masses)
    {
        var budget = masses.Loaded ?? masses.Unladen;
        if (masses.Loaded is not null && masses.Unladen.TotalKg is { } unladen)
            yield return $"unladen {Numbers.Show(unladen, 0)}";
        var state = masses.Loaded is null ? "unladen" : "loaded";
        LoadCheck[] applying = [.. budget.Left.GroupBy(check => check.Subject).Select(same => same.Last())];
        if (applying.All(check => check.Subject != "gvm"))
            yield return budget.TotalKg is { } total
                ? $"{state} {Numbers.Show(total, 0)} kg"
                : $"{state} not known, at least {Numbers.Show(budget.KnownKg, 0)} kg";
        foreach (var check in applying.Where(check => check.Subject == "gvm"))
            yield return $"{state} {Figures(check)} kg GVM";
        string[] axles =
        [
            .. applying
                .Where(check => check.Subject is "front-axle" or "rear-axle")
                .Select(check => $"{check.Subject.Split('-')[0]} {Figures(check)}"),
        ];
        if (axles.Length > 0)
            yield return $"{string.Join(", ", axles)} kg";
    }

    /// <summary>Whether nobody has established the limits of a rule that may be none for this vehicle: told after those that are.</summary>
    private static bool MayBeForOthers(Finding finding) => finding.Version.Content is NotEstablished && finding.Binds != Truth.Yes;

    private static IEnumerable<string> Finding(Finding finding)
    {
        if (finding.Version.Content is NotEstablished)
            return ["nobody has established the limits"];
        if (finding.Version.Content is NotRegulated { Why: var why })
            return [$"not regulated: {why.Trim()}"];
        if (finding.Tier is null && FirstLines.Reasons(finding).ToArray() is { Length: > 0 } reasons)
            return reasons;
        LimitCheck[] bearing = [.. finding.Limits.Where(check => check.Value.Exact is not { IsZero: true })];
        LimitCheck[] plain = [.. bearing.Where(IsPlain)];
        return Together(plain).Concat(bearing.Except(plain).Where(check => !TightestLimits.IsAway(check)).Select(Phrases.Limit));
    }

    /// <summary>Upper limits of one unit in one part: <c>suspension 45 of 50, tyre 14 of 25, total 59 of 75 mm</c>.</summary>
    private static IEnumerable<string> Together(IEnumerable<LimitCheck> plain) =>
        plain.GroupBy(check => check.Measure.Unit).Select(same => $"{string.Join(", ", same.Select(Figure))} {same.Key.Symbol}");

    private static string Figure(LimitCheck check)
    {
        var shown = LimitPhrases.Figures(check);
        var over = check.Holds == Truth.No ? $" ({shown.Apart} too much)" : "";
        return $"{Short(check.Measure.Title)} {shown.Value} of {shown.Limit}{over}";
    }

    private static bool IsPlain(LimitCheck check) =>
        check is { Bound: { Closed: true, Value.IsPositive: true }, IsUpper: true, Value.Exact: { IsNegative: false } }
        && (check.Bound.Written is not { } written || written.Unit == check.Measure.Unit);

    private static string Short(string title) => title.EndsWith(" lift", StringComparison.Ordinal) ? title[..^5] : title;

    /// <summary>That the tyres carry the axle ratings; where they do not, the first lines say so.</summary>
    private static IEnumerable<string> Carried(TyreAnswer? tyres)
    {
        if (tyres is { Loads: { IsEmpty: false } loads } && loads.All(check => check.Holds))
            yield return "carry the axle ratings";
    }

    private static string Load(LoadCheck check) =>
        $"{check.Subject switch { "gcm" => "in all", "ball" => "ball", "gtm" => "trailer axles", _ => "trailer" }} {Figures(check)} "
        + $"kg{check.Subject switch { "gcm" => " GCM", "atm" => " ATM", "gtm" => " GTM", _ => "" }}";

    private static string Figures(LoadCheck check)
    {
        var shown = Precisely.Of(check.ValueKg, check.LimitKg);
        return $"{shown.Value} of {shown.Limit}";
    }

    private static string OfUse(Finding finding) =>
        finding.Version.Content is NotEstablished
            ? $"{finding.Version.Rule.Title}: nobody has established the rule"
            : $"{finding.Version.Rule.Title}: "
                + string.Join(
                    ", ",
                    finding.Conditions.Select(condition => condition.Condition.Title).Prepend(Phrases.Outcome(finding.Outcome))
                );

    private static string Label(string topic) =>
        topic switch
        {
            "ride-height" => "Height",
            Tyres => "Tyres",
            "mass-ratings" => "Ratings",
            _ => Phrases.Sentence(topic.Replace('-', ' ')),
        };
}
