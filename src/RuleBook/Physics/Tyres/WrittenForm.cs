using Fractions;
using RuleBook.Text;
using RuleBook.Units;

namespace RuleBook.Physics.Tyres;

/// <summary>A designation taken apart by its form; the parts are not yet checked.</summary>
/// <param name="Form">Full profile counts as numeric until its width is checked.</param>
/// <param name="Prefix">The letters before the dimensions.</param>
/// <param name="Width">The section width.</param>
/// <param name="Other">The aspect ratio or the overall diameter, by the form; empty in the numeric form.</param>
/// <param name="Build">What stands between the dimensions and the rim code; empty where only a space does.</param>
/// <param name="Rim">The rim code.</param>
/// <param name="Rest">Everything after the rim code.</param>
internal sealed record WrittenForm(TyreForm Form, string Prefix, string Width, string Other, string Build, string Rim, string Rest)
{
    /// <summary>Finds the form of a designation in capitals, or null.</summary>
    public static WrittenForm? Find(string text)
    {
        var cursor = new Cursor(text);
        var prefix = cursor.Take(char.IsAsciiLetterUpper).ToString();
        var first = Number(ref cursor);
        var dimensions = cursor;
        dimensions.Skip();
        // 31X15 may be the beginning of a flotation size, or 31 wide on a rim of 15.
        return dimensions.Take("/") ? Ending(TyreForm.Metric, prefix, first, Number(ref dimensions), dimensions)
            : dimensions.Take("X") && Ending(TyreForm.Flotation, prefix, Number(ref dimensions), first, dimensions) is { } flotation
                ? flotation
            : Ending(TyreForm.Numeric, prefix, first, null, cursor);
    }

    public static Fraction Amount(string part) => Quantity.Parse(part + " mm").Amount;

    private static WrittenForm? Ending(TyreForm form, string prefix, string width, string? other, Cursor cursor)
    {
        var isApart = !cursor.Take(char.IsWhiteSpace).IsEmpty;
        var build = cursor.Take("-") ? "-" : cursor.Take(char.IsAsciiLetterUpper).ToString();
        var rim = Number(ref cursor);
        return
            width == ""
            || other == ""
            || rim == ""
            || (build == "" && !isApart)
            || cursor.Rest is [(>= '0' and <= '9') or '.', ..]
            || cursor.Rest.Contains('\n')
            ? null
            : new WrittenForm(form, prefix, width, other ?? "", build, rim, cursor.Rest.ToString());
    }

    private static string Number(ref Cursor cursor)
    {
        cursor.Skip();
        return cursor.TakeDecimal(whole: 4, decimals: 2).ToString();
    }
}
