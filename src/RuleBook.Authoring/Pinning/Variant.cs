using System.Collections.Immutable;
using RuleBook.Reading;

namespace RuleBook.Authoring.Pinning;

/// <summary>A record of the data changed in one place.</summary>
/// <param name="Value">The record with the change.</param>
/// <param name="Mark">Where the thing changed is written.</param>
/// <param name="What">What is changed: <c>at most 50 mm of suspension-lift</c>.</param>
/// <param name="To">What it becomes.</param>
internal readonly record struct Variant<T>(T Value, Mark Mark, string What, string To)
{
    /// <summary>The same change, seen in the record around it.</summary>
    public Variant<TOuter> In<TOuter>(Func<T, TOuter> put) => new(put(Value), Mark, What, To);
}

/// <summary>Changes in lists.</summary>
internal static class Variants
{
    /// <summary>Each entry changed in turn.</summary>
    public static IEnumerable<Variant<ImmutableArray<T>>> OfEach<T>(this ImmutableArray<T> items, Func<T, IEnumerable<Variant<T>>> change) =>
        items.SelectMany((item, i) => change(item).Select(variant => variant.In(changed => items.SetItem(i, changed))));

    /// <summary>Each entry left out in turn.</summary>
    public static IEnumerable<Variant<ImmutableArray<T>>> Without<T>(this ImmutableArray<T> items, Func<T, Mark> mark, Func<T, string> what) =>
        items.Select((item, i) => new Variant<ImmutableArray<T>>(items.RemoveAt(i), mark(item), what(item), "left out"));
}
