using System.Collections.Immutable;
using Fractions;
using RuleBook.Text;
using RuleBook.Units;

namespace RuleBook.Law.Reading;

/// <remarks>
/// <c>any-of</c> (at least one of these) and <c>none-of</c> (not one of these) stand among the tests of a predicate, and within one
/// another. They are multiplied out here into alternatives that only have to hold whole, so that nothing behind the reader knows of them: a
/// tier with alternatives is a tier for each. In three-valued logic that is the same, whatever is unknown.
/// </remarks>
internal sealed partial class LimitReader
{
    private const int MostAlternatives = 64;

    /// <summary>A predicate where there is no room for alternatives.</summary>
    public Predicate ReadPredicate(Fields? fields)
    {
        var read = ReadDescriptions(fields).AnyOf;
        if (read.Length > 1)
            fields!.Add(
                "alternatives",
                fields.Mark,
                $"these are {read.Length} alternatives, and only one thing can be said here",
                "give each alternative a scheme or tier of its own"
            );
        return read[0];
    }

    /// <summary>The vehicles that a rule binds. What is left over by <c>none-of</c> names no word that has to be named.</summary>
    public Descriptions ReadDescriptions(Fields? fields)
    {
        Predicate[] read = [.. ReadAlternatives(fields).Select(Named)];
        return read is []
            ? Descriptions.Everything
            : new Descriptions([.. read.Where((each, at) => !read.Where((wide, i) => i != at && IsPart(each, wide, i < at)).Any())]);

        // of two that are the same the first one stays
        bool IsPart(Predicate narrow, Predicate wide, bool first) => Implies(narrow, wide) && (first || !Implies(wide, narrow));
    }

    private Predicate Named(Predicate read) =>
        !read.Tests.Any(test => test.LeftOver)
            ? read
            : new Predicate([
                .. read.Tests.Select(test =>
                    test.LeftOver ? test with { OneOf = [.. test.OneOf.Except(vocabulary.Facts[test.Fact].WhereNamed)] } : test
                ),
            ]);

    /// <summary>Alternatives of which one has to hold.</summary>
    private ImmutableArray<Predicate> ReadAlternatives(Fields? fields)
    {
        ImmutableArray<Predicate> all = [Predicate.Always];
        var before = fields?.Problems.Count;
        foreach (var (key, value) in fields?.Entries ?? [])
            all = key.Text switch
            {
                "any-of" => All(all, [.. Members(fields!, value).SelectMany(member => member)]),
                "none-of" => Members(fields!, value).Aggregate(all, (left, member) => All(left, Not(member))),
                _ => ReadTest(fields!, key, value) is { } test ? All(all, [new Predicate([test])]) : all,
            };
        if (all.IsEmpty && fields!.Problems.Count == before)
            fields.Add("alternatives", fields.Mark, "no vehicle can meet this", "take out what leaves nothing over");
        else if (all.Length > MostAlternatives)
            fields!.Add(
                "alternatives",
                fields.Mark,
                $"multiplied out these are more than {MostAlternatives} alternatives",
                "say it with fewer, or in several tiers"
            );
        return all;
    }

    private ImmutableArray<ImmutableArray<Predicate>> Members(Fields fields, Node value)
    {
        if (value is not Sequence { Items: { Length: > 0 } members })
        {
            fields.Add("wrong-shape", value.Mark, "a list is needed here", "write each one as [ { category: NA }, { gvm: 2000 kg } ]");
            return [];
        }

        foreach (var nothing in members.Where(member => member is not Mapping { Entries.Length: > 0 }))
            fields.Add("wrong-shape", nothing.Mark, "a fact or measure is needed here", "write { category: NA }");
        return [.. members.OfType<Mapping>().Select(member => ReadAlternatives(new Fields(member, fields.Problems)))];
    }

    private FactTest? ReadTest(Fields fields, Scalar key, Node value) =>
        vocabulary.Facts.TryGetValue(key.Text, out var fact) ? new FactTest(key.Text, ReadWords(fields, value, fact), null, key.Mark)
        : FindMeasure(fields, key) is { } measure && ReadBounds(fields, value, measure) is { } bounds
            ? new FactTest(key.Text, [], bounds, key.Mark)
        : null;

