using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using RuleBook.Text;

namespace RuleBook.Physics.Tyres;

/// <summary>What stands around the dimensions of a size: the service letters, the reinforcement, load index and speed symbol.</summary>
internal sealed record ServiceMarks(
    TyreService Service,
    Reinforcement Reinforcement,
    LoadIndex? Single,
    LoadIndex? Dual,
    SpeedSymbol? Speed
);

/// <summary>Reads the letters before the width and everything after the rim code.</summary>
internal static class ServiceReader
{
    public static bool TryRead(
        string prefix,
        string rest,
        [NotNullWhen(true)] out ServiceMarks? marks,
        [NotNullWhen(false)] out string? error
    )
    {
        marks = null;
        if (TakeApart(rest) is not { } written)
        {
            error =
                $"'{rest.Trim()}' after the rim code is not understood: LT, C, XL or RF may follow, "
                + "then load index and speed symbol, such as 115S, 126/123Q or (97Y)";
            return false;
        }

        if ((error = ServiceOf(prefix, written.Marks, out var service)) is not null)
            return false;
        if ((error = LoadOf(written.Single, out var single)) is not null)
            return false;
        if ((error = LoadOf(written.Dual, out var dual)) is not null)
            return false;
        if ((error = SpeedOf(written.Speed, out var speed)) is not null)
            return false;
        if (dual?.Value > single?.Value)
        {
            error = $"load index {single}/{dual}: the second is of a dual fitment and is not above the first";
            return false;
        }

        marks = new ServiceMarks(service, ReinforcementOf(written.Marks), single, dual, speed);
        return true;
    }

    /// <summary>What is wrong with the letters before the width, or null.</summary>
    public static string? PrefixError(string prefix) =>
        prefix is "" or "P" or "LT" or "T" ? null : $"'{prefix}' before the width is not understood: P, LT or T may stand there";

    private static string? ServiceOf(string prefix, List<string> after, out TyreService service)
    {
        service = TyreService.Unmarked;
        string[] said = [.. new[] { prefix }.Concat(after.Where(mark => mark is "LT" or "C")).Where(mark => mark.Length > 0).Distinct()];
        if (said.Length > 1)
            return $"{said[0]} and {said[1]} are two kinds of service; a tyre has one";
        service = said.FirstOrDefault() switch
        {
            "P" => TyreService.Passenger,
            "LT" => TyreService.LightTruck,
            "T" => TyreService.Temporary,
            "C" => TyreService.Commercial,
            _ => TyreService.Unmarked,
        };
        return null;
    }

    private static Reinforcement ReinforcementOf(List<string> after) =>
        after.Contains("XL") ? Reinforcement.ExtraLoad
        : after.Contains("RF") ? Reinforcement.Reinforced
        : Reinforcement.None;

    private static string? LoadOf(string written, out LoadIndex? index)
    {
        index = written.Length > 0 ? new LoadIndex(int.Parse(written, NumberStyles.None, CultureInfo.InvariantCulture)) : null;
        return index?.Value > LoadIndex.HighestRead
            ? $"load index {index} is outside the published tables (0 to {LoadIndex.HighestRead})"
            : null;
    }

    private static string? SpeedOf(string symbol, out SpeedSymbol? speed)
    {
        speed = SpeedSymbol.Find(symbol);
        return speed is null && symbol.Length > 0
            ? $"'{symbol}' is not a speed symbol; known are {string.Join(", ", SpeedSymbol.All)}"
            : null;
    }

    /// <summary>
    /// LT, C, XL or RF; load index and speed symbol; XL or RF. Each may be missing; null where anything else stands there.
    /// </summary>
    private static Written? TakeApart(string rest)
    {
        var cursor = new Cursor(rest);
        var marks = new List<string>();
        for (var next = cursor; Word(ref next) is var mark and ("LT" or "C" or "XL" or "RF"); cursor = next)
            marks.Add(mark);

        cursor.Skip();
        var isInBrackets = cursor.Take("(");
        var single = Load(ref cursor);
        var slash = cursor;
        slash.Skip();
        var dual = single.Length > 0 && slash.Take("/") ? Load(ref slash) : "";
        if (dual.Length > 0)
            cursor = slash;
        if (!isInBrackets)
        {
            cursor.Skip();
            isInBrackets = cursor.Take("(");
        }

        var speed = "";
        var symbol = cursor;
        var letters = Word(ref symbol);
        if (isInBrackets)
        {
            symbol.Skip();
            if (letters.Length == 0 || !symbol.Take(")"))
                return null;
            speed = $"({letters})";
            cursor = symbol;
        }
        else if (letters is not ("" or ['X', 'L', ..] or ['R', 'F', ..]))
        {
            speed = $"{letters}{symbol.Take(char.IsAsciiDigit)}";
            cursor = symbol;
        }

        cursor.Skip();
        if (cursor.Take("XL"))
            marks.Add("XL");
        else if (cursor.Take("RF"))
            marks.Add("RF");
        cursor.Skip();
        return cursor.Rest.IsEmpty ? new Written(marks, single, dual, speed) : null;
    }

    private static string Word(ref Cursor cursor)
    {
        cursor.Skip();
        return cursor.Take(char.IsAsciiLetterUpper).ToString();
    }

    private static string Load(ref Cursor cursor)
    {
        cursor.Skip();
        return cursor.Take(char.IsAsciiDigit, 4).ToString();
    }

    private sealed record Written(List<string> Marks, string Single, string Dual, string Speed);
}
