using System.Text.Json;
using RuleBook.Law;

namespace RuleBook.Site.Forms;

/// <summary>What the book gives the form: the words that a job may use, where no field of the description names them itself.</summary>
internal sealed class FormWords(SiteBook site)
{
    private readonly HashSet<string> named = new(StringComparer.Ordinal);

    /// <summary>Remembers the paths that the description gives a field of its own.</summary>
    public void Name(JsonElement description)
    {
        if (description.ValueKind == JsonValueKind.Array)
            foreach (var item in description.EnumerateArray())
                Name(item);
        if (description.ValueKind != JsonValueKind.Object)
            return;
        if (description.TryGetProperty("path", out var path))
            named.Add(path.GetString()!);
        if (description.TryGetProperty("fact", out var fact))
            named.Add(site.Words.Facts.GetValueOrDefault(fact.GetString()!)?.Job ?? "");
        if (description.TryGetProperty("measure", out var measure))
            named.Add(site.Words.Measures.GetValueOrDefault(measure.GetString()!)?.Job ?? "");
        if (description.TryGetProperty("grid", out _))
            foreach (var column in description.GetProperty("columns").EnumerateArray())
            foreach (var row in description.GetProperty("rows").EnumerateArray())
                named.Add($"{FormReader.Text(column, "under")}.{FormReader.Text(row, "key")}");
        if (description.TryGetProperty("items", out var items))
            Name(items);
    }

    /// <summary>Whether what stands at a path of the job is asked for under <paramref name="under"/> and has no field of its own.</summary>
    public bool IsOpen(string path, string under) => path.StartsWith(under, StringComparison.Ordinal) && !named.Contains(path);

    public IEnumerable<FormField> Facts(Func<FactWord, bool> which) =>
        site
            .Words.Facts.Values.Where(which)
            .OrderBy(fact => fact.Mark)
            .Select(fact => Choice(fact.Job, fact.Title, [.. fact.Values], "not known", Links.Word("fact", fact.Name)));

    public IEnumerable<FormField> Measures(Func<Measure, bool> which) =>
        site
            .Words.Measures.Values.Where(measure => !measure.IsDate && !measure.IsDerived && which(measure))
            .OrderBy(measure => measure.Mark)
            .DistinctBy(measure => measure.Job)
            .Select(measure => new FormField(
                measure.Job,
                measure.Title,
                "amount",
                measure.Unit.Symbol,
                "",
                [],
                "",
                Links.Word("measure", measure.Name)
            ));

    /// <summary>A stated uncertainty for each measure that has a default one.</summary>
    public IEnumerable<FormField> Uncertainties(string under) =>
        site
            .Book.Reference.Uncertainties.Keys.Order(StringComparer.Ordinal)
            .Select(name =>
                site.Words.Measures.TryGetValue(name, out var measure)
                    ? new FormField($"{under}{name}", $"uncertainty of the {measure.Title}", "amount", measure.Unit.Symbol, "", [], "", "")
                    : new FormField($"{under}{name}", "uncertainty of a weighbridge reading", "amount", "kg", "", [], "", "")
            );

    public IEnumerable<FormField> Conditions(string under) =>
        site
            .Words.Conditions.Values.OrderBy(term => term.Title, StringComparer.Ordinal)
            .Select(term => new FormField(
                $"{under}{term.Name}",
                term.Title,
                "choice",
                "",
                "",
                [new ChoiceGroup("", [new("yes", "met"), new("no", "not met")])],
                "to be shown",
                Links.Word("condition", term.Name)
            ));

    public ChoiceGroup[] Choices(string from) =>
        from switch
        {
            "" => [],
            "places" => Places(),
            "yes-no" => [Group("yes", "no")],
            "mass-states" => [Group("tare", "unladen", "loaded")],
            "fuels" => [Group([.. site.Book.Reference.Fluids.Keys.Order(StringComparer.Ordinal)])],
            _ => throw new InvalidOperationException($"the form knows no choice '{from}'"),
        };

    /// <summary>To the definition of what stands at a path; empty for what the vocabulary does not define.</summary>
    public string Url(string path) =>
        site.Words.Measures.Values.FirstOrDefault(measure => measure.Job == path && !measure.IsDerived) is { } measure
            ? Links.Word("measure", measure.Name)
            : "";

    private static FormField Choice(string path, string label, string[] values, string empty, string url) =>
        new(path, label, "choice", "", "", [Group(values)], empty, url);

    private static ChoiceGroup Group(params string[] values) => new("", [.. values.Select(value => new Choice(value, value))]);

    private ChoiceGroup[] Places() =>
        [
            .. site
                .Places.Where(place => place.Registers)
                .GroupBy(place => place.Within ?? place.Id)
                .OrderBy(nation => nation.Key, StringComparer.Ordinal)
                .Select(nation => new ChoiceGroup(
                    site.PlaceName(nation.Key),
                    [.. nation.Select(place => new Choice(place.Id, place.Name))]
                )),
        ];
}
