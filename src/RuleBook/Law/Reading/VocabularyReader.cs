using System.Collections.Immutable;
using System.Globalization;
using Fractions;
using RuleBook.Text;
using RuleBook.Units;

namespace RuleBook.Law.Reading;

/// <summary>Reads the files of <c>schema/vocabulary</c>.</summary>
internal static class VocabularyReader
{
    public static (Vocabulary Vocabulary, ImmutableArray<string> Cautions) Read(IReadOnlyList<BookFile> files, List<Problem> problems)
    {
        var categories = Each("categories", files, problems, ReadCategory).DistinctBy(category => category.Name).ToArray();
        var measures = Each("measures", files, problems, ReadMeasure);
        var conditions = Each("conditions", files, problems, fields => ReadCondition(fields, measures))
            .DistinctBy(condition => condition.Term.Name)
            .ToArray();
        var figured = conditions
            .Select(condition => condition.Figured)
            .OfType<FiguredCondition>()
            .ToImmutableDictionary(condition => condition.Name);
        var plain = conditions
            .Where(condition => condition.Figured is null)
            .Select(condition => condition.Term)
            .ToImmutableDictionary(term => term.Name);
        return (
            new Vocabulary(
                measures.DistinctBy(measure => measure.Name).ToImmutableDictionary(measure => measure.Name).With(files),
                Each("facts", files, problems, fields => ReadFact(fields, categories))
                    .DistinctBy(fact => fact.Name)
                    .ToImmutableDictionary(fact => fact.Name),
                plain
                    .Values.Concat(new GivenConditions(plain, figured).In(files))
                    .DistinctBy(term => term.Name)
                    .ToImmutableDictionary(term => term.Name),
                Each("topics", files, problems, ReadTopic).DistinctBy(topic => topic.Name).ToImmutableDictionary(topic => topic.Name),
                Terms("pathways", "pathway", files, problems).DistinctBy(term => term.Name).ToImmutableDictionary(term => term.Name)
            )
            {
                Figured = figured,
                CategoryGvms = categories
                    .Where(category => category.Gvm is not null)
                    .ToImmutableDictionary(category => category.Name, category => category.Gvm!),
            },
            [.. Each("cautions", files, problems, fields => fields.Required("caution"))]
        );
    }

    private static List<T> Each<T>(string name, IReadOnlyList<BookFile> files, List<Problem> problems, Func<Fields, T> read)
        where T : class
    {
        if (files.FirstOrDefault(file => file.Path == $"schema/vocabulary/{name}.yaml") is not { } file)
            return [];
        var top = new Fields(file.Root, problems);
        var items = top.List(
            name,
            node =>
            {
                var fields = new Fields(node, problems);
                var item = read(fields);
                fields.Done();
                return item;
            }
        );
        top.Done();
        return [.. items];
    }

    private static List<Term> Terms(string name, string key, IReadOnlyList<BookFile> files, List<Problem> problems) =>
        Each(name, files, problems, fields => ReadTerm(fields, key));

    private static Term ReadTerm(Fields fields, string key) =>
        new(fields.Required(key), fields.Required("title"), fields.Required("definition"), fields.Mark);

    private static readonly ImmutableArray<(string Word, Comparison Comparison)> Comparisons =
    [
        ("tyres-against-placard", Comparison.TyresAgainstPlacard),
        ("tyres-against-ratings", Comparison.TyresAgainstRatings),
        ("axles-against-gvm", Comparison.AxlesAgainstGvm),
        ("trailer-brakes", Comparison.TrailerBrakes),
        ("trailer-against-ratings", Comparison.TrailerAgainstRatings),
        ("trailer-against-apparatus", Comparison.TrailerAgainstApparatus),
        ("wheel-offset-against-figure", Comparison.WheelOffsetAgainstFigure),
    ];

    private static Condition ReadCondition(Fields fields, IReadOnlyList<Measure> measures)
    {
        var decidedBy = fields.Word("decided-by", [.. Comparisons.Select(each => each.Word)]);
        var term = ReadTerm(fields, "condition") with
        {
            DecidedBy = decidedBy is null ? null : Comparisons.Single(each => each.Word == decidedBy).Comparison,
            FailsOver = fields.Nested("fails-over") is { } failing ? ReadFailing(failing, measures) : null,
        };
        if (term.DecidedBy == Comparison.WheelOffsetAgainstFigure && !fields.Has("figure"))
            fields.Add(
                "key-without-effect",
                fields.Node("decided-by")!.Mark,
                "'decided-by' compares with a figure here, and the condition takes none",
                "say 'figure: mm', or take it out"
            );
        return new Condition(term, FiguredConditions.Read(fields, term));
    }

