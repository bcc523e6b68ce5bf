using RuleBook.InForce;
using RuleBook.Telling;
using RuleBook.Text;

namespace RuleBook.Site.Views;

/// <summary>A ready-made report of a wrong figure, to be completed by whoever found it.</summary>
internal static class Correction
{
    public static string Of(SiteBook site, ResolvedVersion version, Mark mark) => string.Join('\n',
    [
        $"Correction: {version.Rule.Id}, {Phrases.InForce(version)}",
        $"Data: {mark.File}:{mark.Line}",
        $"Book: {site.Book.Digest}",
        $"The book says: {Summary.Of(site, version.Content)}",
        "It should say: ",
        "Seen in (title, clause, date, address): ",
    ]);
}
