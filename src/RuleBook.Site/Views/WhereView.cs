using RuleBook.InForce;
using RuleBook.Law;
using RuleBook.Telling;

namespace RuleBook.Site.Views;

/// <summary>
/// Where a rule of the comparison stands: its clause and its data line. The report of a mistake stands with the rule; the page's script
/// leads there.
/// </summary>
/// <param name="Id">By which a cell opens it.</param>
/// <param name="Title">What the rule is on.</param>
/// <param name="Url">To the rule.</param>
/// <param name="Clause">The document that says it best, with the clause.</param>
/// <param name="More">How many others are cited.</param>
/// <param name="Line">To the data line.</param>
/// <param name="Ask">Whom to ask where nothing is established; empty elsewhere.</param>
internal sealed record WhereView(string Id, string Title, string Url, string Clause, int More, string Line, string Ask)
{
    public static WhereView Of(ResolvedVersion version, string id)
    {
        var clauses = version
            .Sources.OrderBy(cited => cited.Source.ReadAs)
            .Select(cited => cited.Citation.Clause is { } clause ? $"{cited.Source.Title}, {clause}" : cited.Source.Title)
            .Distinct()
            .ToArray();
        return new WhereView(
            id,
            version.Rule.Title,
            Links.Rule(version.Rule),
            clauses.FirstOrDefault("none is cited"),
            Math.Max(0, clauses.Length - 1),
            Links.Line(Links.Mark(version)),
            version.Content is NotEstablished unknown ? Phrases.Sentence(unknown.Ask.Trim()) : ""
        );
    }
}

/// <summary>The rules that the cells of one comparison lean on, each once.</summary>
internal sealed class WhereList
{
    private readonly Dictionary<(string Rule, string From), WhereView> views = [];

    public WhereView[] Views => [.. views.Values];

    /// <summary>The name under which the cell of a rule finds it.</summary>
    public string Id(ResolvedVersion version)
    {
        var key = (version.Rule.Id, version.From?.Text ?? "");
        if (!views.TryGetValue(key, out var view))
            views[key] = view = WhereView.Of(version, $"w{views.Count + 1}");
        return view.Id;
    }
}
