using System.Collections.Immutable;
using RuleBook.Text;

namespace RuleBook.Law.Reading;

/// <summary>
/// What a rule says once for its versions: how measures are taken, sources, disagreements and notes. <c>of</c> names the versions by their
/// start; left out, it is every version (of <c>measured</c> and <c>disputed</c>: every one that states tiers).
/// </summary>
/// <param name="Measured">For versions with tiers that do not say it themselves.</param>
/// <param name="Sources">Beside each version's own, after them.</param>
/// <param name="Disputes">Beside each version's own, after them.</param>
/// <param name="Notes">After each version's own.</param>
internal sealed record RuleDefaults(
    Measured? Measured,
    ImmutableArray<Of<Citation>> Sources,
    ImmutableArray<Of<Dispute>> Disputes,
    ImmutableArray<Of<string>> Notes
)
{
    /// <summary>The version with what its rule says for it.</summary>
    internal RuleVersion Complete(RuleVersion version, string start)
    {
        var states = version.Content is Stated;
        var notes = Notes.Where(entry => entry.Holds(start)).Select(entry => entry.Value).Prepend(version.Note).OfType<string>().ToArray();
        return version with
        {
            Note = notes is [] ? null : string.Join(' ', notes),
            Measured = version.Measured ?? (states ? Measured : null),
            Sources =
            [
                .. version.Sources,
                .. Sources.Where(entry => entry.Holds(start)).Select(entry => Inheritance.Taken(entry.Value)).OfType<Citation>(),
            ],
            Disputes =
            [
                .. version.Disputes,
                .. Disputes.Where(entry => entry.Starts.IsEmpty ? states : entry.Holds(start)).Select(entry => entry.Value),
            ],
        };
    }
}

/// <summary>Something said for some versions of a rule.</summary>
/// <param name="Starts">Their starts as written; empty for every version.</param>
/// <param name="Value">What is said.</param>
/// <param name="Mark">Where it is written.</param>
internal sealed record Of<T>(ImmutableArray<string> Starts, T Value, Mark Mark)
{
    internal bool Holds(string start) => Starts.IsEmpty || Starts.Contains(start);
}

/// <summary>Makes a version out of an earlier one and what it changes.</summary>
internal static class Inheritance
{
    /// <summary>The content, sources and measuring of the earlier version with the changes made.</summary>
    internal static RuleVersion Apply(RuleVersion own, RuleVersion earlier, Likeness like, Pathway? beyond, bool saysBeyond) =>
        own with
        {
            Like = like,
            Measured = own.Measured ?? earlier.Measured,
            Note = own.Note ?? earlier.Note,
            NotFound = own.NotFound is [] ? earlier.NotFound : own.NotFound,
            InWhole = own.InWhole ?? earlier.InWhole,
            Sources =
            [
                .. own.Sources,
                .. earlier.Sources.Where(citation => !own.Sources.Any(said => Same(said, citation))).Select(Taken).OfType<Citation>(),
            ],
            Disputes = [.. own.Disputes, .. earlier.Disputes.Where(dispute => own.Disputes.All(said => said.About != dispute.About))],
            Content = earlier.Content switch
            {
                Stated stated => With((Stated)Departures.Apply(Aged(stated, like.Changes), like.Changes), beyond, saysBeyond),
                Adoption adoption => adoption with { Exceptions = [.. adoption.Exceptions, .. like.Changes] },
                var other => other,
            },
        };

    /// <summary>The citation as another version takes it over: it says nothing of that version's days.</summary>
    internal static Citation? Taken(Citation citation)
    {
        if (citation.Carries is not { } words)
            return citation with { IsInherited = true };
        var left = words.RemoveAll(word => Part.From.IsNamed(word) || Part.Until.IsNamed(word));
        return left.IsEmpty ? null : citation with { IsInherited = true, Carries = left };
    }

    private static Stated With(Stated stated, Pathway? beyond, bool said) => said ? stated with { Beyond = beyond } : stated;

    /// <summary>What a changed tier cites carries only what stays.</summary>
    private static Stated Aged(Stated stated, ImmutableArray<Departure> changes) =>
        stated with
        {
            Tiers =
            [
                .. stated.Tiers.Select(tier =>
                    changes.Any(change => change.Tier == tier.Name)
                        ? tier with
                        {
                            Sources = [.. tier.Sources.Select(citation => citation with { IsInherited = true })],
                        }
                        : tier
                ),
            ],
        };

    private static bool Same(Citation one, Citation other) => one.Cite == other.Cite && one.Clause == other.Clause;
}
