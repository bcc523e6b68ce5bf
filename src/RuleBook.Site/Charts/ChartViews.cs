using RuleBook.Site.Templating;

namespace RuleBook.Site.Charts;

/// <summary>A drawing with the figures behind it.</summary>
internal sealed record StackView(string Title, Html Drawing, StackRow[] Rows);

/// <summary>The figures of a bar.</summary>
internal sealed record StackRow(string Place, string Suspension, string Body, string Tyre, string Total);

/// <summary>A figure over the years, one small drawing a jurisdiction.</summary>
internal sealed record StepsView(string Title, string Measure, PlaceSteps[] Places);

/// <summary>The steps of one jurisdiction.</summary>
internal sealed record PlaceSteps(string Place, Html Drawing, StepRow[] Rows);

/// <summary>A step in figures.</summary>
internal sealed record StepRow(string From, string Free, string Certified);
