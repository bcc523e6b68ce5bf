using RuleBook.Law;
using RuleBook.Text;

namespace RuleBook.Authoring.Checks;

/// <summary>A word under carries that names nothing of what the citation stands on.</summary>
internal static class CarriesUnknown
{
    internal static readonly CheckInfo Info = new(
        "carries-unknown",
        "a citation is said to carry what is not there",
        "The figure that was meant would be told as without a source.",
        "name from, beyond, adopts, measured, limits, a tier, a measure, tier.measure, or existence for none of these"
    );

    private static readonly string[] OfSchemes =
    [
        "from",
        "until",
        "certifier",
        "appointed-by",
        "decides",
        "accepts-appointed-in",
        "issued",
        "steps",
        "reregistering",
        "fees",
        "not-established",
    ];

    internal static IEnumerable<Problem> Find(Inspected book) =>
        from pair in Rules(book)
            .Concat(Schemes(book))
            .Concat(On(book.Book.Jurisdictions.SelectMany(place => place.Cautions).SelectMany(caution => caution.Sources), []))
        from word in pair.Citation.Carries ?? []
        where word != Part.Existence.Name && !pair.Parts.Any(part => part.IsNamed(word))
        select Info.At(
            book.Word(pair.Citation.Mark, "carries", word),
            $"'{word}' is nothing that this citation can carry",
            Tip(word, pair.Parts)
        );

    private static IEnumerable<(Citation Citation, Part[] Parts)> Rules(Inspected book) =>
        from pair in book.Versions
        from placed in Rules(book, pair.Version)
        select placed;

    private static IEnumerable<(Citation Citation, Part[] Parts)> Rules(Inspected book, RuleVersion version) =>
        [
            .. On(version.Sources, Parts.Of(book, version)),
            .. version.Disputes.SelectMany(dispute => dispute.Readings).SelectMany(reading => On(reading.Sources, [])),
            .. version.Content switch
            {
                Stated stated => stated.Tiers.SelectMany(tier => On(tier.Sources, Parts.Of(tier))),
                Adoption adoption => adoption.Exceptions.SelectMany(change =>
                    On(change.Sources.AddRange(change.Added?.Sources ?? []), Parts.Of(change))
                ),
                _ => [],
            },
        ];

    private static IEnumerable<(Citation Citation, Part[] Parts)> Schemes(Inspected book) =>
        from pair in book.SchemeVersions
        let mark = pair.Version.Mark
        from placed in On(pair.Version.Sources, OfSchemes.Where(key => book.Has(mark, key)).Select(key => new Part(null, key)))
            .Concat(pair.Version.Steps.SelectMany(step => On(step.Sources, [])))
            .Concat(pair.Version.Fees.SelectMany(fee => On(fee.Sources, [])))
        select placed;

    private static IEnumerable<(Citation Citation, Part[] Parts)> On(IEnumerable<Citation> citations, IEnumerable<Part> parts)
    {
        Part[] all = [.. parts];
        return citations.Select(citation => (citation, all));
    }

    private static string? Tip(string word, Part[] parts)
    {
        string[] words =
        [
            .. parts.Select(part => part.ToString()),
            .. parts.Select(part => part.Tier).OfType<string>(),
            Part.Existence.Name,
        ];
        return Spelling.Nearest(word, words) is { } near && near != word ? $"did you mean '{near}'?" : null;
    }
}
