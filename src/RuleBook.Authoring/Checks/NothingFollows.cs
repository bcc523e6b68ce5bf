using RuleBook.Text;

namespace RuleBook.Authoring.Checks;

/// <summary>A version that ends, the last of its rule, after which nothing is said.</summary>
internal static class NothingFollows
{
    internal static readonly CheckInfo Info = new(
        "nothing-follows",
        "the last version of a rule ends, and nothing follows",
        "From that day on every answer is open: that a rule was repealed and that nobody looked are two things.",
        "say what holds from that day on: 'not-regulated: Repealed.', or 'not-established' and whom to ask; or leave 'until' out",
        Severity.Warning
    );

    internal static IEnumerable<Problem> Find(Inspected book) =>
        book
            .Rules.Select(rule => rule.Versions.LastOrDefault(version => version.Decides))
            .Where(last => last?.Until is { } until && !(until.Latest <= (last.From ?? last.InForceBy)?.Earliest))
            .Select(last => Info.At(book.Key(last!.Mark, "until"), $"until {last.Until}, and nothing is said of the time after"));
}
