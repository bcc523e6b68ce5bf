using System.Collections.Concurrent;
using System.Collections.Immutable;
using RuleBook.Law;
using RuleBook.Site.Views;
using RuleBook.Telling;
using RuleBook.Units;

namespace RuleBook.Site.Comparison;

/// <summary>What a state's schemes of certification answer on a day.</summary>
internal sealed class SchemeAnswers(SiteBook site, Jurisdiction place, ImmutableArray<(Scheme Scheme, SchemeVersion Version)> all)
{
    private readonly ConcurrentDictionary<string, MatrixCell> cells = [];

    /// <summary>The schemes of a place that may be a vehicle's, with their versions in force on a day.</summary>
    public static ImmutableArray<(Scheme Scheme, SchemeVersion Version)> For(Jurisdiction place, ComparedVehicle vehicle, DateOnly day) =>
        [
            .. place
                .Schemes.Where(scheme => vehicle.Passes(scheme.For) != Truth.No)
                .SelectMany(scheme => SchemeView.InForce(scheme, day).Select(version => (scheme, version))),
        ];

    public static ImmutableArray<(Question Question, Func<SchemeAnswers, MatrixCell> Answer)> Questions { get; } =
    [
        (new("certifier", "Who certifies"), of => of.Certifier),
        (new("appointed-by", "Appointed by"), of => of.Cell("appointed-by", version => version.AppointedBy)),
        (new("decides", "Has the last word"), of => of.Cell("decides", version => version.Decides is { } word ? $"the {word}" : null)),
        (new("before", "Approval and steps before the work"), of => of.Before(null)),
        (
            new("issued", "What is issued"),
            of => of.Cell("issued", version => string.Join(", ", version.Issued.SelectMany(issued => issued.Papers).Distinct()))
        ),
        (new("reregistering", "Coming from another state"), of => of.Cell("reregistering", version => version.Reregistering?.Trim())),
    ];

    public string Title => string.Join("; ", all.Select(each => each.Scheme.Title).Distinct());

    public MatrixCell Certifier => cells.GetOrAdd("who certifies", _ => Cell("certifier", version => version.Certifier));

    /// <summary>What comes before the work on a pathway that is certified; of one topic, or of all.</summary>
    public MatrixCell Before(string? topic) =>
        cells.GetOrAdd(
            topic ?? "",
            _ =>
                Cell(
                    "steps",
                    version =>
                        string.Join(
                            " ",
                            version
                                .Steps.Where(step =>
                                    step.BeforeWork && step.Pathways.Any(pathway => pathway is Pathway.Certificate or Pathway.Approval)
                                )
                                .Where(step => topic is null || step.Topics.IsDefaultOrEmpty || step.Topics.Contains(topic))
                                .Select(step => step.Text.Trim())
                        )
                )
        );

    private MatrixCell Cell(string key, Func<SchemeVersion, string?> read)
    {
        MatrixLine[] lines = [.. all.Select(each => MatrixLine.Of(read(each.Version))).Distinct()];
        return new MatrixCell(
            lines.Length == 0 ? [MatrixLine.NotEstablished] : lines,
            lines.All(line => line.Kind == "not-established") ? "" : Standing(new Part(null, key)),
            "",
            $"{Links.Jurisdiction(place.Id)}#certification"
        );
    }

    /// <summary>By the weakest of the schemes, each known by the best of the sources that carry the part.</summary>
    private string Standing(Part part) =>
        Phrases.Standing(
            all.Select(each =>
                    InForce.Standing.Best(
                        InForce.Resolver.Cited(site.Book, place.Id, [.. each.Version.Sources.Where(citation => citation.DoesCarry(part))]),
                        part
                    )
                )
                .Aggregate((one, other) => one.And(other))
        );
}
