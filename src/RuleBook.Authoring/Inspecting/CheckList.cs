using System.Collections.Immutable;
using RuleBook.Authoring.Checks;

namespace RuleBook.Authoring.Inspecting;

/// <summary>Every check, in one list.</summary>
public static class CheckList
{
    /// <summary>The checks of what the files mean together.</summary>
    internal static ImmutableArray<Check> Semantic { get; } =
    [
        new(StrayFile.Info, StrayFile.Find),
        new(VocabularyFile.Info, VocabularyFile.Find),
        new(DuplicateWord.Info, DuplicateWord.Find),
        new(DuplicateRule.Info, DuplicateRule.Find),
        new(DuplicateSource.Info, DuplicateSource.Find),
        new(DuplicateScheme.Info, DuplicateScheme.Find),
        new(DuplicateTier.Info, DuplicateTier.Find),
        new(DuplicateCoverage.Info, DuplicateCoverage.Find),
        new(DuplicateIssued.Info, DuplicateIssued.Find),
        new(AliasClash.Info, AliasClash.Find),
        new(AliasHidesId.Info, AliasHidesId.Find),
        new(WrongStart.Info, WrongStart.Find),
        new(DatesOutOfOrder.Info, DatesOutOfOrder.Find),
        new(VersionsOutOfOrder.Info, VersionsOutOfOrder.Find),
        new(VersionsOverlap.Info, VersionsOverlap.Find),
        new(VersionsGap.Info, VersionsGap.Find),
        new(PartialDatesOverlap.Info, PartialDatesOverlap.Find),
        new(BoundsContradict.Info, BoundsContradict.Find),
        new(TiersOutOfOrder.Info, TiersOutOfOrder.Find),
        new(TierUnreachable.Info, TierUnreachable.Find),
        new(UnknownPart.Info, UnknownPart.Find),
        new(NoSource.Info, NoSource.Find),
        new(UnknownSource.Info, UnknownSource.Find, LooksElsewhere: true),
        new(NoClause.Info, NoClause.Find, LooksElsewhere: true),
        new(SourceNotCited.Info, SourceNotCited.Find, LooksElsewhere: true),
        new(CheckedInFuture.Info, CheckedInFuture.Find),
        new(RecheckBeforeChecked.Info, RecheckBeforeChecked.Find),
        new(SourceOverdue.Info, SourceOverdue.Find),
        new(UrlNotWeb.Info, UrlNotWeb.Find),
        new(UnknownRule.Info, UnknownRule.Find, LooksElsewhere: true),
        new(UnknownIndication.Info, UnknownIndication.Find, LooksElsewhere: true),
        new(AdoptionCircle.Info, AdoptionCircle.Find, LooksElsewhere: true),
        new(AdoptedNotInForce.Info, AdoptedNotInForce.Find, LooksElsewhere: true),
        new(UnknownTier.Info, UnknownTier.Find, LooksElsewhere: true),
        new(UnknownLimit.Info, UnknownLimit.Find, LooksElsewhere: true),
        new(EmptyException.Info, EmptyException.Find),
        new(HandCopy.Info, HandCopy.Find, LooksElsewhere: true),
        new(UnknownJurisdiction.Info, UnknownJurisdiction.Find, LooksElsewhere: true),
        new(RegistersNote.Info, RegistersNote.Find),
        new(CoverageMissing.Info, CoverageMissing.Find),
        new(UnknownTopic.Info, UnknownTopic.Find),
        new(CoverageLacks.Info, CoverageLacks.Find),
        new(CoverageContradicts.Info, CoverageContradicts.Find),
        new(ReadingNotTaken.Info, ReadingNotTaken.Find),
    ];

    /// <summary>What each code means that an inspection can report, in the order of the codes.</summary>
    public static ImmutableArray<CheckInfo> All { get; } =
    [
        .. SyntaxCodes.All
            .Concat(ReadingCodes.All)
            .Concat(Semantic.Select(check => check.Info))
            .DistinctBy(info => info.Code)
            .OrderBy(info => info.Code, StringComparer.Ordinal),
    ];
}
