using System.Collections.Immutable;
using System.Globalization;
using System.Text.Json;
using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using RuleBook.InForce;
using RuleBook.Law;
using RuleBook.Site.Tests.Pages;
using RuleBook.Units;

namespace RuleBook.Site.Tests.ReadBack;

/// <summary>
/// The comparison read back from its cells, for every vehicle that one can choose, on the day of the site and on days on which something
/// changed: each version in force is told in its row, and no row tells anything else.
/// </summary>
public sealed class MatrixReadBackTests
{
    private static readonly Book Book = TheBook.Input.Book;

    private static readonly (string Question, Pathway Pathway)[] Ways =
    [
        ("Free up to", Pathway.NoCertificate),
        ("Certified up to", Pathway.Certificate),
        ("With approval first, up to", Pathway.Approval),
    ];

    public static TheoryData<string> Paths() =>
        [
            .. TheBook
                .Site.Select(file => file.Path)
                .Where(path => path.StartsWith("compare", StringComparison.Ordinal) && path.EndsWith(".html", StringComparison.Ordinal))
                .Where((path, i) => path.Count(letter => letter == '/') < 2 || i % 25 == 0),
        ];

    [Theory]
    [MemberData(nameof(Paths))]
    public void Each_state_s_limits_of_the_day_are_told_in_its_row_and_nothing_else_is(string path)
    {
        var page = Parsed.Of(TheBook.Site.Where(file => file.Path == path)).Single().Document;
        var day = DateOnly.Parse(page.QuerySelector("#on")!.GetAttribute("value")!, CultureInfo.InvariantCulture);
        ReadVehicle[] vehicles =
        [
            .. page.All("#vehicle option").Select(option => ReadVehicle.All.Single(vehicle => vehicle.Id == option.GetAttribute("value"))),
        ];
        foreach (var table in page.All("table.matrix").Where(table => table.GetAttribute("data-topic") != "certification"))
            Check(table, table.GetAttribute("data-topic")!, page, day, vehicles);
    }

    private static void Check(IElement table, string topic, IHtmlDocument page, DateOnly day, ReadVehicle[] vehicles)
    {
        ReadRow[] rows = [.. table.QuerySelectorAll("tbody tr").Select(ReadRow.Of)];
        rows.ShouldAllBe(row => row.Hidden != row.IsFor(0));
        var told = new HashSet<ReadRow>(rows.Where(row => row.About.Length == 0), ReferenceEqualityComparer.Instance);
        foreach (var place in page.All("[name=state]").Select(box => Book.Jurisdiction(box.GetAttribute("value")!)!))
        foreach (var (at, vehicle) in vehicles.Index())
        {
            var rules = place.Rules.Where(rule => rule.Topic == topic && rule.For.AnyOf.Any(vehicle.MayPass)).ToArray();
            rows.Count(row => row.Place == place.Id && row.About.Length == 0 && row.IsFor(at)).ShouldBe(rules.Length == 0 ? 1 : 0);
            foreach (var rule in rules)
            {
                var versions = Resolver.Resolve(Book, rule, day);
                foreach (var version in versions)
                {
                    var row = rows.FirstOrDefault(row =>
                        row.Place == place.Id
                        && row.About == rule.Title
                        && row.IsFor(at)
                        && Tells(row, version, vehicle, versions.Length == 1)
                    );
                    row.ShouldNotBeNull($"{rule.Id} on {day} for {vehicle.Id}");
                    told.Add(row);
                }
            }
        }

        rows.Where(row => !told.Contains(row)).ShouldBeEmpty($"told on {day}, and in no version in force");
    }

    private static bool Tells(ReadRow row, ResolvedVersion version, ReadVehicle vehicle, bool certain) =>
        Ways.All(way => !row.Cells.TryGetValue(way.Question, out var cell) || TellsWay(cell, version, vehicle, way.Pathway))
        && (!row.Cells.TryGetValue("Beyond that", out var beyond) || beyond.Only == Beyond(version))
        && row.Cells.Values.Where(cell => cell.Standing.Length > 0 && cell.IsOfRule).All(cell => certain != cell.Says("day open"))
        && row.Cells.Values.Where(cell => cell.IsOfRule && ReadCell.Known.Any(cell.Says))
            .All(cell => cell.Says("disputed") != version.Disputes.IsEmpty);

    private static string Beyond(ResolvedVersion version) =>
        version.Content switch
        {
            Stated { Beyond: { } beyond } => ReadTier.Pathways[beyond],
            NotRegulated => "not regulated",
            _ => "not established",
        };

    private static bool TellsWay(ReadCell cell, ResolvedVersion version, ReadVehicle vehicle, Pathway pathway)
    {
        if (version.Content is not Stated stated)
            return cell.Only == (version.Content is NotRegulated ? "not regulated" : "not established");
        Tier[] open = [.. stated.Tiers.Where(tier => tier.Pathway == pathway && vehicle.MayPass(tier.When))];
        if (open.Length == 0)
            return cell.Only
                == (
                    stated.Beyond is not { } beyond ? "not established"
                    : beyond == pathway ? "whatever is not named before"
                    : "no such way"
                );
        if (cell.Lines is [{ Text: "how far is not established" }])
            return open.All(tier => !tier.Limits.IsEmpty && tier.Limits.All(limit => limit.Kind == LimitKind.NotEstablished));
        return cell.Lines.Count == open.Length
            && cell.Lines.Zip(open)
                .Index()
                .All(each =>
                    ReadTier.Of(each.Item.First.Text, Book.Vocabulary).Tells(each.Item.Second, Book.Vocabulary, open.Length > 1)
                    && (open.Length == 1) == (each.Item.First.Name.Length == 0)
                    && (open.Length == 1 || each.Item.First.Name.StartsWith($"{(char)('A' + each.Index)} ", StringComparison.Ordinal))
                    && (each.Item.First.When.Length > 0) == !vehicle.DoesPass(each.Item.Second.When)
                )
            && WeakestOf(open, version) == cell.HowKnown;
    }

