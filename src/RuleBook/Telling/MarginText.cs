using System.Collections.Immutable;
using RuleBook.Answers;
using RuleBook.Law;
using RuleBook.Physics.Tyres;
using RuleBook.Tables;
using RuleBook.Units;

namespace RuleBook.Telling;

/// <summary>What a job leaves, and the tyre sizes that fit.</summary>
public static class MarginText
{
    /// <summary>Writes all of it.</summary>
    public static void Write(AnswerPage page, MarginAnswer answer)
    {
        page.Title("What is left, the rest of the job unchanged.");
        page.Line(
            $"{(answer.Job is { } job ? $"Job {job}. " : "")}"
                + $"By the rules of {answer.JurisdictionName} ({answer.Jurisdiction}) as on {Phrases.Day(answer.On)}."
        );
        foreach (var margin in answer.Margins)
            Write(page, margin);
        if (!answer.Payload.IsEmpty)
            page.Heading("Payload");
        foreach (var check in answer.Payload)
            page.Item(MassText.Line(check), check.Holds ? "ok" : "x ");
        WriteTrailer(page, answer);
        WriteSizes(page, answer);
        if (!answer.Missing.IsEmpty)
            page.Heading("What is missing, and what it would add");
        MissingText.Write(page, answer.Missing);
        page.Heading("Bear in mind");
        foreach (var caution in answer.Cautions)
            page.Item(caution);
    }

    private static void Write(AnswerPage page, Margin margin)
    {
        var unit = margin.Measure.Unit;
        page.Heading(
            $"{char.ToUpperInvariant(margin.Measure.Title[0])}{margin.Measure.Title[1..]}"
                + $"{(margin.Now is { } now ? $" (now {Phrases.Amount(now, unit)})" : "")}"
        );
        var ways = margin.Reaches.Select((up, i) => (up.Pathway, Up: up, Down: i < margin.Downward.Length ? margin.Downward[i] : null));
        foreach (
            var (pathway, up, down) in ways.DistinctBy(way => (way.Up.Certain, way.Up.Possible, way.Down?.Certain, way.Down?.Possible))
        )
            page.Item(
                $"{Phrases.Pathway(pathway)}: {(down is null ? Words(up, unit) : $"up, {Words(up, unit)}; down, {Words(down, unit)}")}"
            );
    }

    private static string Words(PathwayReach reach, Unit unit) =>
        reach.Possible == reach.Certain
            ? Words(reach.Certain, unit)
            : $"{(reach.Certain.Kind == ReachKind.None ? "not for sure" : Words(reach.Certain, unit))} "
                + $"(perhaps {(reach.Possible.Kind == ReachKind.Unlimited ? "without limit" : Words(reach.Possible, unit))}: "
                + "what holds is not known)";

    private static string Words(Reach reach, Unit unit) =>
        reach.Kind switch
        {
            ReachKind.None => "not on this pathway",
            ReachKind.UpTo when reach.Value is { IsZero: true } => "nothing",
            ReachKind.UpTo => $"{(reach.Closed ? "at most" : "under")} {Phrases.Amount(reach.Value!.Value, unit)}",
            _ => "no limit",
        };

    private static void WriteTrailer(AnswerPage page, MarginAnswer answer)
    {
        if (answer.Trailer.IsEmpty)
            return;
        page.Heading("Trailer, weighed alone");
        var least = answer.Trailer.Min(room => room.AloneKg);
        foreach (var room in answer.Trailer)
            page.Item($"{room.Limit}: {MassText.Kg(room.AloneKg)} kg{(room.AloneKg == least ? " (governs)" : "")}");
    }

    private static void WriteSizes(AnswerPage page, MarginAnswer answer)
    {
        if (answer.SizesTried == 0)
            return;
        SizeFit[] certain = [.. answer.Sizes.Where(fit => fit.Outcome.Worst < Pathway.Prohibited)];
        page.Heading($"Tyre sizes that fit: {certain.Length} of {answer.SizesTried} listed");
        if (certain.FirstOrDefault() is { } first)
        {
            page.Table(["size", "growth", "load index", "true speed", "needs"], certain.Select(Row));
            page.Aside("* other rims than the placard's sizes.", 1);
            page.Aside(
                "load index: the least for the axle ratings that will apply, or the one marked with what it leaves on the tighter axle.",
                1
            );
            page.Aside(
                $"true speed: km/h at {Numbers.Show(first.Indicated)} km/h shown; (low) = the speedometer would read low, which its "
                    + "rule forbids.",
                1
            );
        }

        string[] open = [.. answer.Sizes.Except(certain).Select(fit => fit.Size.Designation)];
        if (open.Length > 0)
            page.Item($"not established whether these are allowed: {string.Join(", ", open)}", "? ");
        foreach (var source in answer.SizeSources)
            page.Aside(Phrases.Source(source.Source, [.. new[] { source.Citation.Clause }.OfType<string>()]), 1);
    }

    private static ImmutableArray<string> Row(SizeFit fit) =>
        [
            fit.Size.Designation + (fit.SameRim ? "" : " *"),
            $"{Numbers.Show(fit.Growth.Growth.Amount!.Value)} mm, {Numbers.Show(fit.Growth.GrowthPercent.Amount!.Value, 1)} %",
            Load(fit),
            fit.TrueSpeed.Amount is { } speed
                ? Numbers.Show(speed, 1) + (fit.Speedometer.Contains(SpeedometerFinding.ReadsLow) ? " (low)" : "")
                : "?",
            Needs(fit.Outcome),
        ];

    private static string Load(SizeFit fit)
    {
        if (fit.Loads.IsEmpty)
            return "?";
        var marked = fit.Loads.All(load => load.Index is not null && load.Index != load.Need.Index);
        var most = fit.Loads.MaxBy(load => load.Index?.Value ?? int.MaxValue)!;
        return most.Index is not { } index ? "beyond the table"
            : marked ? $"{index}: {MassText.Kg(fit.Loads.Min(load => load.MarginKg))} kg left"
            : $"{index} or more";
    }

    private static string Needs(Outcome outcome) =>
        outcome.Decided ? Short(outcome.Best) : $"{Short(outcome.Best)} or {Short(outcome.Worst)}";

    private static string Short(Pathway pathway) =>
        pathway switch
        {
            Pathway.NoCertificate => "no certificate",
            Pathway.Certificate => "certificate",
            _ => "approval",
        };
}
