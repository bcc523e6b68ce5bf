using System.Collections.Immutable;
using System.Text;
using System.Xml;
using System.Xml.Linq;
using RuleBook.Law;
using RuleBook.Tables;

namespace RuleBook.Authoring.Exports;

/// <summary>
/// The rules in force of a place as a model of DMN 1.3 (OMG formal/21-01-01): a decision table a version, hit policy first.
/// </summary>
internal sealed class DmnModel
{
    private static readonly XNamespace Dmn = "https://www.omg.org/spec/DMN/20191111/MODEL/";

    private readonly DecisionTable table;
    private readonly DmnTable rows;
    private readonly ImmutableSortedDictionary<string, DmnExpression> expressions;
    private readonly SortedDictionary<string, XElement> inputs = new(StringComparer.Ordinal);

    private DmnModel(DecisionTable table)
    {
        this.table = table;
        rows = new DmnTable(table);
        expressions = table
            .Axes.SelectMany(axis => DmnQuantities.Of(table, axis.Sum))
            .DistinctBy(each => each.Name)
            .ToImmutableSortedDictionary(each => each.Name, each => each, StringComparer.Ordinal);
    }

    /// <summary>The id of the decision of a version; a rule of which several versions may be in force has one a version.</summary>
    public static string Id(DecisionTable table, int rule, int version) =>
        DmnTable.Name(table.RuleIds[rule])
        + (
            table.Rules[rule].EndVersion - table.Rules[rule].FirstVersion > 1
                ? $"_version_{version - table.Rules[rule].FirstVersion + 1}"
                : ""
        );

    /// <summary>The model as XML, the same bytes for the same table.</summary>
    /// <param name="ruling">What judges in the place.</param>
    /// <param name="about">Edition, day and cautions, for readers.</param>
    public static string Of(Ruling ruling, string about) => new DmnModel(ruling.Table).Text(ruling.Place, about);

    private string Text(string place, string about)
    {
        var decisions = new List<XElement>();
        for (var rule = 0; rule < table.Rules.Length; rule++)
        for (var at = table.Rules[rule].FirstVersion; at < table.Rules[rule].EndVersion; at++)
            decisions.Add(Table(rule, at));
        var known = expressions.Values.Select(Literal).ToArray();
        var model = new XElement(
            Dmn + "definitions",
            new XAttribute("id", DmnTable.Name(place)),
            new XAttribute("name", place),
            new XAttribute("namespace", $"urn:rulebook:{place}"),
            new XAttribute("expressionLanguage", "https://www.omg.org/spec/DMN/20191111/FEEL/"),
            Describe(about),
            inputs.Values,
            known,
            decisions
        );
        var text = new StringBuilder();
        using (
            var writer = XmlWriter.Create(
                text,
                new XmlWriterSettings
                {
                    Indent = true,
                    NewLineChars = "\n",
                    OmitXmlDeclaration = true,
                }
            )
        )
            model.Save(writer);
        return $"<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n{text}\n";
    }

