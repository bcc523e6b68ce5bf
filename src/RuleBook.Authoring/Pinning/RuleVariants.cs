using System.Globalization;
using Fractions;
using RuleBook.Answers;
using RuleBook.Authoring.Walk;
using RuleBook.Law;
using RuleBook.Units;

namespace RuleBook.Authoring.Pinning;

/// <summary>A rule changed in one place.</summary>
internal sealed class RuleVariants(Vocabulary vocabulary)
{
    private readonly BoundVariants bounds = new(vocabulary);
    private readonly TierVariants tiers = new(new BoundVariants(vocabulary));

    public IEnumerable<Variant<Rule>> Of(Rule rule) =>
        [
            .. rule
                .For.AnyOf.OfEach(bounds.Of)
                .Concat(
                    rule.For.AnyOf.Length == 1 ? [] : rule.For.AnyOf.Without(each => each.Tests[0].Mark, _ => "a description of vehicles")
                )
                .Select(variant => variant.In(any => rule with { For = new Descriptions(any) })),
            .. rule.DecidedBy is { } by
                ? [new Variant<Rule>(rule with { DecidedBy = null }, rule.Mark, $"the day of the {by} decides", "left out")]
                : Array.Empty<Variant<Rule>>(),
            .. rule
                .Versions.OfEach(version => version.Decides ? Of(version) : [])
                .Select(variant => variant.In(versions => rule with { Versions = versions })),
        ];

    private IEnumerable<Variant<RuleVersion>> Of(RuleVersion version) =>
        [
            .. version.From is { } from
                ? DateVariants.Of(from).Select(moved => Date(version with { From = moved.Date }, $"from {from.Text}", moved.To))
                : [],
            .. version.InForceBy is { } by
                ? DateVariants.OfLast(by).Select(moved => Date(version with { InForceBy = moved.Date }, $"in-force-by {by.Text}", moved.To))
                : [],
            .. version.Until is { } until
                ? DateVariants.Of(until).Select(moved => Date(version with { Until = moved.Date }, $"until {until.Text}", moved.To))
                : [],
            .. version.WarningOnly
                ? [Date(version with { WarningOnly = false }, "a breach brings a warning only", "left out")]
                : Array.Empty<Variant<RuleVersion>>(),
            .. Of(version.Content, version).Select(variant => variant.In(content => version with { Content = content })),
            .. version.Measured is { } taken ? Of(taken).Select(variant => variant.In(other => version with { Measured = other })) : [],
            .. version.Measured is { Total.IsDefaultOrEmpty: false } measured
                ? measured
                    .Total.Without(_ => version.Mark, part => $"{part} counts in the total")
                    .Select(variant => variant.In(total => version with { Measured = measured with { Total = total } }))
                : [],
        ];

    /// <summary>A tolerance or a step by which a measure is taken left out, or changed by the smallest step that matters.</summary>
    private IEnumerable<Variant<Measured>> Of(Measured measured) =>
        measured
            .Allowances.Without(allowance => allowance.Mark, Name)
            .Concat(measured.Allowances.OfEach(Of))
            .Select(variant => variant.In(allowances => measured with { Allowances = allowances }));

    private IEnumerable<Variant<Allowance>> Of(Allowance allowance)
    {
        var step = Axes.StepOf(vocabulary.Measures[allowance.Measure]);
        return from amount in (Fraction[])[allowance.Amount.Base + step, allowance.Amount.Base - step]
            where amount.IsPositive
            let other = allowance with
            {
                Amount = new Quantity(amount / allowance.Amount.Unit.ToBase, allowance.Amount.Unit),
            }
            select new Variant<Allowance>(other, allowance.Mark, Name(allowance), other.Words);
    }

    private static string Name(Allowance allowance) => $"{allowance.Measure} {allowance.Words}";

    private IEnumerable<Variant<Content>> Of(Content content, RuleVersion version) =>
        content switch
        {
            Stated stated =>
            [
                .. tiers.Of(stated.Tiers).Select(variant => variant.In(changed => (Content)(stated with { Tiers = changed }))),
                .. Beyond(stated.Beyond)
                    .Select(other => new Variant<Content>(
                        stated with
                        {
                            Beyond = other,
                        },
                        version.Mark,
                        $"beyond: {Name(stated.Beyond)}",
                        Name(other)
                    )),
            ],
            Adoption adoption =>
            [
                .. tiers
                    .Of(adoption.Exceptions)
                    .Select(variant => variant.In(changed => (Content)(adoption with { Exceptions = changed }))),
                .. AsOf(adoption, version.From),
            ],
            NotEstablished => [new(new NotRegulated(""), version.Mark, "the rule is not established", "not regulated")],
            _ => [new(new NotEstablished("", null, null), version.Mark, "the rule is not regulated", "not established")],
        };

    private static IEnumerable<Variant<Content>> AsOf(Adoption adoption, PartialDate? from) =>
        adoption.AsOf is { } day
            ? ((int[])[-1, 1]).Select(days => new Variant<Content>(
                adoption with
                {
                    AsOf = day.AddDays(days),
                },
                adoption.Mark,
                $"adopted as of {Text(day)}",
                Text(day.AddDays(days))
            ))
        : from is null ? []
        : [new(adoption with { AsOf = from.Earliest }, adoption.Mark, "adopted as amended", $"as of {Text(from.Earliest)}")];

    internal static IEnumerable<Pathway?> Beyond(Pathway? beyond) =>
        beyond is { } pathway ? [null, .. TierVariants.Beside(pathway).Select(other => (Pathway?)other)] : [Pathway.Prohibited];

    internal static string Name(Pathway? pathway) => pathway is { } known ? Wording.Of(known) : "not established";

    private static string Text(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    private static Variant<RuleVersion> Date(RuleVersion version, string what, string to) => new(version, version.Mark, what, to);
}
