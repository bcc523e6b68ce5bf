using RuleBook.Physics.Tyres;

namespace RuleBook.Tests.Physics.Tyres;

/// <summary>The speed-symbol table: three published charts of the tyre trade, which agree.</summary>
public sealed class SpeedSymbolTests
{
    private static readonly (string Symbol, int Speed)[] Charts =
    [
        ("A1", 5),
        ("A2", 10),
        ("A3", 15),
        ("A4", 20),
        ("A5", 25),
        ("A6", 30),
        ("A7", 35),
        ("A8", 40),
        ("B", 50),
        ("C", 60),
        ("D", 65),
        ("E", 70),
        ("F", 80),
        ("G", 90),
        ("J", 100),
        ("K", 110),
        ("L", 120),
        ("M", 130),
        ("N", 140),
        ("P", 150),
        ("Q", 160),
        ("R", 170),
        ("S", 180),
        ("T", 190),
        ("U", 200),
        ("H", 210),
        ("V", 240),
        ("W", 270),
        ("Y", 300),
    ];

    [Fact]
    public void Every_speed_symbol_stands_for_what_the_published_charts_say()
    {
        foreach (var (symbol, speed) in Charts)
            SpeedSymbol.Find(symbol).ShouldBe(new SpeedSymbol(symbol, speed));
        SpeedSymbol.All.Length.ShouldBe(Charts.Length + 3);
    }

    [Theory]
    [InlineData("Z", 240)] // "over 240"
    [InlineData("ZR", 240)]
    [InlineData("(Y)", 300)] // "over 300"
    public void Beyond_an_open_symbol_only_the_maker_can_say(string symbol, int over)
    {
        var known = SpeedSymbol.Find(symbol)!;
        known.IsGoodFor(over).ShouldBe(true);
        known.IsGoodFor(over + 1).ShouldBeNull();
    }

    [Fact]
    public void H_is_faster_than_U_though_it_comes_first_in_the_alphabet() =>
        SpeedSymbol.Find("H")!.KilometresPerHour.ShouldBeGreaterThan(SpeedSymbol.Find("U")!.KilometresPerHour);

    [Theory]
    [InlineData("I")]
    [InlineData("O")]
    [InlineData("X")]
    [InlineData("A")]
    [InlineData("A9")]
    [InlineData("s")]
    public void A_letter_that_is_not_used_is_unknown(string symbol) => SpeedSymbol.Find(symbol).ShouldBeNull();

    [Fact]
    public void A_symbol_is_good_up_to_its_speed_included()
    {
        SpeedSymbol.Find("S")!.IsGoodFor(180).ShouldBe(true);
        SpeedSymbol.Find("S")!.IsGoodFor(181).ShouldBe(false);
    }

    [Fact]
    public void The_table_runs_from_the_slowest_to_the_fastest() =>
        SpeedSymbol.All.Select(symbol => symbol.KilometresPerHour).ShouldBeInOrder();
}
