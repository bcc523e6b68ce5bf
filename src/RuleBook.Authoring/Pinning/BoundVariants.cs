using RuleBook.Authoring.Resolved;
using RuleBook.Authoring.Walk;
using RuleBook.Law;
using RuleBook.Text;
using RuleBook.Units;

namespace RuleBook.Authoring.Pinning;

/// <summary>Limits and tests changed by the smallest step that matters.</summary>
internal sealed class BoundVariants(Vocabulary vocabulary)
{
    /// <summary>
    /// A bound a step up or down, open instead of closed or the reverse; a limit that is not established, or none, said otherwise.
    /// </summary>
    public IEnumerable<Variant<Limit>> Of(Limit limit) =>
        limit.Kind switch
        {
            LimitKind.Bounded => Of(limit.Bounds!, limit.Measure, limit.Mark)
                .Select(variant => variant.In(bounds => limit with { Bounds = bounds })),
            LimitKind.None =>
            [
                new(limit with { Kind = LimitKind.NotEstablished }, limit.Mark, $"no limit on {limit.Measure}", "not established"),
            ],
            _ => [new(limit with { Kind = LimitKind.None }, limit.Mark, $"the limit on {limit.Measure} is not established", "no limit")],
        };

    /// <summary>A word left out, a test left out, a bound changed.</summary>
    public IEnumerable<Variant<Predicate>> Of(Predicate predicate) =>
        predicate
            .Tests.OfEach(Of)
            .Concat(predicate.Tests.Without(test => test.Mark, test => $"only for {LimitWords.Of(new Predicate([test]), vocabulary)}"))
            .Select(variant => variant.In(tests => new Predicate(tests)));

    private IEnumerable<Variant<FactTest>> Of(FactTest test) =>
        test.Bounds is { } bounds
            ? Of(bounds, test.Fact, test.Mark).Select(variant => variant.In(changed => test with { Bounds = changed }))
        : test.OneOf.Length < 2 ? []
        : test
            .OneOf.Zip(test.OneOf.Without(_ => test.Mark, word => $"{test.Fact} {word}"))
            .Select(pair => pair.Second.In(words => test with { OneOf = words }) with { Focus = new OnWord(test.Fact, pair.First) });

    private IEnumerable<Variant<Bounds>> Of(Bounds bounds, string name, Mark mark)
    {
        var measure = vocabulary.Measures[name];
        if (bounds.Lower is { } lower)
            foreach (var bound in Of(lower, measure))
                yield return Tell(bounds with { Lower = bound }, new Bounds(lower, null), new Bounds(bound, null), Between(lower, bound));
        if (bounds.Upper is { } upper)
            foreach (var bound in Of(upper, measure))
                yield return Tell(bounds with { Upper = bound }, new Bounds(null, upper), new Bounds(null, bound), Between(upper, bound));

        OnMeasure Between(Bound from, Bound to) =>
            from.Value < to.Value ? new(name, from.Value, to.Value) : new(name, to.Value, from.Value);

        Variant<Bounds> Tell(Bounds changed, Bounds from, Bounds to, Focus focus) =>
            new(changed, mark, $"{name} {LimitWords.Of(from, measure)}", LimitWords.Of(to, measure), focus);
    }

    private static IEnumerable<Bound> Of(Bound bound, Measure measure)
    {
        var step = Axes.StepOf(measure);
        yield return bound with
        {
            Value = bound.Value + step,
        };
        yield return bound with
        {
            Value = bound.Value - step,
        };
        yield return bound with
        {
            Closed = !bound.Closed,
        };
    }
}
