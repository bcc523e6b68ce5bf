using System.Collections.Immutable;
using RuleBook.Tables;
using RuleBook.Text;
using RuleBook.Units;

namespace RuleBook.Authoring.Cases;

/// <summary>The answer that a case expects; what is null is not looked at.</summary>
/// <param name="Between">The pathways possible.</param>
/// <param name="Undecided">The case says only that the verdict is undecided.</param>
/// <param name="Decides">A measure whose limit keeps the verdict from being easier, or is the nearest where nothing is exceeded.</param>
/// <param name="Asks">The facts asked for, by their path in the job; all of them.</param>
/// <param name="Conditions">The conditions to be met or shown, of all rules that bind; all of them.</param>
/// <param name="Findings">
/// By full id of the rule, the pathways that it gives, whatever the other rules say; null where it does not bind.
/// </param>
/// <param name="ConditionsOf">By full id of the rule, the conditions that this rule asks for; all of them.</param>
/// <param name="CodesOf">By full id of the rule, the codes of the tiers that decide; all of them.</param>
/// <param name="WarningOnly">By full id of the rule, whether a breach brings a warning only.</param>
/// <param name="Issued">The papers issued on the pathways possible; all of them, empty where nothing is.</param>
/// <param name="Certifier">What the certifier is called; <see cref="Nobody"/> where no scheme is in force.</param>
/// <param name="BeforeWork">
/// How many steps of the scheme come before the work on the pathways possible; <see cref="Some"/> for any number but none.
/// </param>
/// <param name="MayCertify">Whether the certifier named in the job may certify.</param>
/// <param name="Mark">Where it is written.</param>
public sealed record Expectation(
    Outcome? Between,
    bool Undecided,
    string? Decides,
    ImmutableArray<string>? Asks,
    ImmutableArray<string>? Conditions,
    ImmutableDictionary<string, Outcome?>? Findings,
    ImmutableDictionary<string, ImmutableArray<string>>? ConditionsOf,
    ImmutableDictionary<string, ImmutableArray<string>>? CodesOf,
    ImmutableDictionary<string, Truth>? WarningOnly,
    ImmutableArray<string>? Issued,
    string? Certifier,
    int? BeforeWork,
    Truth? MayCertify,
    Mark Mark
)
{
    /// <summary>More than none.</summary>
    public const int Some = -1;

    /// <summary>The certifier where no scheme is in force.</summary>
    public const string Nobody = "nobody";

    internal bool LooksAtCertification => this is not { Issued: null, Certifier: null, BeforeWork: null, MayCertify: null };
}
