using System.Text.Json;
using RuleBook.Site.Templating;

namespace RuleBook.Site.Forms;

/// <summary>
/// Makes the form from its description, <c>site-templates/form.json</c>: what is asked for and in which order. Facts, measures, conditions,
/// fuels and places come from the book.
/// </summary>
internal sealed class FormReader(SiteBook site)
{
    private readonly FormWords words = new(site);

    public static FormPart[] Read(SiteBook site)
    {
        using var description = JsonDocument.Parse(Templates.File("form.json"));
        var parts = description.RootElement.GetProperty("parts");
        var reader = new FormReader(site);
        reader.words.Name(parts);
        return [.. parts.EnumerateArray().Select(reader.Part)];
    }

    private FormPart Part(JsonElement part) =>
        new(
            Text(part, "part"),
            part.TryGetProperty("open", out var open) && open.GetBoolean(),
            Text(part, "note"),
            [.. part.GetProperty("items").EnumerateArray().SelectMany(Items)]
        );

    private IEnumerable<FormItem> Items(JsonElement item)
    {
        if (item.TryGetProperty("part", out _))
            return [new FormItem(Part: Part(item))];
        if (item.TryGetProperty("rows", out var list) && list.ValueKind == JsonValueKind.String)
            return [new FormItem(Rows: Rows(item))];
        if (item.TryGetProperty("grid", out _))
            return [new FormItem(Grid: Grid(item))];
        if (item.TryGetProperty("path", out var path))
            return [new FormItem(Field(item, path.GetString()!))];
        var (from, under) = item.EnumerateObject().Select(each => (each.Name, each.Value.GetString()!)).Single();
        var fields = from switch
        {
            "fact" => words.Facts(fact => fact.Name == under),
            "facts" => words.Facts(fact => words.IsOpen(fact.Job, under)),
            "measure" => words.Measures(measure => measure.Name == under),
            "measures" => words.Measures(measure => words.IsOpen(measure.Job, under)),
            "uncertainties" => words.Uncertainties(under),
            "conditions" => words.Conditions(under),
            _ => throw new InvalidOperationException($"the form knows no '{from}'"),
        };
        return fields.Select(field => new FormItem(field));
    }

    private FormRows Rows(JsonElement rows) =>
        new(
            Text(rows, "rows"),
            Text(rows, "label"),
            Text(rows, "one"),
            rows.TryGetProperty("start", out var start) ? start.GetInt32() : 0,
            Text(rows, "note"),
            [.. rows.GetProperty("columns").EnumerateArray().Select(column => Field(column, Text(column, "key")))]
        );

    private FormGrid Grid(JsonElement grid)
    {
        var columns = grid.GetProperty("columns")
            .EnumerateArray()
            .Select(column => (Under: Text(column, "under"), Label: Text(column, "label")))
            .ToArray();
        return new FormGrid(
            Text(grid, "grid"),
            Text(grid, "note"),
            [.. columns.Select(column => column.Label)],
            [
                .. grid.GetProperty("rows")
                    .EnumerateArray()
                    .Select(row => new FormGridRow(
                        Text(row, "label"),
                        Text(row, "unit"),
                        [
                            .. columns.Select(column =>
                                Field(row, $"{column.Under}.{Text(row, "key")}") with
                                {
                                    Label = $"{Text(row, "label")}, {column.Label}",
                                }
                            ),
                        ]
                    )),
            ]
        );
    }

    private FormField Field(JsonElement field, string path)
    {
        var (unit, choice) = (Text(field, "unit"), Text(field, "choice"));
        var input =
            choice.Length > 0 ? "choice"
            : unit.Length > 0 ? "amount"
            : Text(field, "input") is { Length: > 0 } own ? own
            : "text";
        var empty = Text(field, "empty") is { Length: > 0 } said ? said : "not known";
        return new FormField(path, Text(field, "label"), input, unit, Text(field, "hint"), words.Choices(choice), empty, words.Url(path));
    }

    internal static string Text(JsonElement element, string key) => element.TryGetProperty(key, out var value) ? value.GetString()! : "";
}
