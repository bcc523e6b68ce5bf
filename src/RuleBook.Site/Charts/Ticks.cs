namespace RuleBook.Site.Charts;

/// <summary>Where a scale has its lines: 1, 2 or 5 times a power of ten apart, and no more of them than can be read.</summary>
internal static class Ticks
{
    /// <summary>The multiples of a round step from <paramref name="from"/> to <paramref name="to"/>.</summary>
    /// <param name="from">Where the scale begins.</param>
    /// <param name="to">Where it ends.</param>
    /// <param name="most">The most that can be read.</param>
    public static IEnumerable<double> Of(double from, double to, int most)
    {
        var step = Step(to - from, most);
        for (var i = (long)Math.Ceiling(from / step); i * step <= to; i++)
            yield return i * step;
    }

    /// <summary>The distance between two lines: the smallest round one of which the span holds less than <paramref name="most"/>.</summary>
    public static double Step(double span, int most)
    {
        var step = Math.Pow(10, Math.Floor(Math.Log10(span / most)));
        while (true)
            foreach (var each in (double[])[1, 2, 5, 10])
                if (span / (each * step) < most)
                    return each * step;
                else if (each == 10)
                    step *= 10;
    }

    /// <summary>The first line at or beyond a figure, where a scale from zero can end.</summary>
    public static double End(double figure, int most)
    {
        var step = Step(figure, most);
        return Math.Ceiling(figure / step) * step;
    }
}
