using StudioKit.Planning;
using StudioKit.Planning.Checks;

namespace StudioKit.Wording;

/// <summary>What there is of what checks ask for.</summary>
internal static class CheckCapacities
{
    /// <summary>Whether what there is of it is said as a clause or a sentence, not as an amount.</summary>
    public static bool IsClause(PlanCheck check) => check.Kind is PlanCheckKind.Magnification or PlanCheckKind.RoomBeforeLens or PlanCheckKind.FlashBelow
        or PlanCheckKind.FrameRoom or PlanCheckKind.FrameFit or PlanCheckKind.Cradle or PlanCheckKind.Stock or PlanCheckKind.Exposure or PlanCheckKind.Triggers or PlanCheckKind.CoverView or PlanCheckKind.Places
        or PlanCheckKind.LensShadow or PlanCheckKind.LightsOutOfPicture or PlanCheckKind.LightRoom or PlanCheckKind.HolderReach or PlanCheckKind.LightOnSheet or PlanCheckKind.UprightGround or PlanCheckKind.FlashBehind;

    public static string Of(PlanCheck check) => check.Kind switch
    {
        PlanCheckKind.Magnification => "not reached",
        PlanCheckKind.RoomBeforeLens => $"{AmountText.Of(check.Capacity)} from the glass",
        PlanCheckKind.FlashBelow or PlanCheckKind.FrameRoom or PlanCheckKind.FrameFit or PlanCheckKind.Cradle
            or PlanCheckKind.LensShadow or PlanCheckKind.LightsOutOfPicture or PlanCheckKind.LightRoom or PlanCheckKind.HolderReach or PlanCheckKind.LightOnSheet or PlanCheckKind.UprightGround or PlanCheckKind.FlashBehind => check.Passed ? "so it is" : FindingText.Of(check),
        PlanCheckKind.LowCameraAngles => "flat panel",
        PlanCheckKind.CameraAngles => $"none for {string.Join(", ", check.Parts)}",
        PlanCheckKind.GuideNumberAtZoom => $"made from another zoom's, {AmountText.Of(check.Capacity)}",
        PlanCheckKind.Triggers => $"{AmountText.Of(check.Capacity)} are fired",
        PlanCheckKind.Exposure => $"{AmountText.Of(check.Capacity)} can be exposed",
        PlanCheckKind.Feature => $"{AmountText.Of(check.Capacity)} told apart at best, in focus",
        PlanCheckKind.CoverRoom when check.Capacity is CheckAmount.TwoSides animal => $"room for {CheckDemands.Animal(animal)}",
        PlanCheckKind.CoverFoot => $"{AmountText.Of(check.Capacity)} flat about the subject",
        PlanCheckKind.CoverView => $"{AmountText.Of(check.Capacity)} clear",
        PlanCheckKind.Stock => check.Passed ? "all pieces" : FindingText.Of(check),
        PlanCheckKind.Places => $"{AmountText.Of(check.Capacity)} in or on a bag",
        PlanCheckKind.Cells when check.Capacity is CheckAmount.CellSets cells =>
            FormattableString.Invariant($"{AmountText.Of(cells)}, {cells.Flashes} flashes at that power"),
        _ => AmountText.Of(check.Capacity),
    };
}
