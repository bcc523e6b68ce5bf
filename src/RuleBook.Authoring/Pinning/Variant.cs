using System.Collections.Immutable;
using RuleBook.Text;

namespace RuleBook.Authoring.Pinning;

/// <summary>A record of the data changed in one place.</summary>
/// <param name="Value">The record with the change.</param>
/// <param name="Mark">Where the thing changed is written.</param>
/// <param name="What">What is changed: <c>suspension-lift at most 50 mm</c>.</param>
/// <param name="To">What it becomes.</param>
/// <param name="Focus">Where alone it can be felt.</param>
internal readonly record struct Variant<T>(T Value, Mark Mark, string What, string To, Focus Focus)
{
    /// <summary>A change that may be felt anywhere.</summary>
    public Variant(T value, Mark mark, string what, string to)
        : this(value, mark, what, to, Focus.Everywhere) { }

    /// <summary>The same change, seen in the record around it.</summary>
    public Variant<TOuter> In<TOuter>(Func<T, TOuter> put) => new(put(Value), Mark, What, To, Focus);
}

/// <summary>Changes in lists.</summary>
internal static class Variants
{
    /// <summary>Each entry changed in turn.</summary>
    public static IEnumerable<Variant<ImmutableArray<T>>> OfEach<T>(
        this ImmutableArray<T> items,
        Func<T, IEnumerable<Variant<T>>> change
    ) => items.SelectMany((item, i) => change(item).Select(variant => variant.In(changed => items.SetItem(i, changed))));

    /// <summary>Each entry left out in turn.</summary>
    public static IEnumerable<Variant<ImmutableArray<T>>> Without<T>(
        this ImmutableArray<T> items,
        Func<T, Mark> mark,
        Func<T, string> what
    ) => items.Select((item, i) => new Variant<ImmutableArray<T>>(items.RemoveAt(i), mark(item), what(item), "left out"));
}
