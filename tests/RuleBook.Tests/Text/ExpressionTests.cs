using System.Globalization;
using System.Text.RegularExpressions;
using CsCheck;
using Fractions;
using RuleBook.Law.Reading;
using RuleBook.Physics.Tyres;
using RuleBook.Text;
using RuleBook.Units;

namespace RuleBook.Tests.Text;

/// <summary>
/// What is read by hand, so that the check page need not load an engine for it, against the regular expressions that say the same, on texts
/// put together at random.
/// </summary>
public sealed partial class ExpressionTests
{
    private const string Number = @"[0-9]{1,4}(?:\.[0-9]{1,2})?";
    private const string Prefix = @"^(?<prefix>[A-Z]+)?\s*";
    private const string Rim = $@"\s*(?<build>[A-Z]+|-|(?<=\s))\s*(?<rim>{Number})(?![0-9.])(?<rest>.*)$";
    private const string Load = @"(?<single>[0-9]{1,4})(?:\s*/\s*(?<dual>[0-9]{1,4}))?";
    private const string Over = @"\(\s*(?<over>[A-Z]+)\s*\)";
    private const string Speed = "(?!XL|RF)(?<speed>[A-Z]+[0-9]*)";
    private const string Description = $@"(?:{Load}\s*)?{Over}|\(\s*{Load}\s*(?<over>[A-Z]+)\s*\)|{Load}(?:\s*{Speed})?|{Speed}";

    [Fact]
    public void A_quantity_is_read() =>
        Of("50", "3", ".", "5", "+", "-", " ", "\u00a0", "\n", "mm", "kg", "%", "/", "lbf/in", "t", "x", "٣")
            .Sample(
                text =>
                {
                    var written = Quantities().Match(text);
                    var unit = written.Groups["unit"].Value;
                    Quantity.TryParse(text, out var read, out var error).ShouldBe(unit.Length > 0 && Unit.Find(unit) is not null);
                    read.ShouldBe(
                        read is null
                            ? null
                            : new Quantity(
                                (Fraction)decimal.Parse(written.Groups["number"].Value, CultureInfo.InvariantCulture),
                                Unit.Find(unit)!
                            )
                    );
                    if (read is null)
                        error!.ShouldStartWith(
                            !written.Success ? "a quantity is a number and its unit"
                            : unit.Length == 0 ? $"the unit is missing: write {written.Groups["number"].Value} mm"
                            : $"'{unit}' is not a known unit"
                        );
                },
                iter: 20_000
            );

    [Fact]
    public void A_date_is_read() =>
        Of("2009", "1899", "2999", "3000", "-", "02", "2", "29", "31", "2026-11-28", "-00", "~", "[", "]", "..", "\n", " ", "٣")
            .Sample(
                text =>
                {
                    PartialDate.TryParse(text, out var read).ShouldBe(DateOf(text) is not null);
                    (read is null ? null : ((DateOnly, DateOnly)?)(read.Earliest, read.Latest)).ShouldBe(DateOf(text));
                },
                iter: 20_000
            );

