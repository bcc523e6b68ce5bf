using System.Text.RegularExpressions;
using Fractions;
using RuleBook.Units;

namespace RuleBook.Physics.Tyres;

/// <summary>A designation taken apart by its form; the parts are not yet checked.</summary>
internal sealed partial record WrittenForm(TyreForm Form, Match Parts)
{
    private const string Number = @"[0-9]{1,4}(?:\.[0-9]{1,2})?";
    private const string Prefix = @"^(?<prefix>[A-Z]+)?\s*";
    private const string Rim = $@"\s*(?<build>[A-Z]+|-|(?<=\s))\s*(?<rim>{Number})(?![0-9.])(?<rest>.*)$";

    /// <summary>Finds the form of a designation in capitals, or null. Full profile counts as numeric until its width is checked.</summary>
    public static WrittenForm? Find(string text) =>
        Metric().Match(text) is { Success: true } metric ? new WrittenForm(TyreForm.Metric, metric)
        : Flotation().Match(text) is { Success: true } flotation ? new WrittenForm(TyreForm.Flotation, flotation)
        : Numeric().Match(text) is { Success: true } numeric ? new WrittenForm(TyreForm.Numeric, numeric)
        : null;

    public string Text(string part) => Parts.Groups[part].Value;

    public Fraction Amount(string part) => Quantity.Parse(Text(part) + " mm").Amount;

    [GeneratedRegex($@"{Prefix}(?<width>{Number})\s*/\s*(?<aspect>{Number}){Rim}", RegexOptions.CultureInvariant)]
    private static partial Regex Metric();

    [GeneratedRegex($@"{Prefix}(?<diameter>{Number})\s*X\s*(?<width>{Number}){Rim}", RegexOptions.CultureInvariant)]
    private static partial Regex Flotation();

    [GeneratedRegex($@"{Prefix}(?<width>{Number}){Rim}", RegexOptions.CultureInvariant)]
    private static partial Regex Numeric();
}
