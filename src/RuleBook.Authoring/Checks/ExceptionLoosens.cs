using System.Collections.Immutable;
using RuleBook.Law;
using RuleBook.Text;

namespace RuleBook.Authoring.Checks;

/// <summary>An exception that allows more than the adopted rule, without saying why.</summary>
internal static class ExceptionLoosens
{
    internal static readonly CheckInfo Info = new(
        "exception-loosens",
        "an exception allows more than the adopted rule",
        "Most exceptions are stricter; one that is not is easily a slip, and a slip that nobody sees permits what is not permitted.",
        "correct the figure, or say why under 'loosens' and cite who says so",
        Severity.Warning
    );

    internal static IEnumerable<Problem> Find(Inspected book)
    {
        foreach (var (_, version, adoption) in book.Adoptions)
        {
            // One that measures as the adopted rule does has its tolerance too, and the written figures compare.
            var own = version.Measured;
            var tiers = own is null ? Adopted.Tiers(book, adoption) : Adopted.Reaching(book, adoption);
            if (tiers.IsEmpty)
                continue;
            foreach (var change in adoption.Exceptions)
            {
                var found = Loose(own is null ? change : Reaching(change, own, book.Book.Vocabulary), [.. tiers])
                    .Concat(Beyond(book, adoption, change))
                    .ToArray();
                if (change.Loosens is null)
                    foreach (var (mark, what) in found)
                        yield return Info.At(mark, what);
                else if (found.Length == 0)
                    yield return Info.At(
                        book.Key(change.Mark, "loosens"),
                        "the exception is said to loosen and does not",
                        "take 'loosens' out"
                    );
                else if (change.Sources.IsEmpty && change.Added is null or { Sources.IsEmpty: true })
                    yield return Info.At(
                        book.Key(change.Mark, "loosens"),
                        "nobody is cited for what the exception loosens",
                        "add 'sources' to the exception"
                    );
            }
        }
    }

    private static Departure Reaching(Departure change, Measured measured, Vocabulary vocabulary) =>
        change with
        {
            Limits = Reaching(change.Limits, change.Pathway, measured, vocabulary),
            Added = change.Added is { } tier ? tier with { Limits = Reaching(tier.Limits, tier.Pathway, measured, vocabulary) } : null,
        };

    private static ImmutableArray<Limit> Reaching(
        ImmutableArray<Limit> limits,
        Pathway? pathway,
        Measured measured,
        Vocabulary vocabulary
    ) => [.. limits.Select(limit => Allowance.Apply(limit, pathway == Pathway.Prohibited, measured, vocabulary))];

    private static IEnumerable<(Mark, string)> Beyond(Inspected book, Adoption adoption, Departure change)
    {
        if (change.Beyond is { } own && Adopted.Beyond(book, adoption).Any(theirs => theirs > (own.Pathway ?? Pathway.NoCertificate)))
            yield return (book.Key(change.Mark, "beyond"), "the exception allows more beyond the limits than the adopted rule");
    }

    private static IEnumerable<(Mark, string)> Loose(Departure change, Tier[] adopted)
    {
        if (
            change.Added is { Pathway: < Pathway.Prohibited } added
            && !adopted.Any(tier => tier.Pathway <= added.Pathway && TierUnreachable.Covers(tier, added))
        )
            yield return (added.Mark, $"the added tier '{added.Name}' gives what the adopted rule does not give on this pathway");
        var same = adopted.Where(tier => tier.Name == change.Tier).ToArray();
        if (change.Dropped && same.Any(tier => tier.Pathway == Pathway.Prohibited))
            yield return (change.Mark, $"without the tier '{change.Tier}' what it prohibits is open");
        if (same.Any(tier => change.Pathway < tier.Pathway))
            yield return (change.Mark, $"the exception gives the tier '{change.Tier}' on an easier pathway");
        foreach (var own in change.Limits)
            if (same.SelectMany(tier => tier.Limits).Any(theirs => theirs.Measure == own.Measure && IsWider(own, theirs)))
                yield return (own.Mark, $"the exception allows more {own.Measure} than the adopted rule");
        if (change.Provided is { } conditions && same.SelectMany(tier => tier.Provided).Except(conditions).FirstOrDefault() is { } dropped)
            yield return (change.Mark, $"the condition '{dropped}' of the adopted rule falls away");
    }

    private static bool IsWider(Limit own, Limit theirs) =>
        theirs.Bounds is { } outer
        && (own.Kind == LimitKind.None || (Departures.Replace(theirs, own).Bounds is { } inner && !Ranges.Inside(inner, outer)));
}
