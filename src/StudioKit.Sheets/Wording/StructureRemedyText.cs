using StudioKit.Planning.Checks;
using UnitsNet;

namespace StudioKit.Sheets.Wording;

/// <summary>What would make panel and frame bear what is asked of them.</summary>
internal static class StructureRemedyText
{
    public static string Of(CheckRemedy remedy) => remedy.Kind switch
    {
        CheckRemedyKind.SheetOfThickness => $"A sheet of {Tenths(remedy.Amount)} or a rail under the middle.",
        CheckRemedyKind.ThickerSheet => "A thicker sheet, or a rail under the middle.",
        CheckRemedyKind.WiderSweep => $"A radius of {Whole(remedy.Amount)}, a thinner sheet, or a sheet bent hot.",
        CheckRemedyKind.MoreEdgeRoom => $"Leave {Tenths(remedy.Amount)} at every edge.",
        CheckRemedyKind.LargerPipeOrLeg => "A larger pipe, or a leg under the middle.",
        CheckRemedyKind.LargerPipeAndNoElbows => "A larger pipe; keep elbows off.",
        CheckRemedyKind.StifferLegs => "Stretchers, shorter legs, a larger pipe, pinned joints or guys.",
        CheckRemedyKind.StifferJoints => "Pin the joints, add stretchers, or guy the frame to pegs.",
        CheckRemedyKind.MorePegs => "More pegs, or pegs that hold more.",
        CheckRemedyKind.Shade => "Shade the frame or take aluminium tube.",
        CheckRemedyKind.BallastAgainstTipping => remedy.Amount is CheckAmount.AddedBallast { OnWindwardFeet: { } feet } tipping
            ? $"Hang {UnderMiddle(tipping)}, put {Kilograms(feet)} on the windward feet, or peg them."
            : throw NoAmount(remedy),
        CheckRemedyKind.BallastAgainstSliding => remedy.Amount is CheckAmount.AddedBallast sliding
            ? $"Hang {UnderMiddle(sliding)}, or peg the feet."
            : throw NoAmount(remedy),
        _ => throw new ArgumentOutOfRangeException(nameof(remedy), remedy.Kind, "A remedy without words."),
    };

    private static string UnderMiddle(CheckAmount.AddedBallast ballast) =>
        $"{Kilograms(ballast.UnderMiddle)}{(ballast.Hung > Mass.Zero ? " more" : "")} under the middle";

    private static string Kilograms(Mass mass) => FormattableString.Invariant($"{mass.Kilograms:0.0} kg");

    private static string Tenths(CheckAmount amount) => FormattableString.Invariant($"{Millimetres(amount):0.0} mm");

    private static string Whole(CheckAmount amount) => FormattableString.Invariant($"{Millimetres(amount):0} mm");

    private static double Millimetres(CheckAmount amount) => amount is CheckAmount.Measure { Value: Length length }
        ? length.Millimeters
        : throw new ArgumentOutOfRangeException(nameof(amount), amount, "A size that is no length.");

    private static ArgumentOutOfRangeException NoAmount(CheckRemedy remedy) => new(nameof(remedy), remedy.Amount, "Ballast without its mass.");
}
