using RuleBook.Physics.Tyres;

namespace RuleBook.Tests.Physics.Tyres;

/// <summary>A size that cannot be read: the message names the part that is wrong.</summary>
public sealed class TyreSizeErrorTests
{
    [Theory]
    [InlineData("", "a tyre size is written like 265/70R17 115S")]
    [InlineData("big ones", "a tyre size is written like")]
    [InlineData("265/7017", "a tyre size is written like")]
    [InlineData("265-70-17", "a tyre size is written like")]
    [InlineData("26/70R17", "section width 26")]
    [InlineData("2655/70R17", "section width 2655")]
    [InlineData("265.5/70R17", "section width 265.5")]
    [InlineData("265/7R17", "aspect ratio 7")]
    [InlineData("265/170R17", "aspect ratio 170")]
    [InlineData("265/70R170", "rim code 170")]
    [InlineData("265/70R7", "rim code 7")]
    [InlineData("265/70R17.3", "rim code 17.3")]
    [InlineData("265/70R390", "rim code 390")] // a rim in millimetres
    [InlineData("265/70Q17", "'Q' before the rim code")]
    [InlineData("265/70 17", "before the rim code")]
    [InlineData("265/70R17 115O", "'O' is not a speed symbol")] // I, O and X are not used
    [InlineData("265/70R17 115A9", "'A9' is not a speed symbol")]
    [InlineData("265/70R17 (115S)", "'(S)' is not a speed symbol")]
    [InlineData("265/70R17 1155S", "load index 1155")]
    [InlineData("265/70R17 151S", "load index 151")]
    [InlineData("LT285/75R16 123/126Q", "123/126")]
    [InlineData("265/70R17 115S plus", "after the rim code")]
    [InlineData("265/70R17 (97Y", "after the rim code")]
    [InlineData("X265/70R17", "'X' before the width")]
    [InlineData("ER78-15", "'ER' before the width")] // the alphanumeric designation of the 1970s
    [InlineData("P265/70R17LT", "P and LT")]
    [InlineData("75R16LT", "section width 75")]
    [InlineData("310x10.50R15LT", "overall diameter 310")]
    [InlineData("31x105R15LT", "section width 105")]
    [InlineData("14x7.00R15", "not larger than the rim")]
    [InlineData("265/70R17 115S 265/70R17 115S 265/70R17 115S", "a tyre size is written like")]
    public void A_bad_size_says_which_part_is_wrong(string text, string hint)
    {
        TyreSize.TryParse(text, out var size, out var error).ShouldBeFalse();
        size.ShouldBeNull();
        error.ShouldNotBeNull().ShouldContain(hint);
        Should.Throw<FormatException>(() => TyreSize.Parse(text)).Message.ShouldBe(error);
    }

    [Fact]
    public void A_very_long_text_is_refused_without_being_read()
    {
        TyreSize.TryParse("265/70R17" + new string(' ', 100_000) + "115S", out _, out var error).ShouldBeFalse();
        error.ShouldNotBeNull().Length.ShouldBeLessThan(200);
    }
}
