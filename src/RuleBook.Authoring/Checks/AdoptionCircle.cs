using RuleBook.Text;

namespace RuleBook.Authoring.Checks;

/// <summary>A chain of adoptions that comes back to its start.</summary>
internal static class AdoptionCircle
{
    internal static readonly CheckInfo Info = new(
        "adoption-circle",
        "rules adopt one another in a circle",
        "Following the adoption would never end.",
        "one of them has to be stated in full"
    );

    internal static IEnumerable<Problem> Find(Inspected book)
    {
        var adopted = book
            .Adoptions.Select(pair => (pair.Rule.Id, Target: book.Book.Rule(pair.Adoption.Rule)?.Id))
            .Where(pair => pair.Target is not null)
            .ToLookup(pair => pair.Id, pair => pair.Target!);
        return book
            .Adoptions.Where(pair => Reach(adopted, book.Book.Rule(pair.Adoption.Rule)?.Id).Contains(pair.Rule.Id))
            .Select(pair => Info.At(book.Value(pair.Adoption.Mark, "rule"), $"'{pair.Adoption.Rule}' leads back to '{pair.Rule.Id}'"));
    }

    private static HashSet<string> Reach(ILookup<string, string> adopted, string? start)
    {
        var reached = new HashSet<string>(StringComparer.Ordinal);
        var open = new Stack<string>(start is null ? [] : [start]);
        while (open.TryPop(out var rule))
            if (reached.Add(rule))
                foreach (var next in adopted[rule])
                    open.Push(next);
        return reached;
    }
}
