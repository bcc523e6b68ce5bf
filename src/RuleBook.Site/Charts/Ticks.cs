namespace RuleBook.Site.Charts;

/// <summary>Where a scale has its lines: round figures, never more than two dozen of them.</summary>
internal static class Ticks
{
    private const int Most = 24;

    /// <summary>From zero up to <paramref name="most"/>, <paramref name="usual"/> apart where that many fit, and 2, 4, 10, 20, ... times that where they do not.</summary>
    public static IEnumerable<double> Of(double most, double usual)
    {
        var step = Step(most, usual);
        for (var i = 0; i * step <= most; i++) yield return i * step;
    }

    /// <summary>The distance between two lines.</summary>
    public static double Step(double span, double usual)
    {
        var step = usual;
        for (var i = 0; span / step > Most; i++) step *= i % 3 == 2 ? 2.5 : 2;
        return step;
    }
}
