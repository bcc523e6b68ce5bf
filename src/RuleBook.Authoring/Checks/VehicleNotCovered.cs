using RuleBook.Authoring.Walk;
using RuleBook.Law;
using RuleBook.Text;
using RuleBook.Units;

namespace RuleBook.Authoring.Checks;

/// <summary>A class of vehicles that no rule of a topic is open to.</summary>
internal static class VehicleNotCovered
{
    internal static readonly CheckInfo Info = new(
        "vehicle-not-covered",
        "no rule of a topic binds some vehicles",
        "Their answer stays open without a word of why, or of whom to ask.",
        "add a rule for them, where nobody knows one that says not-established and whom to ask; or name in what the coverage "
            + "'lacks' their category, or the GVM that they are over, as 'over 4.5 t'",
        Severity.Warning
    );

    internal static IEnumerable<Problem> Find(Book book)
    {
        var named = CoverWalk.Named(book);
        return from place in book.Jurisdictions
            from topic in place
                .Rules.Where(rule => !rule.GovernedByTravel && rule.Versions.Any(version => version.Decides))
                .Select(rule => rule.Topic)
                .Distinct()
            from fault in CoverWalk.Faults(book, place, topic, named)
            where !IsWritten(place.Coverage.FirstOrDefault(coverage => coverage.Topic == topic)?.Lacks ?? "", fault.Witness!)
            select Info.At(fault.Mark, fault.Text);
    }

    /// <summary>Whether what the coverage lacks names the category, or says that it is over a GVM (10,000 lb).</summary>
    private static bool IsWritten(string lacks, Witness vehicle) =>
        (vehicle.Words.TryGetValue(KnownWords.Category, out var category) && lacks.Split(' ', ',', '.', '(', ')').Contains(category))
        || vehicle.Measures.Any(pair =>
            pair.Key.Name == KnownWords.Gvm
            && NoteFigure
                .Figures(lacks.Replace(",", ""), "over ")
                .Any(figure => figure.Unit.Dimension == Dimension.Mass && pair.Value > figure.Base)
        );
}