    [Fact]
    public void A_day_is_read() =>
        Of("2009", "1899", "2999", "3000", "-", "02", "2", "29", "31", "11-", "00", "\n")
            .Sample(
                text =>
                    CalendarDay
                        .TryParse(text, out _)
                        .ShouldBe(
                            DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day)
                                && day.Year is >= 1900 and <= 2999
                        ),
                iter: 20_000
            );

    [Fact]
    public void The_dimensions_of_a_tyre_are_found() =>
        Of("LT", "P", "31", "265", "7.50", "10.505", "/", "70", "X", " ", "\n", "R", "ZR", "-", "16", ".", "5", "115S")
            .Select(text => text.Trim())
            .Sample(
                text =>
                {
                    var (form, parts) =
                        Metric().Match(text) is { Success: true } metric ? (TyreForm.Metric, metric)
                        : Flotation().Match(text) is { Success: true } flotation ? (TyreForm.Flotation, flotation)
                        : (TyreForm.Numeric, Numeric().Match(text));
                    string Part(string name) => parts.Groups[name].Value;
                    WrittenForm
                        .Find(text)
                        .ShouldBe(
                            parts.Success
                                ? new WrittenForm(
                                    form,
                                    Part("prefix"),
                                    Part("width"),
                                    Part("aspect") + Part("diameter"),
                                    Part("build"),
                                    Part("rim"),
                                    Part("rest")
                                )
                                : null
                        );
                },
                iter: 50_000
            );

    [Fact]
    public void What_follows_the_rim_code_of_a_tyre_is_understood() =>
        Of("LT", "C", "XL", "RF", "X", " ", "\n", "115", "5", "/", "112", "(", ")", "S", "Y", "A8", "H")
            // After a mark no load index has five digits: the expression takes them for a speed symbol, which is refused as well.
            .Where(text => !Overlong().IsMatch(text))
            .Sample(
                text =>
                {
                    var parts = Rest().Match(text);
                    if (!ServiceReader.TryRead("", text, out var read, out var error))
                    {
                        error.Contains("after the rim code is not understood", StringComparison.Ordinal).ShouldBe(!parts.Success, error);
                        return;
                    }

                    parts.Success.ShouldBeTrue();
                    var over = parts.Groups["over"];
                    $"{read.Single?.Value}|{read.Dual?.Value}|{read.Speed?.Symbol}".ShouldBe(
                        $"{Index("single")}|{Index("dual")}|{(over.Success ? $"({over.Value})" : parts.Groups["speed"].Value)}"
                    );
                    var marks = parts.Groups["mark"].Captures.Select(mark => mark.Value).ToList();
                    (read.Service == TyreService.LightTruck).ShouldBe(marks.Contains("LT"));
                    (read.Service == TyreService.Commercial).ShouldBe(marks.Contains("C"));
                    (read.Reinforcement == Reinforcement.ExtraLoad).ShouldBe(marks.Contains("XL"));
                    (read.Reinforcement == Reinforcement.Reinforced).ShouldBe(marks.Contains("RF") && !marks.Contains("XL"));
                    return;

                    int? Index(string group) =>
                        parts.Groups[group] is { Success: true, Value: var digits }
                            ? int.Parse(digits, CultureInfo.InvariantCulture)
                            : null;
                },
                iter: 50_000
            );

    [Fact]
    public void The_name_of_an_edition_is_known() =>
        Of("2026", ".", "1", "0", "12", "13", "9", "\n", "v")
            .Sample(text => EditionReader.IsName(text).ShouldBe(EditionName().IsMatch(text)), iter: 20_000);

    [Fact]
    public void The_digest_of_an_edition_is_known() =>
        Of("sha256:", new string('a', 32), new string('7', 32), "f", "G", "A", "\n")
            .Sample(text => EditionReader.IsDigest(text).ShouldBe(EditionDigest().IsMatch(text)), iter: 5_000);

    private static Gen<string> Of(params string[] pieces) => Gen.OneOf(pieces).Array[0, 9].Select(string.Concat);

    private static (DateOnly Earliest, DateOnly Latest)? DateOf(string text)
    {
        if (Between().Match(text) is { Success: true } between)
            return DateOf(between.Groups[1].Value) is var (first, _) && DateOf(between.Groups[2].Value) is var (_, last) && first <= last
                ? (first, last)
                : null;
        var written = Date().Match(text);
        var given =
            written.Groups[3].Success ? 3
            : written.Groups[2].Success ? 2
            : 1;
        string[] parts = [written.Groups[1].Value, given > 1 ? written.Groups[2].Value : "01", given > 2 ? written.Groups[3].Value : "01"];
        if (
            !DateOnly.TryParseExact(string.Join('-', parts), "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day)
            || day.Year is < 1900 or > 2999
        )
            return null;
        var latest = given == 3 ? day : (given == 2 ? day.AddMonths(1) : day.AddYears(1)).AddDays(-1);
        return written.Groups[4].Success ? (day.AddYears(-1), latest.AddYears(1)) : (day, latest);
    }

    [GeneratedRegex(@"^(?<number>[+-]?[0-9]+(\.[0-9]+)?)(\s*(?<unit>[A-Za-z%][A-Za-z/%]*))?$")]
    private static partial Regex Quantities();

    [GeneratedRegex("^([0-9]{4})(?:-([0-9]{2})(?:-([0-9]{2}))?)?(~)?$")]
    private static partial Regex Date();

    [GeneratedRegex(@"^\[([0-9~-]+)\.\.([0-9~-]+)\]$")]
    private static partial Regex Between();

    [GeneratedRegex($@"{Prefix}(?<width>{Number})\s*/\s*(?<aspect>{Number}){Rim}")]
    private static partial Regex Metric();

    [GeneratedRegex($@"{Prefix}(?<diameter>{Number})\s*X\s*(?<width>{Number}){Rim}")]
    private static partial Regex Flotation();

    [GeneratedRegex($@"{Prefix}(?<width>{Number}){Rim}")]
    private static partial Regex Numeric();

    [GeneratedRegex($@"^(?:\s*(?<mark>LT|XL|RF|C)(?![A-Z]))*\s*(?:{Description})?(?:\s*(?<mark>XL|RF))?\s*$")]
    private static partial Regex Rest();

    [GeneratedRegex("(LT|C)[0-9]{5}")]
    private static partial Regex Overlong();

    [GeneratedRegex(@"^[0-9]{4}\.(1[0-2]|[1-9])\.[1-9][0-9]{0,3}$")]
    private static partial Regex EditionName();

    [GeneratedRegex("^sha256:[0-9a-f]{64}$")]
    private static partial Regex EditionDigest();
}
