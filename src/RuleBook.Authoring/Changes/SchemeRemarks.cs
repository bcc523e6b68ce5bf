using System.Collections.Immutable;
using RuleBook.InForce;
using RuleBook.Law;
using RuleBook.Telling;
using RuleBook.Units;

namespace RuleBook.Authoring.Changes;

/// <summary>Certification schemes whose content changes; that they do, not how.</summary>
internal static class SchemeRemarks
{
    public static IEnumerable<Remark> Of(Book before, Book after, Jurisdiction old, Jurisdiction now)
    {
        var (cited, cites) = (new RuleStatements(before, after), new RuleStatements(after, after));
        var left = old.Schemes.ToList();
        foreach (var scheme in now.Schemes)
        {
            var same =
                left.Find(other => other.Name == scheme.Name)
                ?? left.Find(other => scheme.Aliases.Contains(other.Name) || other.Aliases.Contains(scheme.Name));
            if (same is not null)
                left.Remove(same);
            DateOnly[] days = [.. Days(same).Concat(Days(scheme)).Prepend(DateOnly.MinValue).Distinct().Order()];
            DateOnly[] differing = [.. days.Where(day => Content(same, day) != Content(scheme, day))];
            if (differing.Length > 0)
                yield return Changed(now, scheme, differing[0], scheme.Versions.LastOrDefault(version => First(version) <= differing[0]));
            if (
                same is not null
                && Said.Differently(days, day => Evidence(same, day, cited, old), day => Evidence(scheme, day, cites, now)) is { } evidence
            )
                yield return new Remark(RemarkKind.Evidence, now.Id, now.Name, scheme.Name, evidence.From, evidence.Text, scheme.Mark);
        }

        foreach (var scheme in left)
            yield return Changed(now, scheme, DateOnly.MinValue, null);
    }

    private static Remark Changed(Jurisdiction place, Scheme scheme, DateOnly from, SchemeVersion? version) =>
        new(
            RemarkKind.Scheme,
            place.Id,
            place.Name,
            scheme.Name,
            from == DateOnly.MinValue ? null : from,
            $"certification scheme of {place.Name} changed{(from == DateOnly.MinValue ? "" : $" from {Phrases.Day(from)}")}",
            version?.Mark ?? scheme.Mark
        );

    private static IEnumerable<DateOnly> Days(Scheme? scheme) =>
        (scheme?.Versions ?? [])
            .SelectMany(version => new[] { version.From, version.Until }.OfType<PartialDate>())
            .SelectMany(date => (DateOnly[])[date.Earliest, date.Latest]);

    private static DateOnly First(SchemeVersion version) => version.From?.Earliest ?? DateOnly.MinValue;

    private static IEnumerable<SchemeVersion> InForce(Scheme scheme, DateOnly day) =>
        Indexes(scheme, day).Where(i => i >= 0).Select(i => scheme.Versions[i]);

    private static ImmutableArray<int> Indexes(Scheme scheme, DateOnly day) =>
        Timeline.At([.. scheme.Versions.Select(version => new Timeline.Span(version.From, version.InForceBy, version.Until))], day);

    private static IEnumerable<string> Evidence(Scheme scheme, DateOnly day, RuleStatements statements, Jurisdiction place) =>
        InForce(scheme, day)
            .SelectMany(version =>
                statements
                    .Cited(version.Sources, place.Id, "")
                    .Concat(version.Steps.SelectMany(step => statements.Cited(step.Sources, place.Id, " for a step")))
                    .Concat(version.Fees.SelectMany(fee => statements.Cited(fee.Sources, place.Id, " for a fee")))
            );

    /// <summary>What certifier and owner go by, without titles, notes and sources.</summary>
    private static string Content(Scheme? scheme, DateOnly day)
    {
        if (scheme is null)
            return "";
        return string.Join(
            "\nor\n",
            Indexes(scheme, day).Select(i => i < 0 ? "nothing recorded" : Content(scheme, scheme.Versions[i])).Distinct()
        );
    }

    private static string Content(Scheme scheme, SchemeVersion version) =>
        string.Join(
            '|',
            new[]
            {
                string.Join(
                    ';',
                    scheme
                        .For.Tests.Select(test => $"{test.Fact} {string.Join(' ', test.OneOf)} {test.Bounds}")
                        .Order(StringComparer.Ordinal)
                ),
                version.Certifier,
                version.AppointedBy,
                version.Decides,
                version.Reregistering,
                version.AcceptsAppointedIn is { } accepted ? string.Join(' ', accepted.Order(StringComparer.Ordinal)) : "?",
                string.Join(
                    ';',
                    version.Issued.OrderBy(issued => issued.Pathway).Select(issued => $"{issued.Pathway} {string.Join(',', issued.Papers)}")
                ),
                string.Join(
                    ';',
                    version.Steps.Select(step =>
                        $"{step.Text} {step.BeforeWork} {string.Join(',', step.Pathways)} {string.Join(',', step.Topics)}"
                    )
                ),
                string.Join(';', version.Fees.Select(fee => $"{fee.What} {fee.Amount} {fee.From.Text}")),
                string.Join(';', version.NotEstablished),
            }
        );
}
