using System.Globalization;
using StudioKit.Kits.Uprights;
using StudioKit.Planning;
using StudioKit.Planning.Studio.Uprights;
using StudioKit.Sheets.Building;

namespace StudioKit.Sheets.Documents;

/// <summary>Steps of putting an upright sheet up, as sentences.</summary>
internal static class UprightStepText
{
    public static string Of(UprightStep step, UprightStandPlan upright) => step switch
    {
        UprightStep.JoinPoles => "Join the pieces of each pole in their coupling, dry, with a twist.",
        UprightStep.MarkClips => MarkClips(upright),
        UprightStep.LookOver => $"Look the place over: the sheet stands {CutFormat.CutLength(upright.ToSubject)} behind the subject, square to the view. Nothing that grows, nests or lives there is to be broken, trodden or dug up; bend neighbours aside with a soft cord, and undo it when you go.",
        UprightStep.DriveStakes => $"Drive the two poles {CutFormat.CutLength(upright.StakeDepth)} deep, {CutFormat.CutLength(upright.PoleSpacing)} apart from middle to middle{Leaning(upright)}, by hand and with a twist: make a hole with a peg first where the ground is hard. Not through roots or bulbs.",
        UprightStep.PullStake => $"Pull one stake level with a spring balance, {DistanceFormat.Centimetres(UprightLines.Pulled)} over the ground: it must hold {MeasureFormat.Kilograms(upright.StakeHold)}. If it gives sooner, drive it elsewhere or take cords; the plan no longer holds.",
        UprightStep.StandFeet => $"Push the half feet into the tees with the caps at their ends, and the poles into the tees, each to its insertion mark; stand them {CutFormat.CutLength(upright.PoleSpacing)} apart from middle to middle, the feet along the view.",
        UprightStep.LayBallast => $"Lay {MeasureFormat.Mass(upright.Ballast / 2)} on each foot, half before and half behind its pole: bottles or bags of sand or water, no stones from the place.",
        UprightStep.ClipBar => $"Clip the bar across the back legs of the frame, behind them, its middle {CutFormat.CutLength(upright.BarHeight!.Value)} over the ground.",
        UprightStep.ClipPoles => $"Clip each pole to the back rail and to the bar, from behind, the two {CutFormat.CutLength(upright.PoleSpacing)} apart from middle to middle and alike from the middle of the frame. The gust pushes each pole's foot against the bar with {Force(Math.Round(upright.BarPush.Newtons))}: pull at the clips.",
        UprightStep.HangSheet => $"Set the sheet {RestsOn(upright)}, on the subject's side of the poles, and clip its side edges on from below upwards. They only hold it: leave {PlanFormat.TenthMillimetres(UnitsNet.Length.FromMillimeters(Up(upright.PlayPerEdge)))} at either side to grow. Pull at a clip: it must hold {Force(Math.Round(upright.ClipPull.Newtons, 1))}." + Film,
        UprightStep.TieCords => FormattableString.Invariant($"Tie {upright.Cords / 2} cords to each upper corner, {upright.Cords / 4} to the front and as many to the back, lead them down at 45° to pegs {CutFormat.CutLength(upright.PegDistance)} from the poles' feet, draw all taut alike and mark them: people and animals trip over them. Pull a peg: it must hold {MeasureFormat.Kilograms(upright.PegHold)}."),
        UprightStep.CheckOver => $"Before the first flash: sheet square to the view, no stem between sheet and subject, nothing touched by it when it is shaken. {StudioKit.Wording.UprightWindText.Of(upright)}",
        _ => throw new ArgumentOutOfRangeException(nameof(step), step, "A step without words."),
    };

    /// <summary>What a step is about, a few words.</summary>
    public static string Title(UprightStep step) => step switch
    {
        UprightStep.JoinPoles => "Join the poles",
        UprightStep.MarkClips => "Mark the clips",
        UprightStep.LookOver => "Look the place over",
        UprightStep.DriveStakes => "Drive the stakes",
        UprightStep.PullStake => "Pull one as a test",
        UprightStep.StandFeet => "Feet and poles",
        UprightStep.LayBallast => "Ballast",
        UprightStep.ClipBar => "The bar",
        UprightStep.ClipPoles => "The poles",
        UprightStep.HangSheet => "The sheet",
        UprightStep.TieCords => "Cords and pegs",
        UprightStep.CheckOver => "Before the first flash",
        _ => throw new ArgumentOutOfRangeException(nameof(step), step, "A step without words."),
    };