    private static FailingMeasure ReadFailing(Fields fields, IReadOnlyList<Measure> measures)
    {
        var (measure, share) = (fields.Required("measure"), fields.Required("share"));
        fields.Done();
        string[] shares = [.. measures.Where(each => each.Unit.Dimension == Dimension.Ratio).Select(each => each.Name)];
        if (fields.Node("measure") is { } named && !shares.Contains(measure))
            fields.Add("unknown-measure", named.Mark, $"'{measure}' is not a measure in per cent", Spelling.Tip(measure, shares));
        if (Fraction.TryParse(share, NumberStyles.None, CultureInfo.InvariantCulture, out var part))
            return new FailingMeasure(measure, 100 * part);
        fields.Add("not-a-share", fields.Node("share")?.Mark ?? fields.Mark, $"'{share}' is not a fraction", "write it as 1/3");
        return new FailingMeasure(measure, 100);
    }

    private static Category ReadCategory(Fields fields)
    {
        fields.Required("title");
        fields.Required("definition");
        return new Category(
            fields.Required("category"),
            fields.Nested("gvm") is { } gvm ? ReadGvm(gvm) : null,
            fields.YesNo("bound-where-named") ?? false
        );
    }

    private static CategoryGvm ReadGvm(Fields fields)
    {
        var gvm = new CategoryGvm(
            fields.Quantity("over", Dimension.Mass)?.Base,
            fields.Quantity("at-most", Dimension.Mass)?.Base,
            fields.YesNo("assumed") ?? false
        );
        fields.Done();
        return gvm;
    }

    private static Measure ReadMeasure(Fields fields)
    {
        var name = fields.Required("measure");
        var title = fields.Required("title");
        var symbol = fields.Required("unit");
        var isDate = symbol == "date";
        var unit = isDate ? Unit.Base(Dimension.Count) : Unit.Find(symbol == "count" ? "" : symbol);
        if (unit is null)
            fields.Add("not-a-word", fields.Mark, $"'{symbol}' is not a known unit", "use date, count or a unit such as mm, kg or %");
        unit ??= Unit.Base(Dimension.Count);
        return new Measure(
            name,
            title,
            unit,
            fields.Required("job"),
            fields.Quantity("if-absent", unit.Dimension)?.Base,
            isDate,
            fields.YesNo("derived") ?? false,
            fields.YesNo("own-rule") ?? false,
            fields.Required("definition"),
            fields.Mark
        )
        {
            BelowZero = fields.Word("below-zero", "derived", "stated") switch
            {
                "derived" => BelowZero.Derived,
                "stated" => BelowZero.Stated,
                _ => BelowZero.Never,
            },
            Topics = fields.Texts("topics"),
            Step = fields.Quantity("step", unit.Dimension)?.Base,
            Plausible = ReadRange(fields, "plausible", unit.Dimension),
            Possible = ReadRange(fields, "possible", unit.Dimension),
        };
    }

    private static Interval ReadRange(Fields fields, string key, Dimension dimension)
    {
        if (fields.Nested(key) is not { } inner)
            return Interval.Anything;
        var range = new Interval(inner.Quantity("at-least", dimension)?.Base, inner.Quantity("at-most", dimension)?.Base);
        inner.Done();
        return range;
    }

    private static FactWord ReadFact(Fields fields, Category[] categories)
    {
        var values = fields.Texts("values");
        var ofCategories = values is ["categories"];
        return new FactWord(
            fields.Required("fact"),
            fields.Required("title"),
            fields.Required("job"),
            ofCategories ? [.. categories.OrderBy(category => category.WhereNamed).Select(category => category.Name)] : values,
            fields.Required("definition"),
            fields.Mark
        )
        {
            Question = fields.Text("question"),
            WhereNamed = ofCategories ? [.. categories.Where(category => category.WhereNamed).Select(category => category.Name)] : [],
        };
    }

    private static Topic ReadTopic(Fields fields) =>
        new(
            fields.Required("topic"),
            fields.Required("title"),
            fields.Required("definition"),
            fields.YesNo("of-use") ?? false,
            fields.Mark
        );

    private sealed record Condition(Term Term, FiguredCondition? Figured);

    private sealed record Category(string Name, CategoryGvm? Gvm, bool WhereNamed);
}
