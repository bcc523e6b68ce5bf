using System.Collections.Immutable;
using RuleBook.Authoring.Checks;

namespace RuleBook.Authoring.Inspecting;

/// <summary>Every check, in one list.</summary>
public static class CheckList
{
    /// <summary>The checks of what the files mean together.</summary>
    internal static ImmutableArray<Check> Semantic { get; } =
    [
        new(NoJurisdiction.Info, NoJurisdiction.Find),
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
        new(EditionsOutOfOrder.Info, EditionsOutOfOrder.Find, Leaning.OnValues),
        new(DatesOutOfOrder.Info, DatesOutOfOrder.Find, Leaning.OnValues),
        new(VersionsOutOfOrder.Info, VersionsOutOfOrder.Find, Leaning.OnValues),
        new(VersionsOverlap.Info, VersionsOverlap.Find, Leaning.OnValues),
        new(VersionsGap.Info, VersionsGap.Find, Leaning.OnValues),
        new(NothingFollows.Info, NothingFollows.Find, Leaning.OnValues),
        new(PartialDatesOverlap.Info, PartialDatesOverlap.Find, Leaning.OnValues),
        new(BoundsContradict.Info, BoundsContradict.Find),
        new(AskSaidTwice.Info, AskSaidTwice.Find),
        new(LimitImplausible.Info, LimitImplausible.Find),
        new(UnitUnusual.Info, UnitUnusual.Find),
        new(NoteFigure.Info, NoteFigure.Find, Leaning.OnValues),
        new(FactUnread.Info, FactUnread.Find),
        new(BeyondMissing.Info, BeyondMissing.Find, Leaning.OnValues),
        new(InvisibleCharacter.Info, InvisibleCharacter.Find),
        new(SmartQuotes.Info, SmartQuotes.Find),
        new(TiersOutOfOrder.Info, TiersOutOfOrder.Find, Leaning.OnValues),
        new(TierUnreachable.Info, TierUnreachable.Find, Leaning.OnValues),
        new(IdleAlternative.Info, IdleAlternative.Find),
        new(WordNotBound.Info, WordNotBound.Find, Leaning.OnValues),
        new(AlteredTooEarly.Info, AlteredTooEarly.Find, Leaning.OnValues),
        new(GraceEndUntold.Info, GraceEndUntold.Find, Leaning.OnAllValues),
        new(GraceKept.Info, GraceKept.Find, Leaning.OnAllValues),
        new(UnknownPart.Info, UnknownPart.Find),
        new(NoSource.Info, NoSource.Find),
        new(UnknownSource.Info, UnknownSource.Find, Leaning.OnAllFiles),
        new(NoClause.Info, NoClause.Find, Leaning.OnAllFiles),
        new(CarriesUnknown.Info, CarriesUnknown.Find, Leaning.OnAllValues),
        new(FigureWithoutSource.Info, FigureWithoutSource.Find, Leaning.OnAllFiles),
        new(ProhibitionWithoutSource.Info, ProhibitionWithoutSource.Find, Leaning.OnAllFiles),
        new(SourceNotCited.Info, SourceNotCited.Find, Leaning.OnAllFiles),
        new(CheckedInFuture.Info, CheckedInFuture.Find),
        new(RecheckBeforeChecked.Info, RecheckBeforeChecked.Find),
        new(SourceOverdue.Info, SourceOverdue.Find),
        new(UrlNotWeb.Info, UrlNotWeb.Find),
        new(UnknownRule.Info, UnknownRule.Find, Leaning.OnAllFiles),
        new(UnknownIndication.Info, UnknownIndication.Find, Leaning.OnAllFiles),
        new(AdoptsOtherTopic.Info, AdoptsOtherTopic.Find, Leaning.OnAllFiles),
        new(AdoptsOtherVehicles.Info, AdoptsOtherVehicles.Find, Leaning.OnAllFiles),
        new(AdoptionCircle.Info, AdoptionCircle.Find, Leaning.OnAllFiles),
        new(AdoptionFan.Info, AdoptionFan.Find, Leaning.OnAllFiles),
        new(AdoptedNotInForce.Info, AdoptedNotInForce.Find, Leaning.OnAllFiles),
        new(UnknownTier.Info, UnknownTier.Find, Leaning.OnAllValues),
        new(UnknownLimit.Info, UnknownLimit.Find, Leaning.OnAllValues),
        new(EmptyException.Info, EmptyException.Find),
        new(ExceptionLoosens.Info, ExceptionLoosens.Find, Leaning.OnAllValues),
        new(HandCopy.Info, HandCopy.Find, Leaning.OnAllValues),
        new(UnknownJurisdiction.Info, UnknownJurisdiction.Find, Leaning.OnAllFiles),
        new(RegistersNote.Info, RegistersNote.Find),
        new(CoverageMissing.Info, CoverageMissing.Find),
        new(UnknownTopic.Info, UnknownTopic.Find),
        new(CoverageLacks.Info, CoverageLacks.Find),
        new(CoverageContradicts.Info, CoverageContradicts.Find, Leaning.OnValues),
        new(ReadingNotTaken.Info, ReadingNotTaken.Find),
    ];

    /// <summary>What each code means that an inspection can report, in the order of the codes.</summary>
    public static ImmutableArray<CheckInfo> All { get; } =
    [
        .. SyntaxCodes
            .All.Concat(ReadingCodes.All)
            .Concat(Semantic.Select(check => check.Info))
            .Append(CaseCitesUnread.Info)
            .Append(VehicleNotCovered.Info)
            .DistinctBy(info => info.Code)
            .OrderBy(info => info.Code, StringComparer.Ordinal),
    ];
}
