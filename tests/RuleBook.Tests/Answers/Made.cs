using System.Collections.Immutable;
using Fractions;
using RuleBook.Facts;
using RuleBook.InForce;
using RuleBook.Law;
using RuleBook.Text;
using RuleBook.Units;

namespace RuleBook.Tests.Answers;

/// <summary>Rules, versions and books of a scenario of our own, in which nothing stands for any real law.</summary>
internal static class Made
{
    public const string Lift = "suspension-lift";

    public static readonly Mark Mark = new("made.yaml", 1, 1);

    public static readonly Content FiftyThenSeventyFive = new Stated(
        [Tier(Pathway.NoCertificate, AtMost(Lift, 50)), Tier(Pathway.Certificate, AtMost(Lift, 75))],
        Pathway.Prohibited
    );

    public static Limit AtMost(string measure, Fraction value) =>
        new(measure, LimitKind.Bounded, new Bounds(null, new Bound(value, true)), Mark);

    public static Limit Of(string measure, LimitKind kind) => new(measure, kind, null, Mark);

    public static Tier Tier(Pathway pathway, params ImmutableArray<Limit> limits) =>
        new(pathway.ToString(), pathway, Predicate.Always, limits, [], [], [], null, Mark);

    public static Predicate When(string fact, params ImmutableArray<string> words) => new([new FactTest(fact, words, null, Mark)]);

    public static RuleVersion From(string? date, Content content) =>
        new(date is null ? null : Date(date), null, null, null, false, [], null, content, [], null, Mark);

    public static Citation Cite(string source) => new(source, "1", null, Mark);

    public static Source Source(string place, string id, ReadAs readAs = ReadAs.Primary) =>
        new(id, place, ["old-" + id], id, "Somebody", null, null, null, readAs, Date("2026-01-01"), Date("2027-01-01"), null, Mark);

    public static Rule Rule(string place, params ImmutableArray<RuleVersion> versions) =>
        new()
        {
            Jurisdiction = place,
            Topic = "ride-height",
            Name = "raise",
            Aliases = ["lift"],
            Title = "Raising",
            Versions = versions,
            Mark = Mark,
        };

    public static Adoption Adopting(string rule, DateOnly? asOf, params ImmutableArray<Departure> exceptions) =>
        new(rule, asOf, exceptions, Mark);

    public static Departure Departing(string tier, params ImmutableArray<Limit> limits) => new(tier, limits, null, false, null, [], Mark);

    public static Jurisdiction Place(string id, params ImmutableArray<Rule> rules) =>
        new()
        {
            Id = id,
            Aliases = ["former-" + id],
            Name = "Place " + id,
            Registers = true,
            Ask = new Authority("Authority of " + id, null),
            Sources = [Source(id, "law"), Source(id, "note", ReadAs.Secondary)],
            Rules = rules,
            Mark = Mark,
        };

    public static Book Book(params ImmutableArray<Jurisdiction> places) =>
        new()
        {
            Digest = "made",
            Vocabulary = Vocabulary.None with
            {
                Measures = ImmutableDictionary<string, Measure>.Empty.Add(Lift, MeasureOf(Lift)),
                Facts = ImmutableDictionary<string, FactWord>.Empty.Add(
                    "stability-control",
                    new FactWord("stability-control", "sc", "vehicle.stability-control", ["yes", "no", "certified"], "sc", Mark)
                ),
            },
            Jurisdictions = places,
        };

    public static Measure MeasureOf(string name) => new(name, name, Unit.Find("mm")!, name, null, false, false, false, name, Mark);

    public static ResolvedVersion Resolved(Content content, Predicate? of = null) =>
        new(Rule("xa") with { For = new Descriptions([of ?? Predicate.Always]) }, null, null, [], content, null, [], [], []);

    public static FactSet Raised(Fraction millimetres) => FactSet.Nothing.With(Lift, millimetres, "stated");

    public static PartialDate Date(string text) => PartialDate.TryParse(text, out var date) ? date : throw new FormatException(text);

    public static DateOnly Day(string text) => DateOnly.ParseExact(text, "yyyy-MM-dd");
}
