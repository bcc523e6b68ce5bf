namespace RuleBook.Text;

/// <summary>Takes a short text apart from the front.</summary>
/// <remarks>Regular expressions would do the same, but the check page would load them with their engine before its first answer.</remarks>
internal ref struct Cursor(ReadOnlySpan<char> text)
{
    /// <summary>What is not taken yet.</summary>
    public ReadOnlySpan<char> Rest { get; private set; } = text;

    /// <summary>Whether nothing is left but the line feed with which a block of YAML ends.</summary>
    public readonly bool IsAtEnd => Rest is [] or ['\n'];

    public bool Take(ReadOnlySpan<char> text)
    {
        if (!Rest.StartsWith(text))
            return false;
        Rest = Rest[text.Length..];
        return true;
    }

    /// <summary>As many characters of a kind as stand there, none too; not more than <paramref name="most"/>.</summary>
    public ReadOnlySpan<char> Take(Func<char, bool> kind, int most = int.MaxValue)
    {
        var length = 0;
        while (length < Rest.Length && length < most && kind(Rest[length]))
            length++;
        var taken = Rest[..length];
        Rest = Rest[length..];
        return taken;
    }

    public void Skip() => Take(char.IsWhiteSpace);

    /// <summary>A number of exactly so many digits.</summary>
    public bool TakeDigits(int count, out int number)
    {
        var digits = Take(char.IsAsciiDigit, count);
        number = 0;
        foreach (var digit in digits)
            number = number * 10 + digit - '0';
        return digits.Length == count;
    }

    /// <summary>Digits, and more of them after a point if they stand there: 10 or 10.50. Empty where there are none.</summary>
    public ReadOnlySpan<char> TakeDecimal(int whole = int.MaxValue, int decimals = int.MaxValue)
    {
        var start = Rest;
        if (Take(char.IsAsciiDigit, whole).IsEmpty)
            return [];
        var point = this;
        if (point.Take(".") && !point.Take(char.IsAsciiDigit, decimals).IsEmpty)
            this = point;
        return start[..^Rest.Length];
    }
}
