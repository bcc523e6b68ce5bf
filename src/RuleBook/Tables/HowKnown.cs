namespace RuleBook.Tables;

/// <summary>How a row knows a measure.</summary>
internal enum HowKnown : byte
{
    /// <summary>Not by itself: it follows from others, or is unknown.</summary>
    Not,

    /// <summary>Its value, which lies on the grid of the table.</summary>
    OnGrid,

    /// <summary>A range, or a value that does not lie on the grid.</summary>
    AsRange,
}