    /// <summary>How the weakest figure of some ways is known.</summary>
    private static string WeakestOf(Tier[] open, ResolvedVersion version)
    {
        Standing[] all =
        [
            .. open.SelectMany(tier =>
                tier.Limits.Where(limit => limit.Kind != LimitKind.NotEstablished).Select(limit => version.Evidence.Of(tier, limit))
            ),
        ];
        var weakest = all.Length == 0 ? version.Evidence.Of(Part.Existence) : all.MaxBy(standing => standing.Weakness)!;
        return weakest.Basis is { } basis ? ReadCell.Known[(int)basis] : ReadCell.Known[^1];
    }
}

/// <summary>A row as it stands in the page.</summary>
internal sealed record ReadRow(string Place, string About, string Vehicles, bool Hidden, Dictionary<string, ReadCell> Cells)
{
    public static ReadRow Of(IElement row) =>
        new(
            row.GetAttribute("data-c")!,
            row.QuerySelector("th small")?.TextContent ?? "",
            row.GetAttribute("data-v")!,
            row.HasAttribute("hidden"),
            row.QuerySelectorAll("td").ToDictionary(cell => cell.GetAttribute("data-label")!, ReadCell.Of)
        );

    public bool IsFor(int vehicle) => Vehicles == "*" || Vehicles.Split(' ').Contains(vehicle.ToString(CultureInfo.InvariantCulture));
}

/// <summary>A cell as it stands in the page.</summary>
internal sealed record ReadCell(string Question, IReadOnlyList<(string Name, string Text, string When)> Lines, string Standing)
{
    /// <summary>From the strongest to the weakest.</summary>
    public static readonly string[] Known = ["authority's text", "second hand", "common practice", "from memory", "no source"];

    /// <summary>The last two questions are answered by the scheme, not by the rule.</summary>
    public bool IsOfRule => Question is not ("Who certifies" or "Before the work");

    public string HowKnown => Known.FirstOrDefault(Says, "");

    /// <summary>What it says where that is one line.</summary>
    public string? Only => Lines is [var line] ? line.Text : null;

    public bool Says(string word) => Standing.Split(", ").Contains(word);

    public static ReadCell Of(IElement cell)
    {
        var lines = cell.QuerySelectorAll("p")
            .Select(line =>
                (
                    line.QuerySelector("i")?.TextContent ?? "",
                    (line.QuerySelector("b")?.TextContent ?? line.TextContent).Trim(),
                    line.QuerySelector("small")?.TextContent ?? ""
                )
            )
            .ToArray();
        return new(
            cell.GetAttribute("data-label")!,
            lines.Length > 0 ? lines : [("", cell.TextContent.Trim(), "")],
            cell.Children.LastOrDefault(part => part.LocalName is "button" or "a" or "small")?.TextContent ?? ""
        );
    }
}

/// <summary>A vehicle of <c>site-templates/compare.json</c>.</summary>
internal sealed record ReadVehicle(string Id, Dictionary<string, string> Words, Dictionary<string, decimal> Measures)
{
    public static ImmutableArray<ReadVehicle> All { get; } =
    [
        .. JsonDocument
            .Parse(File.ReadAllText(Path.Combine(TheBook.Folder, "site-templates", "compare.json")))
            .RootElement.GetProperty("vehicles")
            .EnumerateArray()
            .Select(vehicle => new ReadVehicle(
                vehicle.GetProperty("id").GetString()!,
                vehicle.GetProperty("facts").EnumerateObject().ToDictionary(fact => fact.Name, fact => fact.Value.GetString()!),
                vehicle
                    .GetProperty("measures")
                    .EnumerateObject()
                    .ToDictionary(fact => fact.Name, fact => ReadRange.Of(fact.Value.GetString()!)!.High!.Value)
            )),
    ];

    public bool MayPass(Predicate predicate) => predicate.Tests.All(test => !IsKnown(test) || Holds(test));

    public bool DoesPass(Predicate predicate) => predicate.Tests.All(test => IsKnown(test) && Holds(test));

    private bool IsKnown(FactTest test) => test.Bounds is null ? Words.ContainsKey(test.Fact) : Measures.ContainsKey(test.Fact);

    private bool Holds(FactTest test) =>
        test.Bounds is { } bounds
            ? Reaches(bounds.Lower, Measures[test.Fact], 1) && Reaches(bounds.Upper, Measures[test.Fact], -1)
            : test.OneOf.Contains(Words[test.Fact]);

    private static bool Reaches(Bound? bound, decimal value, int side) =>
        bound is null || (value.CompareTo(bound.Value.ToDecimal()) * side) is var past && (past > 0 || (past == 0 && bound.Closed));
}
