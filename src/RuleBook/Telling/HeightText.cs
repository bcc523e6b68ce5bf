using Fractions;
using RuleBook.Figures;
using RuleBook.Physics.Heights;
using RuleBook.Physics.Masses;
using RuleBook.Units;

namespace RuleBook.Telling;

/// <summary>The lift as measured, and the lift to expect from springs at the unladen mass.</summary>
internal sealed class HeightText(AnswerPage page)
{
    public void Write(HeightAnswer heights)
    {
        if (heights.Denied is { } denied)
            page.Heading(
                $"THE SPRINGS DO NOT GIVE THE LIFT STATED: {Mm(denied.StatedMm)} mm stated, {Between(denied.Predicted)} mm predicted"
            );
        foreach (var uneven in heights.Uneven)
            page.Heading(
                $"{Lifts.Word(uneven.Axle).ToUpperInvariant()} LEFT AND RIGHT STAND {Mm(uneven.ApartMm)} mm APART: measure again "
                    + "before relying on the lift"
            );
        if (heights.Measured is { } measured)
            Write(measured, heights.UncertaintyMm);
        foreach (var axle in heights.Predicted)
            Write(axle);
        if (!heights.Predicted.IsEmpty)
            page.Aside($"taken for granted: {PredictedLift.Assumption}");
        if (heights.DecidingAxle is { } axleThatDecides)
            page.Item($"each axle was judged by itself: the {Lifts.Word(axleThatDecides)} axle decides");
        MissingText.Write(page, heights.Missing);
    }

    private void Write(MeasuredLift measured, Fraction? uncertainty)
    {
        page.Heading("Lift as measured, wheel centre to guard edge");
        if (measured.Refusal is { } refusal)
            page.Item($"refused: {refusal}", "x ");
        if (measured.Correction is { } correction)
            page.Item(correction, "! ");
        Write("front", measured.Front);
        Write("rear", measured.Rear);
        if (uncertainty is { } band)
            page.Aside($"uncertainty counted at the limits: {Mm(band)} mm");
    }

    private void Write(string axle, AxleLift? lift)
    {
        if (lift is null)
            return;
        var block = lift.BodyBlockMm.IsZero ? "" : $", body block {Mm(lift.BodyBlockMm)} mm taken out";
        var correction = lift.CorrectionMm.IsZero ? "" : $", corrected by {Mm(lift.CorrectionMm)} mm";
        page.Item(
            $"{axle}: left {Mm(lift.LeftMm)} mm, right {Mm(lift.RightMm)} mm{correction}{block}: suspension lift {Mm(lift.SuspensionMm)} mm"
        );
        if (lift.Uneven is true)
            page.Item($"left and right stand {Mm(lift.LeftRightMm)} mm apart: find out why before measuring again", "! ", 2);
    }

    private void Write(PredictedAxle axle)
    {
        var word = axle.Lift.Axle == Axle.Front ? "front" : "rear";
        page.Heading($"Lift to expect from the {word} springs, unladen");
        if (axle.Lift.LiftMm is not { } lift)
            return;
        page.Item(
            $"{Numbers.Show(lift, 0)} mm, give or take {Mm(axle.UncertaintyMm)} mm, with {MassText.Kg(axle.AxleLoadKg)} kg on the "
                + $"axle; each {MassText.Kg(axle.Lift.KgPerMm)} kg more lowers it by 1 mm"
        );
        foreach (var need in axle.Needs)
            page.Item(Need(need, word), need.OnAxleKg.IsZero ? "ok" : "! ");
        page.Aside(
            "lift by mass added to the axle: "
                + $"{string.Join(", ", axle.Table.Select(step => $"+{Numbers.Show(step.AddedKg)} kg {Numbers.Show(step.LiftMm, 0)} mm"))}"
        );
    }

    private static string Need(MassNeeded need, string axle)
    {
        var limit = $"{Phrases.Pathway(need.Pathway)}, at most {Mm(need.LimitMm)} mm";
        if (need.OnAxleKg.IsZero)
            return $"{limit}: kept";
        var midway = need.MidwayKg is { } middle ? $", or {MassText.Kg(middle)} kg midway between the axles" : "";
        var ball = need.AtBallKg is { } behind ? $", or {MassText.Kg(behind)} kg at the tow ball" : "";
        return $"{limit}: needs {MassText.Kg(need.OnAxleKg)} kg more of fixed mass over the {axle} axle{midway}{ball}";
    }

    private static string Between(Interval range) =>
        (range.Low, range.High) switch
        {
            ({ } low, { } high) => $"{Numbers.Show(low, 0)} to {Numbers.Show(high, 0)}",
            ({ } low, null) => $"{Numbers.Show(low, 0)} or more",
            (null, { } high) => $"{Numbers.Show(high, 0)} or less",
            _ => "?",
        };

    private static string Mm(Fraction value) => Numbers.Show(value, 1);
}
