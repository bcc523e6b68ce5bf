using System.Collections.Immutable;
using RuleBook.InForce;
using RuleBook.Law;
using RuleBook.Site.Views;
using RuleBook.Units;

namespace RuleBook.Site.Comparison;

/// <summary>The comparison of a group of jurisdictions on one day: for each topic, questions by states.</summary>
/// <param name="site">The book.</param>
/// <param name="group">The jurisdictions and vehicles.</param>
/// <param name="day">The day.</param>
/// <param name="known">What was answered on other days.</param>
/// <param name="opens">Whether a cell opens its clause in place; otherwise it leads to the rule, which keeps the page small.</param>
internal sealed class Matrices(SiteBook site, CompareGroup group, KnownRows known, DateOnly day, bool opens)
{
    private readonly Dictionary<string, ImmutableArray<ResolvedVersion>> inForce = [];

    private const string Certification = "certification";

    /// <summary>
    /// The questions of a topic of modification; those of use are certified by nobody, so that the last two are not asked; nor are they on
    /// the page of an earlier day, which has them once, under certification.
    /// </summary>
    private static readonly Question[] Questions =
    [
        new("free", "Free up to"),
        new("certified", "Certified up to"),
        new("approval", "With approval first, up to"),
        new("beyond", "Beyond that"),
        new("counts", "What counts"),
        new("measured", "Measured how"),
        new("certifier", "Who certifies"),
        new("before", "Before the work"),
    ];

    /// <summary>What the cells lean on.</summary>
    public WhereList Where { get; } = new();

    public Matrix[] All() =>
        [
            .. site
                .Topics.Where(topic => topic.Name != Certification)
                .Select(topic =>
                    Of(
                        topic,
                        TitleOf(topic),
                        topic.OfUse || !opens ? Questions[..^2] : Questions,
                        vehicle => group.Places.SelectMany(place => Rows(topic, place, vehicle))
                    )
                ),
            .. site.Topics.Where(topic => topic.Name == Certification).Select(topic => Schemes(topic)),
        ];

    /// <summary>Who certifies, state by state.</summary>
    public Matrix Schemes(Topic topic) =>
        Of(
            topic,
            TitleOf(topic),
            [.. SchemeAnswers.Questions.Select(each => each.Question)],
            vehicle =>
                group.Places.Select(place =>
                {
                    var scheme = known.Schemes(place, vehicle, day);
                    return Row(place, vehicle, scheme.Title, [.. SchemeAnswers.Questions.Select(each => each.Answer(scheme))]);
                })
        );

    private Matrix Of(Topic topic, string title, Question[] questions, Func<ComparedVehicle, IEnumerable<MatrixRow>> rows)
    {
        var all = group.Vehicles.SelectMany(rows).ToArray();
        var asked = questions.Index().Where(each => all.Any(row => Says(row.Cells[each.Index]))).Select(each => each.Index).ToArray();
        if (asked.Length == 0)
            asked = [0];
        return new Matrix(
            Links.Slug(topic.Name),
            title,
            Links.Topic(topic.Name),
            [.. asked.Select(i => questions[i])],
            [
                .. all.GroupBy(row => (row.Place, row.About, Text: string.Join('\t', asked.Select(i => row.Cells[i].Text))))
                    .Select(same =>
                        same.First() with
                        {
                            Cells = [.. asked.Select(i => same.First().Cells[i])],
                            Vehicles =
                                same.Select(row => row.Vehicles).Distinct().ToArray() is var those && those.Length == group.Vehicles.Length
                                    ? "*"
                                    : string.Join(' ', those.Select(At)),
                            First = same.Any(row => row.Vehicles == group.Vehicles[0].Id),
                        }
                    )
                    .OrderBy(row => group.Places.IndexOf(group.Places.First(place => place.Id == row.Place))),
            ]
        );
    }

    /// <summary>
    /// A question that no state answers on any way is left out, but for the first where all are; one that nobody has answered for some is
    /// not.
    /// </summary>
    private static bool Says(MatrixCell cell) =>
        cell.Lines.Any(line => line.Text is not ("not established" or "not regulated" or "no such way"));

    private IEnumerable<MatrixRow> Rows(Topic topic, Jurisdiction place, ComparedVehicle vehicle)
    {
        var scheme = known.Schemes(place, vehicle, day);
        var rules = place
            .Rules.Where(rule => rule.Topic == topic.Name && rule.For.AnyOf.Any(each => vehicle.Passes(each) != Truth.No))
            .ToArray();
        if (rules.Length == 0)
            yield return Row(
                place,
                vehicle,
                "",
                [.. Enumerable.Repeat(Nobody(place, topic), Questions.Length - 2), .. Certified(scheme, topic)]
            );
        foreach (var rule in rules)
        {
            if (!inForce.TryGetValue(rule.Id, out var versions))
                inForce[rule.Id] = versions = Resolver.Resolve(site.Book, rule, day);
            foreach (var version in versions)
            {
                var cells = known.Of(vehicle, version, versions.Length == 1, opens ? Where : null);
                yield return Row(place, vehicle, rule.Title, [.. cells, .. Certified(scheme, topic)]);
            }
        }
    }

    /// <summary>Without its links, which stand once under certification.</summary>
    private static MatrixCell[] Certified(SchemeAnswers scheme, Topic topic) =>
        [scheme.Certifier with { Url = "" }, scheme.Before(topic.Name) with { Url = "" }];

    private int At(string vehicle) => group.Vehicles.IndexOf(group.Vehicles.First(each => each.Id == vehicle));

    private static MatrixCell Nobody(Jurisdiction place, Topic topic) =>
        new(
            [
                place.Coverage.Any(entry => entry.Topic == topic.Name && entry.State == "complete")
                    ? new MatrixLine("limit", "", "no rule for this vehicle", "")
                    : MatrixLine.NotEstablished,
            ],
            "",
            "",
            Links.Jurisdiction(place.Id)
        );

    private static MatrixRow Row(Jurisdiction place, ComparedVehicle vehicle, string about, MatrixCell[] cells) =>
        new(place.Id, place.Name, Links.Jurisdiction(place.Id), about, vehicle.Id, cells);

    private static string TitleOf(Topic topic) => SiteBook.Heading(topic.Title);
}
