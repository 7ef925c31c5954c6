using StudioKit.Planning;
using StudioKit.Planning.Checks;

namespace StudioKit.Wording;

/// <summary>What checks ask for.</summary>
internal static class CheckDemands
{
    public static string Of(PlanCheck check) => check.Kind switch
    {
        PlanCheckKind.RoomBeforeLens => "subject before the front glass",
        PlanCheckKind.FlashBelow => "under the panel, over the ground, aimed at it",
        PlanCheckKind.LensShadow => $"{AmountText.Of(check.Demand)} lights clear of the lens",
        PlanCheckKind.LightsOutOfPicture => $"{AmountText.Of(check.Demand)} lights outside every frame",
        PlanCheckKind.LightRoom => $"{AmountText.Of(check.Demand)} lights clear of lens, sheet, frame and ground",
        PlanCheckKind.HolderReach => $"{AmountText.Of(check.Demand)} lights where their holders go",
        PlanCheckKind.LightOnSheet => "sheet and mirror image within the veil's limit",
        PlanCheckKind.UprightGround => "nothing seen under the sheet",
        PlanCheckKind.FlashBehind => "behind the sheet, over the ground",
        PlanCheckKind.LowCameraAngles => $"sheet swept up behind the subject, radius {AmountText.Of(check.Demand)}",
        PlanCheckKind.CameraAngles => "a panel behind all of the frame",
        PlanCheckKind.FrameRoom => "room for rails and fittings",
        PlanCheckKind.FrameFit => "every pipe fills its sockets",
        PlanCheckKind.Cradle => $"held by the frame {AmountText.Of(check.Demand)} below the panel",
        PlanCheckKind.GuideNumberAtZoom => $"known to {AmountText.Of(check.Demand)}",
        PlanCheckKind.Triggers => $"{AmountText.Of(check.Demand)} flashes",
        PlanCheckKind.Exposure => $"{AmountText.Of(check.Demand)} framings",
        PlanCheckKind.Feature => $"{AmountText.Of(check.Demand)} from one to the next",
        PlanCheckKind.CoverRoom when check.Demand is CheckAmount.TwoSides animal => $"an animal {Animal(animal)}",
        PlanCheckKind.CoverFoot => $"foot of {AmountText.Of(check.Demand)}",
        PlanCheckKind.CoverView => $"{AmountText.Of(check.Demand)} views",
        PlanCheckKind.CoverWarmth => $"warmed by {AmountText.Of(check.Demand)} at most",
        PlanCheckKind.Hands => $"{AmountText.Of(check.Demand)} for camera, lights and shade",
        PlanCheckKind.Stock => "all pieces",
        PlanCheckKind.Places => $"{AmountText.Of(check.Demand)} lines",
        PlanCheckKind.Cells when check.Demand is CheckAmount.CellSets cells =>
            FormattableString.Invariant($"{AmountText.Of(cells)} for {cells.Flashes} flashes{(cells.Rounds > 1 ? $" in {cells.Rounds} rounds" : "")}"),
        _ => AmountText.Of(check.Demand),
    };

    /// <summary>An animal by its length and height.</summary>
    public static string Animal(CheckAmount.TwoSides animal) => $"{AnimalText.Of(animal.Width)} long and {AnimalText.Of(animal.Depth)} high";
}
