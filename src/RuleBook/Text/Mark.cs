namespace RuleBook.Text;

/// <summary>A place in an input: line and column count from 1.</summary>
/// <param name="File">Path or name of the input.</param>
/// <param name="Line">Line, from 1.</param>
/// <param name="Column">Column, from 1.</param>
public readonly record struct Mark(string File, int Line, int Column) : IComparable<Mark>
{
    /// <inheritdoc/>
    public int CompareTo(Mark other)
    {
        var byFile = string.CompareOrdinal(File, other.File);
        var byLine = Line.CompareTo(other.Line);
        return byFile != 0 ? byFile
            : byLine != 0 ? byLine
            : Column.CompareTo(other.Column);
    }

    /// <summary>Earlier in the same file, or in a file that sorts earlier.</summary>
    public static bool operator <(Mark left, Mark right) => left.CompareTo(right) < 0;

    /// <summary>Not later.</summary>
    public static bool operator <=(Mark left, Mark right) => left.CompareTo(right) <= 0;

    /// <summary>Later.</summary>
    public static bool operator >(Mark left, Mark right) => left.CompareTo(right) > 0;

    /// <summary>Not earlier.</summary>
    public static bool operator >=(Mark left, Mark right) => left.CompareTo(right) >= 0;

    /// <summary><c>file:line:column</c>.</summary>
    public override string ToString() => $"{File}:{Line}:{Column}";
}