    /// <summary>
    /// Each of the one with each of the other, without what another of them covers; once there is one too many, it stays so.
    /// </summary>
    private ImmutableArray<Predicate> All(ImmutableArray<Predicate> left, ImmutableArray<Predicate> right)
    {
        if (left.Length > MostAlternatives || right.Length > MostAlternatives)
            return left.Length > MostAlternatives ? left : right;
        var all = new List<Predicate>();
        foreach (var both in from one in left from other in right select Both(one, other))
        {
            if (both is null || (left.Length > 1 && all.Any(wide => Implies(both, wide))))
                continue;
            if (left.Length > 1)
                all.RemoveAll(narrow => Implies(narrow, both));
            all.Add(both);
            if (all.Count > MostAlternatives)
                break;
        }

        return [.. all];
    }

    /// <summary>Both at once, one test a fact or measure; null where they leave nothing over.</summary>
    private static Predicate? Both(Predicate one, Predicate other)
    {
        var tests = one.Tests;
        foreach (var test in other.Tests)
            if (tests.FirstOrDefault(same => same.Fact == test.Fact) is not { } same)
                tests = tests.Add(test);
            else if (Both(same, test) is var both && !IsNever(both))
                tests = tests.Replace(same, both);
            else
                return null;
        return new Predicate(tests);
    }

    private static FactTest Both(FactTest one, FactTest other) =>
        one.Bounds is { } range && other.Bounds is { } more
            ? one with
            {
                Bounds = new Bounds(
                    Tighter(range.Lower, more.Lower, (own, their) => own > their),
                    Tighter(range.Upper, more.Upper, (own, their) => own < their)
                ),
            }
            : one with
            {
                OneOf = [.. one.OneOf.Where(word => other.OneOf.Contains(word))],
                LeftOver = one.LeftOver && other.LeftOver,
            };

    private static Bound? Tighter(Bound? one, Bound? other, Func<Fraction, Fraction, bool> tighter) =>
        one is null || (other is not null && (tighter(other.Value, one.Value) || (other.Value == one.Value && !other.Closed)))
            ? other
            : one;

    private static bool IsNever(FactTest test) =>
        test.Bounds is null
            ? test.OneOf.IsEmpty
            : test.Bounds is { Lower: { } lower, Upper: { } upper }
                && (lower.Value > upper.Value || (lower.Value == upper.Value && !(lower.Closed && upper.Closed)));

    /// <summary>
    /// Whether what meets the one meets the other: to ask for that as well changes nothing. One that names what has to be named is no part
    /// of one that does not.
    /// </summary>
    private bool Implies(Predicate narrow, Predicate wide) =>
        wide.Tests.All(test =>
            narrow.Tests.FirstOrDefault(own => own.Fact == test.Fact) is { } own
            && Both(own, test) is var both
            && (own.Bounds is null ? both.OneOf.Length == own.OneOf.Length : both.Bounds == own.Bounds)
        )
        && narrow.Tests.All(own =>
            own.Bounds is not null
            || wide.Tests.Any(test => test.Fact == own.Fact)
            || !own.OneOf.Intersect(vocabulary.Facts[own.Fact].WhereNamed).Any()
        );

    /// <summary>Not one of the alternatives: of each, some test fails.</summary>
    private ImmutableArray<Predicate> Not(ImmutableArray<Predicate> alternatives) =>
        alternatives.Aggregate<Predicate, ImmutableArray<Predicate>>(
            [Predicate.Always],
            (all, alternative) =>
                All(all, [.. alternative.Tests.SelectMany(Fails).Where(test => !IsNever(test)).Select(test => new Predicate([test]))])
        );

    private IEnumerable<FactTest> Fails(FactTest test) =>
        test.Bounds is { } bounds
            ? Outside(bounds).Select(outside => test with { Bounds = outside })
            : [test with { OneOf = vocabulary.Facts[test.Fact].Values.RemoveRange(test.OneOf), LeftOver = true }];

    private static IEnumerable<Bounds> Outside(Bounds bounds) =>
        new[]
        {
            bounds.Lower is { } lower ? new Bounds(null, lower with { Closed = !lower.Closed }) : null,
            bounds.Upper is { } upper ? new Bounds(upper with { Closed = !upper.Closed }, null) : null,
        }.OfType<Bounds>();
}
