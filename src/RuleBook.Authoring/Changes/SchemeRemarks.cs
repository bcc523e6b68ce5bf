using RuleBook.InForce;
using RuleBook.Law;
using RuleBook.Telling;
using RuleBook.Units;

namespace RuleBook.Authoring.Changes;

/// <summary>Certification schemes whose content changes; that they do, not how.</summary>
internal static class SchemeRemarks
{
    public static IEnumerable<Remark> Of(Jurisdiction old, Jurisdiction now)
    {
        var left = old.Schemes.ToList();
        foreach (var scheme in now.Schemes)
        {
            var same = left.Find(other => other.Name == scheme.Name)
                ?? left.Find(other => scheme.Aliases.Contains(other.Name) || other.Aliases.Contains(scheme.Name));
            if (same is not null) left.Remove(same);
            var days = Days(same).Concat(Days(scheme)).Distinct().Order().Prepend(DateOnly.MinValue);
            DateOnly[] differing = [.. days.Where(day => Content(same, day) != Content(scheme, day))];
            if (differing.Length > 0) yield return Changed(now, scheme, differing[0], scheme.Versions.LastOrDefault(version => First(version) <= differing[0]));
        }

        foreach (var scheme in left) yield return Changed(now, scheme, DateOnly.MinValue, null);
    }

    private static Remark Changed(Jurisdiction place, Scheme scheme, DateOnly from, SchemeVersion? version) => new(
        RemarkKind.Scheme, place.Id, place.Name, scheme.Name, from == DateOnly.MinValue ? null : from,
        $"certification scheme of {place.Name} changed{(from == DateOnly.MinValue ? "" : $" from {Phrases.Day(from)}")}", version?.Mark ?? scheme.Mark);

    private static IEnumerable<DateOnly> Days(Scheme? scheme) => (scheme?.Versions ?? [])
        .SelectMany(version => new[] { version.From, version.Until }.OfType<PartialDate>())
        .SelectMany(date => (DateOnly[])[date.Earliest, date.Latest]);

    private static DateOnly First(SchemeVersion version) => version.From?.Earliest ?? DateOnly.MinValue;

    /// <summary>What certifier and owner go by, without titles, notes and sources.</summary>
    private static string Content(Scheme? scheme, DateOnly day)
    {
        if (scheme is null) return "";
        Timeline.Span[] spans = [.. scheme.Versions.Select(version => new Timeline.Span(version.From, version.InForceBy, version.Until))];
        return string.Join("\nor\n", Timeline.At(spans, day).Select(i => i < 0 ? "nothing recorded" : Content(scheme, scheme.Versions[i])).Distinct());
    }

    private static string Content(Scheme scheme, SchemeVersion version) => string.Join('|', new[]
    {
        string.Join(';', scheme.For.Tests.Select(test => $"{test.Fact} {string.Join(' ', test.OneOf)} {test.Bounds}").Order(StringComparer.Ordinal)),
        version.Certifier, version.AppointedBy, version.Decides, version.Reregistering,
        version.AcceptsAppointedIn is { } accepted ? string.Join(' ', accepted.Order(StringComparer.Ordinal)) : "?",
        string.Join(';', version.Issued.OrderBy(issued => issued.Pathway).Select(issued => $"{issued.Pathway} {string.Join(',', issued.Papers)}")),
        string.Join(';', version.Steps.Select(step => $"{step.Text} {step.BeforeWork} {string.Join(',', step.Pathways)}")),
        string.Join(';', version.Fees.Select(fee => $"{fee.What} {fee.Amount} {fee.From.Text}")),
    });
}