    private XElement Table(int rule, int at)
    {
        var (id, lines) = (Id(table, rule, at), rows.Rows(at));
        string[] columns = [.. lines.SelectMany(line => line.Cells.Keys).Distinct().Order(StringComparer.Ordinal)];
        var version = table.Version(at);
        return new XElement(
            Dmn + "decision",
            new XAttribute("id", id),
            new XAttribute("name", $"{table.RuleIds[rule]} from {version.From?.Text ?? "an unknown day"}"),
            Describe(string.Join("; ", version.Sources.Select(Cited).Prepend(version.Rule.Title))),
            new XElement(Dmn + "variable", new XAttribute("name", id), new XAttribute("typeRef", "string")),
            columns.Select(column => Requires(id, column)),
            new XElement(
                Dmn + "decisionTable",
                new XAttribute("id", $"{id}.table"),
                new XAttribute("hitPolicy", "FIRST"),
                columns.Select(column => new XElement(
                    Dmn + "input",
                    new XAttribute("id", $"{id}.{column}"),
                    new XAttribute("label", column),
                    new XElement(
                        Dmn + "inputExpression",
                        new XAttribute("id", $"{id}.{column}.read"),
                        new XAttribute("typeRef", IsNumber(column) ? "number" : "string"),
                        Words(column)
                    )
                )),
                new XElement(
                    Dmn + "output",
                    new XAttribute("id", $"{id}.pathway"),
                    new XAttribute("name", "pathway"),
                    new XAttribute("typeRef", "string")
                ),
                new XElement(Dmn + "annotation", new XAttribute("name", "tier")),
                lines.Select(
                    (line, number) =>
                        new XElement(
                            Dmn + "rule",
                            new XAttribute("id", $"{id}.{number + 1}"),
                            columns.Select(column => new XElement(
                                Dmn + "inputEntry",
                                new XAttribute("id", $"{id}.{number + 1}.{column}"),
                                Words(line.Cells.TryGetValue(column, out var cell) ? cell.Text : "-")
                            )),
                            new XElement(Dmn + "outputEntry", new XAttribute("id", $"{id}.{number + 1}.gives"), Words($"\"{line.Gives}\"")),
                            new XElement(Dmn + "annotationEntry", Words(line.Why))
                        )
                )
            )
        );
    }

    /// <summary>A quantity that follows from others, as a decision of its own.</summary>
    private XElement Literal(DmnExpression expression) =>
        new(
            Dmn + "decision",
            new XAttribute("id", expression.Name),
            new XAttribute("name", expression.Name),
            new XElement(Dmn + "variable", new XAttribute("name", expression.Name), new XAttribute("typeRef", "number")),
            expression.Reads.Distinct().Select(read => Requires(expression.Name, read)),
            new XElement(Dmn + "literalExpression", new XAttribute("id", $"{expression.Name}.text"), Words(expression.Text))
        );

    /// <summary>That a decision reads something, which is then an input unless it is a decision itself.</summary>
    private XElement Requires(string by, string name)
    {
        var follows = expressions.ContainsKey(name);
        if (!follows)
            inputs.TryAdd(name, Input(name));
        return new XElement(
            Dmn + "informationRequirement",
            new XAttribute("id", $"{by}.reads.{name}"),
            new XElement(Dmn + (follows ? "requiredDecision" : "requiredInput"), new XAttribute("href", $"#{name}"))
        );
    }

    private XElement Input(string name) =>
        new(
            Dmn + "inputData",
            new XAttribute("id", name),
            new XAttribute("name", name),
            Describe(About(name)),
            new XElement(Dmn + "variable", new XAttribute("name", name), new XAttribute("typeRef", IsNumber(name) ? "number" : "string"))
        );

    private string About(string name)
    {
        if (table.Vocabulary.Facts.Values.FirstOrDefault(fact => DmnTable.Name(fact.Name) == name) is { } fact)
            return $"{fact.Title}: {string.Join(", ", fact.Values)}";
        if (table.Vocabulary.Conditions.Values.FirstOrDefault(condition => DmnTable.Name(condition.Name) == name) is { } condition)
            return $"{condition.Title}: met, not met; null while it is to be shown";
        var end = DmnQuantities.Ends.First(each => name.EndsWith($"_{each}", StringComparison.Ordinal));
        var measure = table.Vocabulary.Measures.Values.First(each => $"{DmnTable.Name(each.Name)}_{end}" == name);
        return $"{measure.Title}: the {(end == "low" ? "least" : "most")} that it can be, in "
            + $"{(measure.IsDate ? "days as yyyymmdd" : VocabularyRelations.Unit(measure))}; both ends the same where it is known";
    }

    private bool IsNumber(string name) =>
        expressions.ContainsKey(name)
        || table.Vocabulary.Measures.Keys.Any(measure => DmnQuantities.Ends.Any(end => $"{DmnTable.Name(measure)}_{end}" == name));

    private static string Cited(CitedSource cited) =>
        cited.Source.Title + (cited.Citation.Clause is { Length: > 0 } clause ? $", {clause}" : "");

    private static XElement Describe(string text) => new(Dmn + "description", text);

    private static XElement Words(string text) => new(Dmn + "text", text);
}
