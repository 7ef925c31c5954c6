using StudioKit.Planning;
using StudioKit.Planning.Checks;
using UnitsNet;

namespace StudioKit.Wording;

/// <summary>What would make panel and frame bear what is asked of them.</summary>
internal static class StructureRemedyText
{
    public static string Of(CheckRemedy remedy) => remedy.Kind switch
    {
        CheckRemedyKind.RestOnAllEdges => "Strips under all four edges.",
        CheckRemedyKind.SheetOfThickness => $"A sheet of {AmountText.Of(remedy.Amount)}.",
        CheckRemedyKind.WiderSweep => $"A radius of {Whole(remedy.Amount)}.",
        CheckRemedyKind.MoreEdgeRoom => $"Leave {Tenths(remedy.Amount)} at every edge.",
        CheckRemedyKind.OtherPipe => $"{string.Join(", ", remedy.Parts)}, with fittings that take it.",
        CheckRemedyKind.Stretchers => "Stretchers between the legs ('stretchers: always').",
        CheckRemedyKind.Guys => $"Cords from the top corners to {AmountText.Of(remedy.Amount)} pegs.",
        CheckRemedyKind.MorePegs => $"{AmountText.Of(remedy.Amount)} pegs in all.",
        CheckRemedyKind.Shade => "Shade over frame and sheet.",
        CheckRemedyKind.LighterElbow => $"Lean on it with no more than {AmountText.Of(remedy.Amount)}.",
        CheckRemedyKind.BallastAgainstTipping => remedy.Amount is CheckAmount.AddedBallast { OnWindwardFeet: { } feet } tipping
            ? $"Hang {UnderMiddle(tipping)}, or put {Kilograms(feet)} on the windward feet."
            : throw NoAmount(remedy),
        CheckRemedyKind.BallastAgainstSliding => remedy.Amount is CheckAmount.AddedBallast sliding
            ? $"Hang {UnderMiddle(sliding)}."
            : throw NoAmount(remedy),
        CheckRemedyKind.StandOtherwise when remedy.Restand is { } restand => $"{RestandText.Of(restand)}.",
        CheckRemedyKind.OutOfWind when remedy.Amount is CheckAmount.Measure { Value: Speed mean } =>
            $"Stand it only in wind of up to {MeasureFormat.Speed(mean)} on the mean, in the lee of something, or take a smaller sheet: nothing else that was tried would do alone.",
        CheckRemedyKind.SmallerStudio => "A smaller panel or a lower frame: no sheet, pipe, peg or cord that was tried would do alone.",
        _ => throw new ArgumentOutOfRangeException(nameof(remedy), remedy.Kind, "A remedy without words."),
    };

    private static string UnderMiddle(CheckAmount.AddedBallast ballast) =>
        $"{Kilograms(ballast.UnderMiddle)}{(ballast.Hung > Mass.Zero ? " more" : "")} under the middle";

    private static string Kilograms(Mass mass) => MeasureFormat.Kilograms(mass);

    private static string Tenths(CheckAmount amount) => PlanFormat.TenthMillimetres(LengthOf(amount));

    private static string Whole(CheckAmount amount) => PlanFormat.WholeMillimetres(LengthOf(amount));

    private static Length LengthOf(CheckAmount amount) => amount is CheckAmount.Measure { Value: Length length }
        ? length
        : throw new ArgumentOutOfRangeException(nameof(amount), amount, "A size that is no length.");

    private static ArgumentOutOfRangeException NoAmount(CheckRemedy remedy) => new(nameof(remedy), remedy.Amount, "Ballast without its mass.");
}
