using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using RuleBook.Law;

namespace RuleBook.Authoring.Exports;

/// <summary>A file of an export.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Bytes">What it holds.</param>
internal sealed record ExportFile(string Name, ReadOnlyMemory<byte> Bytes)
{
    /// <summary>A text in UTF-8.</summary>
    public ExportFile(string name, string text)
        : this(name, Encoding.UTF8.GetBytes(text)) { }
}

/// <summary>The limits in force on a day, and what judges vehicles by them, for engines that know nothing of the book.</summary>
/// <param name="Files">All files.</param>
/// <param name="Inexact">The bounds that a decimal of the base unit does not hold as they are; rounded ones are written.</param>
internal sealed record BookExport(ImmutableArray<ExportFile> Files, ImmutableArray<string> Inexact)
{
    /// <summary>The query that judges; the same for every book.</summary>
    public static string Query => Resource("judge.sql");

    /// <summary>The two relations that a user fills.</summary>
    internal static ImmutableArray<Relation> Vehicles { get; } =
    [
        new("vehicles", [new("vehicle", ColumnType.Text), new("place", ColumnType.Text), new("on_day", ColumnType.Day)], []),
        new(
            "stated",
            [
                new("vehicle", ColumnType.Text),
                new("fact", ColumnType.Text),
                new("word", ColumnType.Text),
                new("low", ColumnType.Decimal),
                new("high", ColumnType.Decimal),
            ],
            []
        ),
    ];

    /// <summary>As SQL: <c>tables.sql</c> makes the tables, <c>judge.sql</c> judges.</summary>
    public static BookExport Sql(Book book, DateOnly day)
    {
        var relations = Relations(book, day);
        return new BookExport(
            [
                new("tables.sql", $"-- {Edition(book, day)}\n{SqlScript.Of([.. relations, .. Vehicles])}"),
                new("judge.sql", Query),
                new(
                    "README.txt",
                    Readme(
                        book,
                        day,
                        "export-readme.txt",
                        "tables.sql makes and fills the tables; two of them, vehicles and stated, are empty for yours."
                    )
                ),
            ],
            [.. LimitRelation.Inexact(relations[0])]
        );
    }

    /// <summary>As CSV (RFC 4180), a file a table, with the same query.</summary>
    public static BookExport Csv(Book book, DateOnly day)
    {
        var relations = Relations(book, day);
        return OfFiles(
            book,
            day,
            relations,
            relations.Select(relation => new ExportFile(
                $"{relation.Name}.csv",
                string.Concat(
                    relation
                        .Rows.Select(row => RuleBook.Text.Csv.Row(row.Select(cell => cell ?? "")))
                        .Prepend(RuleBook.Text.Csv.Row(relation.Columns.Select(column => column.Name)))
                )
            )),
            "Each file is a table of its name; an empty cell is NULL."
        );
    }

    /// <summary>As Apache Parquet, a file a table, with the same query.</summary>
    public static async Task<BookExport> ParquetAsync(Book book, DateOnly day, CancellationToken stop = default)
    {
        var relations = Relations(book, day);
        var files = new List<ExportFile>();
        foreach (var relation in relations)
            files.Add(new ExportFile($"{relation.Name}.parquet", await ParquetTable.OfAsync(relation, stop).ConfigureAwait(false)));
        return OfFiles(book, day, relations, files, "Each file is a table of its name.");
    }

    /// <summary>As DMN 1.3, a model a place with a decision table for each version in force.</summary>
    public static BookExport Dmn(Book book, DateOnly day) =>
        new(
            [
                .. book.Jurisdictions.Select(place => new ExportFile(
                    $"{place.Id}.dmn",
                    DmnModel.Of(
                        Ruling.On(book, place, day),
                        $"{Edition(book, day)}. This is not legal advice: the authority of the state of registration and the "
                            + "licensed certifier decide."
                    )
                )),
                new("README.txt", Readme(book, day, "dmn-readme.txt", "")),
            ],
            [.. LimitRelation.Inexact(LimitRelation.Of(book, day))]
        );

    private static BookExport OfFiles(
        Book book,
        DateOnly day,
        ImmutableArray<Relation> relations,
        IEnumerable<ExportFile> tables,
        string how
    ) =>
        new(
            [
                .. tables,
                new("judge.sql", Query),
                new(
                    "README.txt",
                    Readme(book, day, "export-readme.txt", $"{how} Add yours:\n\n{string.Concat(Vehicles.Select(SqlScript.Create))}")
                ),
            ],
            [.. LimitRelation.Inexact(relations[0])]
        );

    private static ImmutableArray<Relation> Relations(Book book, DateOnly day) =>
        [
            LimitRelation.Of(book, day),
            .. VocabularyRelations.Of(book.Vocabulary),
            .. JudgingRelations.Of(book.Jurisdictions.Select(place => Ruling.On(book, place, day))),
        ];

    private static string Edition(Book book, DateOnly day) =>
        $"Limits in force on {Text(day)}, book {book.Edition?.Name ?? "without an edition"}, {book.Digest}";

    private static string Text(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    private static string Readme(Book book, DateOnly day, string text, string how) =>
        Resource(text)
            .Replace("{edition}", Edition(book, day), StringComparison.Ordinal)
            .Replace("{day}", Text(day), StringComparison.Ordinal)
            .Replace("{how}", how, StringComparison.Ordinal);

    private static string Resource(string name)
    {
        using var reader = new StreamReader(typeof(BookExport).Assembly.GetManifestResourceStream(name)!);
        return reader.ReadToEnd();
    }
}
