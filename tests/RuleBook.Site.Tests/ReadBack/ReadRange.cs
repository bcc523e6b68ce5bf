using System.Globalization;
using System.Text.RegularExpressions;
using RuleBook.Units;

namespace RuleBook.Site.Tests.ReadBack;

/// <summary>A range as a page tells it, in base units; an end that is not told is open to any figure.</summary>
/// <remarks>
/// The forms are written here by hand from what they mean in the trade. Inch and pound: International Yard and Pound Agreement of 1959.
/// </remarks>
internal sealed record ReadRange(ReadEnd? Low, ReadEnd? High)
{
    private static readonly Dictionary<string, decimal> Units = new()
    {
        ["mm"] = 1,
        ["in"] = 25.4m,
        ["kg"] = 1,
        ["lb"] = 0.45359237m,
        ["%"] = 1,
        ["km/h"] = 1,
    };

    /// <summary>A and B are amounts.</summary>
    private static readonly (Regex Form, Func<decimal, decimal, ReadRange> Means)[] Forms =
    [
        Form("A", (a, _) => new(null, In(a))),
        Form("at most A", (a, _) => new(null, In(a))),
        Form("under A", (a, _) => new(null, Out(a))),
        Form("at least A", (a, _) => new(In(a), null)),
        Form("over A", (a, _) => new(Out(a), null)),
        Form("exactly A", (a, _) => new(In(a), In(a))),
        Form("A to B", (a, b) => new(In(a), In(b))),
        Form("from A to B", (a, b) => new(In(a), In(b))),
        Form("from A up to B", (a, b) => new(In(a), In(b))),
        Form("from A to under B", (a, b) => new(In(a), Out(b))),
        Form("over A, B", (a, b) => new(Out(a), In(b))),
        Form("over A up to B", (a, b) => new(Out(a), In(b))),
        Form("over A to B", (a, b) => new(Out(a), In(b))),
        Form("over A, under B", (a, b) => new(Out(a), Out(b))),
        Form("at least A, under B", (a, b) => new(In(a), Out(b))),
        Form("A up or down", (a, _) => new(In(-a), In(a))),
        Form("at most A up or down", (a, _) => new(In(-a), In(a))),
        Form("A up, B down", (a, b) => new(In(-b), In(a))),
        Form("A down", (a, _) => new(In(-a), null)),
        Form("less than A down", (a, _) => new(Out(-a), null)),
        Form("at least A down", (a, _) => new(null, In(-a))),
        Form("more than A down", (a, _) => new(null, Out(-a))),
    ];

    /// <summary>Null where the words are of no known form.</summary>
    public static ReadRange? Of(string words)
    {
        if (words == "none at all")
            return new(In(0), In(0));
        foreach (var (form, means) in Forms)
            if (form.Match(words) is { Success: true } match)
                return means(Amount(match, "a"), Amount(match, "b"));
        return null;
    }

    /// <summary>Whether it tells the bounds, where a lower end of nothing below something allowed need not be told.</summary>
    public bool Tells(Bounds bounds) => Same(Low, Lower(bounds)) && Same(High, bounds.Upper);

    private Bound? Lower(Bounds bounds) =>
        bounds is { Lower: { Closed: true, Value.IsZero: true }, Upper.Value.IsNegative: false } && Low is null ? null : bounds.Lower;

    private static bool Same(ReadEnd? told, Bound? bound) =>
        (told, bound) switch
        {
            (null, null) => true,
            ({ } end, { } exact) => end.Included == exact.Closed && Math.Abs(end.Value - exact.Value.ToDecimal()) <= 0.001m,
            _ => false,
        };

    private static ReadEnd In(decimal value) => new(value, true);

    private static ReadEnd Out(decimal value) => new(value, false);

    private static (Regex, Func<decimal, decimal, ReadRange>) Form(string form, Func<decimal, decimal, ReadRange> means)
    {
        static string Figure(string name) =>
            $@"(?<{name}>-?[0-9.]+)( (?<{name}u>mm|in|kg|lb|%|km/h)( \((?<{name}m>-?[0-9.]+) (?<{name}v>mm|kg)\))?)?";
        var pattern = Regex.Replace(form, "[AB]", each => Figure(each.Value == "A" ? "a" : "b"));
        return (new Regex($"^{pattern}$", RegexOptions.CultureInvariant), means);
    }

    /// <summary>In base units; a figure beside it in another unit has to say the same.</summary>
    private static decimal Amount(Match match, string name)
    {
        if (!match.Groups[name].Success)
            return 0;
        var unit = match.Groups[$"{name}u"].Success ? match.Groups[$"{name}u"].Value : match.Groups["bu"].Value;
        var value = Number(match.Groups[name].Value) * Units[unit];
        if (match.Groups[$"{name}m"].Success)
            Number(match.Groups[$"{name}m"].Value).ShouldBe(value, 0.001m, match.Value);
        return value;
    }

    private static decimal Number(string text) => decimal.Parse(text, CultureInfo.InvariantCulture);
}

/// <summary>One end of a range as told.</summary>
internal sealed record ReadEnd(decimal Value, bool Included);
