using RuleBook.Law;

namespace RuleBook.Authoring.Checks;

/// <summary>Every citation of the book, with the jurisdiction in whose files it stands.</summary>
internal static class Citations
{
    internal static IEnumerable<(string Jurisdiction, Citation Citation)> Of(Inspected book) =>
        book
            .Versions.SelectMany(pair => Of(pair.Version).Select(citation => (pair.Rule.Jurisdiction, citation)))
            .Concat(book.SchemeVersions.SelectMany(pair => Of(pair.Version).Select(citation => (pair.Jurisdiction.Id, citation))))
            .Concat(
                book.Book.Jurisdictions.SelectMany(place =>
                    place.Cautions.SelectMany(caution => caution.Sources).Select(citation => (place.Id, citation))
                )
            );

    private static IEnumerable<Citation> Of(RuleVersion version) =>
        [
            .. version.Sources,
            .. version.Disputes.SelectMany(dispute => dispute.Readings).SelectMany(reading => reading.Sources),
            .. version.Content switch
            {
                Stated stated => stated.Tiers.SelectMany(tier => tier.Sources),
                Adoption adoption => adoption.Exceptions.SelectMany(change => change.Sources.Concat(change.Added?.Sources ?? [])),
                _ => [],
            },
        ];

    private static IEnumerable<Citation> Of(SchemeVersion version) =>
        [.. version.Sources, .. version.Steps.SelectMany(step => step.Sources), .. version.Fees.SelectMany(fee => fee.Sources)];
}
