using Fractions;
using RuleBook.Figures;
using RuleBook.Physics.Masses;
using RuleBook.Units;

namespace RuleBook.Answers;

/// <summary>A stated lift that the springs cannot give, and corners that cannot be as they were read.</summary>
internal static class HeightBlockers
{
    private static readonly Unit Mm = Unit.Base(Dimension.Length);

    public static IEnumerable<Blocker> Of(Assessment assessment)
    {
        if (assessment.Heights is not { } heights)
            yield break;
        if (heights.Denied is { } denied)
            yield return Denied(heights, denied);
        foreach (var uneven in heights.Uneven)
            yield return Uneven(uneven);
    }

    private static Blocker Denied(HeightAnswer heights, DeniedLift denied)
    {
        var axle =
            heights.Predicted.Length == 1
                ? heights.Predicted[0].Lift.Axle
                : heights.Predicted.MaxBy(each => each.Lift.LiftMm ?? Fraction.Zero)?.Lift.Axle ?? Axle.Rear;
        return new Blocker(BlockerKind.Contradicted, $"{Lifts.Word(axle)}-springs", "stated suspension lift")
        {
            Value = denied.StatedMm,
            Limit = denied.StatedMm < denied.Predicted.Low ? denied.Predicted.Low : denied.Predicted.High,
            Unit = Mm,
            LimitFact = "modification.springs",
            Why =
                denied.StatedMm < denied.Predicted.Low
                    ? $"the springs raise the vehicle by at least {Numbers.Show(denied.Predicted.Low.Value, 0)} mm unladen"
                    : $"the springs raise the vehicle by at most {Numbers.Show(denied.Predicted.High!.Value, 0)} mm unladen",
        };
    }

    private static Blocker Uneven(UnevenAxle uneven) =>
        new(BlockerKind.Contradicted, $"{Lifts.Word(uneven.Axle)}-corners", $"{Lifts.Word(uneven.Axle)} left against right")
        {
            Value = uneven.ApartMm,
            Limit = uneven.WarningMm,
            Unit = Mm,
            LimitFact = $"measured.after.{Lifts.Word(uneven.Axle)}-left",
            Why = "one corner stands far from its neighbour: measure again before relying on the lift",
        };
}
