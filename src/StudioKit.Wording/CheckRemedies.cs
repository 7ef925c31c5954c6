using StudioKit.Planning;
using StudioKit.Planning.Checks;

namespace StudioKit.Wording;

/// <summary>What would make checks pass.</summary>
internal static class CheckRemedies
{
    private const int MostViews = 3;

    /// <remarks>Where a check has no remedy of its own, its findings say what to do.</remarks>
    public static string Of(PlanCheck check) => check switch
    {
        { Passed: true } => "",

        // Nobody turns a camera without being told what is wrong with the view.
        { Kind: PlanCheckKind.CoverView, Remedy: { } clear } => $"{FindingText.First(check, MostViews)} {Of(clear)}",
        { Remedy: { } remedy } => Of(remedy),
        _ => FindingText.Of(check),
    };

    private static string Steep(CheckRemedy remedy) => remedy.Amount is CheckAmount.Measure ? $"look down at {AmountText.Of(remedy.Amount)} or more, where a flat sheet fills the frames" : "look down more steeply";

    private static string Flash(CheckRemedy remedy) => remedy.Parts.Count > 0 ? remedy.Parts[0] : "the flash below";

    private static string InSetUp(CheckRemedy remedy) => string.Join(" in ", remedy.Parts.Take(2));

    private static string Of(CheckRemedy remedy) => remedy.Kind switch
    {
        CheckRemedyKind.LowerMagnification => "Take a lower magnification, a shorter tube or a longer lens.",
        CheckRemedyKind.ShowLarger => $"Take {string.Join(" in ", remedy.Parts)} at {AmountText.Of(remedy.Amount)} or closer; it may then show a part of the subject only.",
        CheckRemedyKind.LargerCover => $"Take one of at least {AmountText.Of(remedy.Amount)} inside, side by height (in a tank, of water), or leave the animal out.",
        CheckRemedyKind.PanelUnderCover => $"Cut the panel to {AmountText.Of(remedy.Amount)}, or take a smaller cover than the {remedy.Parts[0]}.",
        CheckRemedyKind.ClearAngle => $"Look down at {AmountText.Of(remedy.Amount)}.",
        CheckRemedyKind.LiftCover => $"Lift the {remedy.Parts[0]} for the picture ('lifted: yes'), take another, or other framings.",
        CheckRemedyKind.OtherTank => $"Take a tank other than the {remedy.Parts[0]}, shallower towards the lens, or other framings.",
        CheckRemedyKind.LargerShelter => $"Take one of at least {AmountText.Of(remedy.Amount)} in place of the {remedy.Parts[0]}, or put it up nearer.",
        CheckRemedyKind.LeaveFolded => $"Leave the {remedy.Parts[0]} folded in such wind, or take one that stands in it.",
        CheckRemedyKind.MoreHands => $"Bring somebody for {AmountText.Of(remedy.Amount)} more, or let lights and shade stand ('holder:', 'held: no').",
        CheckRemedyKind.ShadeCover => $"Shade it by {AmountText.Of(remedy.Amount)}, or lift it as soon as the animal sits.",
        CheckRemedyKind.LightFromElsewhere when remedy.Amount is CheckAmount.Directed directed =>
            $"Let {InSetUp(remedy)} come from {StandText.Direction(directed.From)}: {StandText.Keys(directed.From)}.",
        CheckRemedyKind.OtherHolder => remedy.Parts.Count > 2
            ? $"Hold {InSetUp(remedy)} with {remedy.Parts[2]}."
            : $"Hold {InSetUp(remedy)} by hand, or take a holder that goes there.",
        CheckRemedyKind.LargerPanel => $"Cut the panel to {AmountText.Of(remedy.Amount)}, or leave out {string.Join(", ", remedy.Parts)} or its low camera angle.",
        CheckRemedyKind.FlashNearerPanel => $"Bring {Flash(remedy)} {AmountText.Of(remedy.Amount)} nearer the panel, or make the frame higher by as much.",
        CheckRemedyKind.FlashFurtherFromPanel => $"Move {Flash(remedy)} {AmountText.Of(remedy.Amount)} further from the panel, or tilt it less.",
        CheckRemedyKind.FlashNearerMiddle => $"Move {Flash(remedy)} {AmountText.Of(remedy.Amount)} nearer the panel's middle, or take a larger panel.",
        CheckRemedyKind.AimAtPanel => $"Aim {Flash(remedy)} at the panel.",
        CheckRemedyKind.SteeperCamera => $"{Sentence.Begin(Steep(remedy))}, stand an upright sheet with a flash of its own behind the subject ('upright:'), or leave these framings out of the set-up.",
        CheckRemedyKind.SweptTable => $"Take 'kind: swept-table' for the frame, stand an upright sheet with a flash of its own behind the subject ('upright:'), or {Steep(remedy)}.",
        CheckRemedyKind.LargerUpright => $"Cut the {remedy.Parts[0]} to {AmountText.Of(remedy.Amount)}, or stand it nearer the subject.",
        CheckRemedyKind.LevelCamera => $"Look more level, stand the {remedy.Parts[0]} nearer the subject, or let it reach down to the ground.",
        CheckRemedyKind.RaiseFlashBehind => $"Raise {Flash(remedy)} by {AmountText.Of(remedy.Amount)}; it is then aimed down at the sheet behind the subject.",
        CheckRemedyKind.OtherFrameSize => "Change the frame's height or the panel's size.",
        CheckRemedyKind.WiderThanRails => $"Take a panel larger than {AmountText.Of(remedy.Amount)} either way, or a thinner pipe.",
        CheckRemedyKind.RaiseFrame => $"Make the frame {AmountText.Of(remedy.Amount)} higher, or take 'kind: low-ground'.",
        CheckRemedyKind.LongerPieces => $"Let the pack take pieces of {AmountText.Of(remedy.Amount)}.",
        CheckRemedyKind.ClearJoint => "Move the flash below a little, or change the panel's size.",
        CheckRemedyKind.MoveFlash => remedy.Amount is CheckAmount.NearestMoves moves ? CradleText.Remedy(moves.Choices) : throw new ArgumentOutOfRangeException(nameof(remedy), remedy.Amount, "A move without its length."),
        CheckRemedyKind.OwnStand => CradleText.Remedy([]),
        CheckRemedyKind.MeasureGuideNumber =>
            $"List the guide number of {remedy.Parts[0]} for {AmountText.Of(remedy.Amount)} under 'zooms:', or measure it: bare head at full power, flash meter at ISO 100 one metre off; the f-number it reads is the number in metres.",
        CheckRemedyKind.MoreStock => "Add longer or more stock under 'stock:'.",
        CheckRemedyKind.Coupling => "Split the longest pieces with a coupling.",
        CheckRemedyKind.LongerBag => "A longer bag, a coupling in the pipe, or a smaller panel.",
        CheckRemedyKind.LighterBag => "No way to share things out is lighter on it: leave some at home ('target-mass:' says which).",
        CheckRemedyKind.LargerBag => "A larger bag, or leave things at home.",
        CheckRemedyKind.ShareLoad => "Share the load with more people, or leave things at home ('target-mass:' says which).",
        CheckRemedyKind.LeaveAtHome when remedy.Home is { Lighter.Count: > 0 } home => HomeText.Of(home),
        CheckRemedyKind.LeaveAtHome => $"Leave at home: {string.Join(", ", remedy.Parts)}; that loses {AmountText.Of(remedy.Amount)} of the set-ups at framings.",
        CheckRemedyKind.NothingToLeave => "Nothing in the kit can stay at home.",
        CheckRemedyKind.HoldShorter =>
            "Fewer frames or set-ups for it; do not hold one animal through a change of set-up, photograph another in the next.",
        CheckRemedyKind.FewerRounds when remedy.Amount is CheckAmount.HowMany rounds =>
            FormattableString.Invariant($"{(rounds.Value == 1 ? "One round fits" : $"{rounds.Value} rounds fit")}; or give it longer hours or more light to work in."),
        CheckRemedyKind.OtherHours => $"By the light it can be photographed {AmountText.Of(remedy.Amount)}: let its hours by the clock allow that.",
        CheckRemedyKind.OtherSubjects => $"Its subjects are not about then: it can be photographed {AmountText.Of(remedy.Amount)}. Take it for others, or them when they rest.",
        CheckRemedyKind.OtherLight => $"The light expected while it is allowed is {AmountText.Of(remedy.Amount)}: plan it for other light, another date, or other hours.",
        CheckRemedyKind.FewerRounds => "Go through it less often, or give it longer hours.",
        CheckRemedyKind.MoreCells => $"Carry {AmountText.Of(remedy.Amount)} more, or take fewer frames.",
        _ => StructureRemedyText.Of(remedy),
    };
}
