namespace StudioKit.Planning.Checks;

/// <summary>Sorts checks by the question they answer.</summary>
public static class CheckConcerns
{
    /// <summary>The question that a kind of check answers.</summary>
    /// <param name="kind">The kind.</param>
    public static CheckConcern Of(PlanCheckKind kind) => kind switch
    {
        PlanCheckKind.Magnification or PlanCheckKind.RoomBeforeLens or PlanCheckKind.GuideNumberAtZoom or PlanCheckKind.Exposure or PlanCheckKind.Triggers or PlanCheckKind.Feature
            or PlanCheckKind.CoverView or PlanCheckKind.CoverFoot or PlanCheckKind.LensShadow or PlanCheckKind.LightsOutOfPicture or PlanCheckKind.LightRoom or PlanCheckKind.HolderReach or PlanCheckKind.LightOnSheet
            or PlanCheckKind.UprightGround => CheckConcern.Cards,
        PlanCheckKind.LongestPiece or PlanCheckKind.LongThing or PlanCheckKind.Places or PlanCheckKind.BagMass or PlanCheckKind.BagRoom
            or PlanCheckKind.Burden or PlanCheckKind.TargetMass => CheckConcern.Carrying,
        PlanCheckKind.HoldTime or PlanCheckKind.Cells or PlanCheckKind.Hours or PlanCheckKind.DayTime or PlanCheckKind.CoverRoom or PlanCheckKind.CoverWarmth
            or PlanCheckKind.ShelterSize or PlanCheckKind.ShelterWind or PlanCheckKind.Hands => CheckConcern.Day,
        _ => CheckConcern.Building,
    };
}
