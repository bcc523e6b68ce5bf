using RuleBook.Site.Templating;

namespace RuleBook.Site.Charts;

/// <summary>Drawings that share a scale, with the legend of what is drawn in them.</summary>
internal sealed record StacksView(KeyView[] Key, StackView[] Drawings)
{
    public static StacksView None { get; } = new([], []);
}

/// <summary>An entry of a legend.</summary>
internal sealed record KeyView(string Style, string Text);

/// <summary>A drawing with the figures behind it.</summary>
internal sealed record StackView(string Title, Html Drawing, StackRow[] Rows);

/// <summary>The figures of a bar.</summary>
internal sealed record StackRow(string Place, string Suspension, string Body, string Tyre, string Total);

/// <summary>A figure over the years, one small drawing a jurisdiction.</summary>
internal sealed record StepsView(string Title, string Measure, bool Free, bool Certified, PlaceSteps[] Places);

/// <summary>The steps of one jurisdiction.</summary>
internal sealed record PlaceSteps(string Place, Html Drawing, StepRow[] Rows);

/// <summary>A step in figures.</summary>
internal sealed record StepRow(string From, string Free, string Certified);
