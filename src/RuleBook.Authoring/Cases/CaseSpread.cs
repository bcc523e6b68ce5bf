using System.Collections.Immutable;
using RuleBook.Text;

namespace RuleBook.Authoring.Cases;

/// <summary>The days and lists of values over which one expectation holds.</summary>
/// <param name="Days">The days; a single null where the case has none, or one that its id need not name.</param>
/// <param name="Axes">Paths of the job, each with its values.</param>
internal sealed record CaseSpread(ImmutableArray<Scalar?> Days, ImmutableArray<CaseAxis> Axes)
{
    /// <summary>The most cases that one entry of a file may stand for, with all under its <c>then</c>.</summary>
    public const int Most = 500;

    /// <summary>How many cases it stands for; no more than one above <see cref="Most"/> is counted.</summary>
    public int Count => Axes.Aggregate(Bounded(Days.Length), (count, axis) => Bounded((long)count * axis.Values.Length));

    public static CaseSpread Of(Fields fields)
    {
        var days = fields.Node("on") is Sequence ? [.. Scalars(fields, "on", fields.Node("on")!)] : (ImmutableArray<Scalar?>)[null];
        var each = fields.Nested("each")?.Entries ?? [];
        return new CaseSpread(days, [.. each.Select(entry => new CaseAxis(entry.Key, Scalars(fields, entry.Key.Text, entry.Value)))]);
    }

    /// <summary>Every combination: what it adds to the id, and the job with its values.</summary>
    public IEnumerable<(string Suffix, Mapping Job)> Over(Mapping job)
    {
        var spread = Days.Select(day => (Suffix: day is null ? "" : $"/{day.Text}", Job: day is null ? job : NodeEdit.Set(job, "on", day)));
        return Axes.Aggregate(
            spread,
            (before, axis) =>
                before.SelectMany(one =>
                    axis.Values.Select(value => (Suffix: $"{one.Suffix}/{value.Text}", Job: NodeEdit.Set(one.Job, axis.Path.Text, value)))
                )
        );
    }

    private static int Bounded(long count) => (int)Math.Min(count, Most + 1);

    private static ImmutableArray<Scalar> Scalars(Fields fields, string key, Node value)
    {
        var items = value is Sequence many ? many.Items : [value];
        if (items.IsEmpty)
            fields.Add("wrong-shape", value.Mark, $"'{key}' has no value", "give at least one: a case without a value is never run");
        return [.. items.Where(item => fields.TextOf(item) is not null).OfType<Scalar>()];
    }
}