    /// <summary>What a packing step is about, a few words.</summary>
    public static string Title(UprightPackingStep step) => step switch
    {
        UprightPackingStep.TakeSheet => "The sheet off",
        UprightPackingStep.UntieCords => "Cords and pegs",
        UprightPackingStep.LiftBallast => "Ballast",
        UprightPackingStep.UnclipPoles => "The poles off",
        UprightPackingStep.UnclipBar => "The bar off",
        UprightPackingStep.PullStakes => "Pull the stakes",
        UprightPackingStep.PartFeet => "Feet and poles apart",
        UprightPackingStep.PartPoles => "Poles apart",
        UprightPackingStep.CountParts => "Count",
        _ => throw new ArgumentOutOfRangeException(nameof(step), step, "A step without words."),
    };

    /// <summary>A packing step in sentences.</summary>
    public static string Of(UprightPackingStep step, UprightStandPlan upright) => step switch
    {
        UprightPackingStep.TakeSheet => $"Switch the flash off. Unclip the sheet from above downwards, two hands on it: a gust takes it. Count its {upright.SheetClips.ToString(CultureInfo.InvariantCulture)} clips, wipe it with water and a soft cloth, and wrap it, film or cloth on both faces.",
        UprightPackingStep.UntieCords => $"Draw all {upright.Cords.ToString(CultureInfo.InvariantCulture)} pegs, count them and roll up their cords; close the holes.",
        UprightPackingStep.LiftBallast => "Lift the ballast off and empty it where it was filled.",
        UprightPackingStep.UnclipPoles => "Unclip both poles from the bar and the back rail.",
        UprightPackingStep.UnclipBar => $"Unclip the bar from the back legs and count the {upright.PipeClips.ToString(CultureInfo.InvariantCulture)} clips from pipe to pipe.",
        UprightPackingStep.PullStakes => "Pull both stakes straight out with a twist, wipe the earth back into their holes and close them.",
        UprightPackingStep.PartFeet => "Pull the poles out of their tees and the half feet apart: twist, don't lever.",
        UprightPackingStep.PartPoles => "Pull the pieces of each pole out of their couplings.",
        UprightPackingStep.CountParts => $"Count the pieces: {string.Join(", ", upright.Pieces.Select(piece => FormattableString.Invariant($"{piece.Count} of {piece.Label}")))}{string.Concat(upright.Fittings.Select(fitting => FormattableString.Invariant($", {fitting.Count} of {fitting.Name}")))}. Undo what was bent aside, and look whether anything lies in the grass.",
        _ => throw new ArgumentOutOfRangeException(nameof(step), step, "A step without words."),
    };

    /// <summary>What holds it, in a few words.</summary>
    public static string Carrier(UprightCarrier carrier) => carrier switch
    {
        UprightCarrier.Stakes => "two stakes in the ground",
        UprightCarrier.Feet => "two feet on the ground",
        UprightCarrier.Frame => "the back of the frame",
        _ => throw new ArgumentOutOfRangeException(nameof(carrier), carrier, "A carrier without words."),
    };

    private static string Force(double newtons) => MeasureFormat.Force(UnitsNet.Force.FromNewtons(newtons));

    private const string Film = " Then take the film off.";

    private static string MarkClips(UprightStandPlan upright)
    {
        var places = Enumerable.Range(0, upright.ClipsPerPole).Select(i => upright.FirstClip + (i * upright.ClipSpacing));
        return $"Mark on each side edge of the sheet where its {upright.ClipsPerPole.ToString(CultureInfo.InvariantCulture)} clips go, from the lower corner: {string.Join(", ", places.Select(place => CutFormat.CutLength(Whole(place))))}."
            + (upright.CornersOnClips ? $" On the poles the lower corner lies {Corner(upright)}." : "");
    }

    private static string RestsOn(UprightStandPlan upright) => upright switch
    {
        { CornersOnClips: true } => "on the two clips under its lower corners",
        { Carrier: UprightCarrier.Frame } => "behind the panel, its lower edge level with the panel's top",
        _ => "with its lower edge on the ground",
    };

    // Room is never told smaller than it is asked for.
    private static double Up(UnitsNet.Length play) => Math.Ceiling((play.Millimeters * 10) - 1e-6) / 10;

    private static string Corner(UprightStandPlan upright) => upright.Carrier switch
    {
        UprightCarrier.Frame => $"{CutFormat.CutLength(Whole(upright.LowerEdge))} over the middle of the back rail",
        UprightCarrier.Stakes => $"{CutFormat.CutLength(Whole(upright.StakeDepth + (upright.LowerEdge / Math.Cos(upright.Lean.Radians))))} from the lower end",
        _ => $"{CutFormat.CutLength(Whole(upright.LowerEdge))} over the ground",
    };

    private static string Leaning(UprightStandPlan upright) => upright.Lean > UnitsNet.Angle.Zero
        ? FormattableString.Invariant($", leaning {upright.Lean.Degrees:0.#}° away from the camera")
        : ", upright by a level";

    private static UnitsNet.Length Whole(UnitsNet.Length length) => UnitsNet.Length.FromMillimeters(Math.Round(length.Millimeters));
}
