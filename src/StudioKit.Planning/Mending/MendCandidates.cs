using StudioKit.Physics;
using StudioKit.Planning.Changes;
using StudioKit.Planning.Checks;

namespace StudioKit.Planning.Mending;

/// <summary>Changes of the kit that may make a check pass, the least trouble first.</summary>
internal static class MendCandidates
{
    public static IEnumerable<ValueList<KitChange>> For(PlanCheck check, Plan plan) => check.Kind switch
    {
        PlanCheckKind.Magnification => FramingMends.WithinReach(check, plan),
        PlanCheckKind.RoomBeforeLens => FramingMends.OffTheGlass(check, plan),
        PlanCheckKind.GuideNumberAtZoom => LightMends.KnownZoom(check, plan),
        PlanCheckKind.Exposure => LightMends.Exposed(check, plan),
        PlanCheckKind.Triggers => TriggerMends.Of(check, plan),
        PlanCheckKind.ShelterSize or PlanCheckKind.ShelterWind => ShelterMends.Others(check, plan),
        PlanCheckKind.Hands => ShelterMends.Freed(check, plan),
        PlanCheckKind.CoverRoom => CoverMends.Others(check, plan),
        PlanCheckKind.CoverFoot => CoverMends.OnSheet(check, plan),
        PlanCheckKind.CoverView => CoverMends.Clear(check, plan),
        PlanCheckKind.CoverWarmth => CoverMends.Cooler(check, plan),
        PlanCheckKind.LensShadow or PlanCheckKind.LightsOutOfPicture or PlanCheckKind.LightRoom or PlanCheckKind.LightOnSheet => StandMends.Turned(check, plan),
        PlanCheckKind.HolderReach => StandMends.Held(check, plan),
        PlanCheckKind.FlashBelow => LightMends.FlashPlaced(check, plan),
        PlanCheckKind.Cradle => LightMends.Carried(check, plan),
        PlanCheckKind.PanelSize => StudioMends.LargerPanel(plan),
        PlanCheckKind.LowCameraAngles => UprightMends.Behind(plan).Concat(StudioMends.Swept(plan)),
        PlanCheckKind.CameraAngles => UprightMends.Behind(plan).Concat(StudioMends.SteeperCamera(plan)),
        PlanCheckKind.UprightSize => UprightMends.Larger(check, plan),
        PlanCheckKind.UprightGround => UprightMends.NothingUnder(check, plan),
        PlanCheckKind.FlashBehind => UprightMends.Raised(check, plan),
        PlanCheckKind.FrameRoom => FrameMends.Drawn(check, plan),
        PlanCheckKind.FrameFit => FrameMends.Fitting(check, plan),
        PlanCheckKind.LongestPiece or PlanCheckKind.LongThing => FrameMends.Shorter(check, plan),
        PlanCheckKind.UprightTipping or PlanCheckKind.UprightSliding or PlanCheckKind.UprightPoles or PlanCheckKind.UprightSheet or PlanCheckKind.UprightSheetLeaning or PlanCheckKind.UprightReach => UprightStandMends.Standing(check, plan),
        PlanCheckKind.TargetMass => DayMends.Lighter(check),
        PlanCheckKind.HoldTime => DayMends.HeldShorter(check, plan),
        PlanCheckKind.Cells => DayMends.MoreCells(check, plan),
        PlanCheckKind.Hours or PlanCheckKind.DayTime => DayMends.FewerRounds(check, plan),

        // Closer up is another framing, and another card: whoever wants it says so.
        PlanCheckKind.Feature => [],

        // What nobody has, no change of the kit brings: more stock, a larger bag, another back to carry it.
        PlanCheckKind.Stock or PlanCheckKind.Places or PlanCheckKind.BagMass or PlanCheckKind.BagRoom or PlanCheckKind.Burden => [],
        _ => FrameMends.Strong(check, plan),
    };
}
