using System.Collections.Immutable;

namespace RuleBook.Authoring.Exports;

/// <summary>What a column of a relation holds.</summary>
internal enum ColumnType
{
    /// <summary>Text.</summary>
    Text,

    /// <summary>A whole number.</summary>
    Whole,

    /// <summary>An exact number of the base unit.</summary>
    Decimal,

    /// <summary>A factor with one decimal.</summary>
    Factor,

    /// <summary>A day.</summary>
    Day,
}

/// <summary>A column.</summary>
/// <param name="Name">Its name, which no SQL reserves.</param>
/// <param name="Type">What it holds.</param>
internal sealed record Column(string Name, ColumnType Type);

/// <summary>A plain table.</summary>
/// <param name="Name">Its name, which no SQL reserves.</param>
/// <param name="Columns">Its columns.</param>
/// <param name="Rows">Cells as text, as many as there are columns; null where nothing is known.</param>
internal sealed record Relation(string Name, ImmutableArray<Column> Columns, ImmutableArray<ImmutableArray<string?>> Rows);
