using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Text.RegularExpressions;

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
internal static partial class ServiceReader
{
    private const string Load = @"(?<single>[0-9]{1,4})(?:\s*/\s*(?<dual>[0-9]{1,4}))?";
    private const string Over = @"\(\s*(?<over>[A-Z]+)\s*\)";
    private const string Speed = "(?!XL|RF)(?<speed>[A-Z]+[0-9]*)";
    private const string Description = $@"(?:{Load}\s*)?{Over}|\(\s*{Load}\s*(?<over>[A-Z]+)\s*\)|{Load}(?:\s*{Speed})?|{Speed}";

    public static bool TryRead(
        string prefix,
        string rest,
        [NotNullWhen(true)] out ServiceMarks? marks,
        [NotNullWhen(false)] out string? error
    )
    {
        marks = null;
        var match = Rest().Match(rest);
        if (!match.Success)
        {
            error =
                $"'{rest.Trim()}' after the rim code is not understood: LT, C, XL or RF may follow, "
                + "then load index and speed symbol, such as 115S, 126/123Q or (97Y)";
            return false;
        }

        string[] after = [.. match.Groups["mark"].Captures.Select(capture => capture.Value)];
        if ((error = ServiceOf(prefix, after, out var service)) is not null)
            return false;
        if ((error = LoadOf(match, "single", out var single)) is not null)
            return false;
        if ((error = LoadOf(match, "dual", out var dual)) is not null)
            return false;
        if ((error = SpeedOf(match, out var speed)) is not null)
            return false;
        if (dual?.Value > single?.Value)
        {
            error = $"load index {single}/{dual}: the second is of a dual fitment and is not above the first";
            return false;
        }

        marks = new ServiceMarks(service, ReinforcementOf(after), single, dual, speed);
        return true;
    }

    /// <summary>What is wrong with the letters before the width, or null.</summary>
    public static string? PrefixError(string prefix) =>
        prefix is "" or "P" or "LT" or "T" ? null : $"'{prefix}' before the width is not understood: P, LT or T may stand there";

    private static string? ServiceOf(string prefix, string[] after, out TyreService service)
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

    private static Reinforcement ReinforcementOf(string[] after) =>
        after.Contains("XL") ? Reinforcement.ExtraLoad
        : after.Contains("RF") ? Reinforcement.Reinforced
        : Reinforcement.None;

    private static string? LoadOf(Match match, string group, out LoadIndex? index)
    {
        index = match.Groups[group] is { Success: true } written
            ? new LoadIndex(int.Parse(written.ValueSpan, NumberStyles.None, CultureInfo.InvariantCulture))
            : null;
        return index?.Value > LoadIndex.HighestRead
            ? $"load index {index} is outside the published tables (0 to {LoadIndex.HighestRead})"
            : null;
    }

    private static string? SpeedOf(Match match, out SpeedSymbol? speed)
    {
        var symbol = match.Groups["over"] is { Success: true } over ? $"({over.Value})" : match.Groups["speed"].Value;
        speed = SpeedSymbol.Find(symbol);
        return speed is null && symbol.Length > 0
            ? $"'{symbol}' is not a speed symbol; known are {string.Join(", ", SpeedSymbol.All)}"
            : null;
    }

    [GeneratedRegex(
        $@"^(?:\s*(?<mark>LT|XL|RF|C)(?![A-Z]))*\s*(?:{Description})?(?:\s*(?<mark>XL|RF))?\s*$",
        RegexOptions.CultureInvariant
    )]
    private static partial Regex Rest();
}
