using RuleBook.Law;

namespace RuleBook.Tables;

/// <summary>A tier as a line of the table.</summary>
/// <param name="Pathway">What it gives.</param>
/// <param name="When">The tests that open it at all.</param>
/// <param name="Within">Its limits and conditions; they follow <paramref name="When"/>.</param>
internal readonly record struct TierLine(Pathway Pathway, Tests When, Tests Within);

/// <summary>A version as a block of lines.</summary>
/// <param name="Kind">Whether it states tiers.</param>
/// <param name="For">The tests of the vehicles that its rule binds: of their first description.</param>
/// <param name="OrFor">The tests of every other description; most rules have none.</param>
/// <param name="FirstTier">Index of its first tier.</param>
/// <param name="EndTier">Index behind its last tier.</param>
/// <param name="Beyond">What it gives where no tier holds; null where that is not established.</param>
/// <param name="Speaks">The measures that ask for a rule of their own and of which it speaks, a bit each.</param>
internal readonly record struct VersionLine(
    VersionKind Kind,
    Tests For,
    Tests[] OrFor,
    int FirstTier,
    int EndTier,
    Pathway? Beyond,
    ulong Speaks
)
{
    /// <summary>The tests of each description.</summary>
    public IEnumerable<Tests> Descriptions => OrFor.Prepend(For);
}

/// <summary>What a version says.</summary>
internal enum VersionKind
{
    /// <summary>Tiers.</summary>
    Stated,

    /// <summary>There is no such rule.</summary>
    NotRegulated,

    /// <summary>Nobody has established it.</summary>
    NotEstablished,
}

/// <summary>A rule with the versions of which each may be in force.</summary>
/// <param name="Topic">Index of its topic.</param>
/// <param name="FirstVersion">Index of its first version.</param>
/// <param name="EndVersion">Index behind its last version.</param>
/// <param name="VersionColumn">The column that tells which is in force; 0 where only one can be.</param>
internal readonly record struct RuleLine(int Topic, int FirstVersion, int EndVersion, int VersionColumn);
