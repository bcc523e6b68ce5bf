using static RuleBook.Tests.Physics.Tyres.Inputs;

namespace RuleBook.Tests.Physics.Tyres;

/// <summary>Where no published diameter was found the value is derived: reckoned apart from this code from the two formulas.</summary>
public sealed class DerivedDiameterTests
{
    [Theory] // derived, every row
    [InlineData("235/60R17", "714", "713.8")]
    [InlineData("255/70R16", "764", "763.4")]
    [InlineData("265/60R18", "775", "775.2")]
    [InlineData("265/70R16", "778", "777.4")]
    [InlineData("275/65R18", "815", "814.7")]
    [InlineData("275/70R16", "792", "791.4")]
    [InlineData("275/70R17", "818", "816.8")]
    [InlineData("275/70R18", "843", "842.2")]
    [InlineData("285/60R18", "799", "799.2")]
    [InlineData("285/65R17", "802", "802.3")]
    [InlineData("285/65R18", "827", "827.7")]
    [InlineData("285/75R17", "860", "859.3")]
    [InlineData("295/70R17", "846", "844.8")]
    [InlineData("305/70R16", "834", "833.4")]
    [InlineData("305/70R17", "860", "858.8")]
    [InlineData("315/70R17", "874", "872.8")]
    [InlineData("315/75R16", "878", "878.9")]
    [InlineData("255/60R18", "763", "763.2")]
    [InlineData("265/55R20", "800", "799.5")]
    [InlineData("275/55R20", "810", "810.5")]
    [InlineData("275/60R20", "838", "838.0")]
    [InlineData("225/75R16", "744", "743.9")]
    [InlineData("245/75R16", "774", "773.9")]
    [InlineData("205/80R16", "734", "734.4")]
    [InlineData("265/75R16", "804", "803.9")]
    [InlineData("245/70R16", "750", "749.4")]
    [InlineData("265/65R17", "776", "776.3")]
    [InlineData("255/70R15", "739", "738.0")]
    [InlineData("285/70R17", "832", "830.8")]
    [InlineData("205/65R15", "647", "647.5")]
    [InlineData("245/55R18", "727", "726.7")]
    [InlineData("225/65R17", "724", "724.3")]
    [InlineData("215/60R16", "664", "664.4")]
    [InlineData("215/55R16", "642", "642.9")]
    [InlineData("195/50R15", "577", "576.0")]
    public void Handbook_and_nominal_diameter_by_the_two_formulas(string size, string handbook, string nominal)
    {
        Handbook(size).Millimetres.ShouldBe(Exact(handbook));
        Nominal(size).Millimetres.ShouldBe(Exact(nominal));
    }

    [Theory] // derived
    [InlineData("285/65R18")]
    [InlineData("315/75R16")]
    [InlineData("275/55R20")]
    public void A_handbook_diameter_can_be_below_the_nominal_one(string size) =>
        Handbook(size).Millimetres!.Value.ShouldBeLessThan(Nominal(size).Millimetres!.Value);
}
