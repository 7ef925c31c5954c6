namespace StudioKit.Planning.Checks;

/// <summary>The keys of the kit that would mend a failing check, with what stands under them now.</summary>
public static class CheckKeys
{
    /// <summary>Finds them.</summary>
    /// <param name="check">The check.</param>
    /// <param name="plan">The plan that it belongs to.</param>
    /// <returns>The keys, the most promising first; empty where the check passes.</returns>
    /// <exception cref="ArgumentNullException">There is no check or no plan.</exception>
    public static IReadOnlyList<KitKey> Of(PlanCheck check, Plan plan)
    {
        ArgumentNullException.ThrowIfNull(check);
        ArgumentNullException.ThrowIfNull(plan);
        if (check.Passed)
        {
            return [];
        }

        // What is built is built for the set-ups that stand on the panel: the angles and lights of the others mend nothing.
        var onPanel = CheckConcerns.Of(check.Kind) == CheckConcern.Building ? plan.PanelLights.Select(light => light.SetUp) : [];
        IReadOnlyList<string> parts = [.. check.Parts, .. check.Remedy?.Parts ?? [], .. onPanel];
        return [.. Patterns(check, plan).Distinct(StringComparer.Ordinal).SelectMany(pattern => KitKeyPaths.Under(pattern, parts, plan)).DistinctBy(key => key.Path)];
    }

    private static IReadOnlyList<string> Patterns(PlanCheck check, Plan plan) =>
        check.Remedy is { Keys.Count: > 0 } remedy ? remedy.Keys
        : check.Kind == PlanCheckKind.Exposure && Mending(check, plan) is { Count: > 0 } changes ? changes
        : Usual(check.Kind);

    // What the advice was planned with, so that a key named here is one that mends.
    private static List<string> Mending(PlanCheck check, Plan plan) => [.. check.Findings.OfType<CheckFinding.OfExposure>()
        .Where(finding => !finding.Exposure.IsUsable)
        .SelectMany(finding => plan.Advice.Mending(finding.Exposure))
        .SelectMany(advice => advice.Changes)
        .Select(change => change.Key)];

    // Where no remedy was worked out: the keys that the check reads.
    private static string[] Usual(PlanCheckKind kind) => kind switch
    {
        PlanCheckKind.Magnification or PlanCheckKind.RoomBeforeLens => ["lenses.magnifications"],
        PlanCheckKind.GuideNumberAtZoom => ["flashes.zooms"],
        PlanCheckKind.Exposure => ["set-ups.iso", "set-ups.aperture", "set-ups.shutter", "set-ups.lights.distance"],
        PlanCheckKind.Feature => ["subjects.feature"],
        PlanCheckKind.CoverRoom or PlanCheckKind.CoverFoot or PlanCheckKind.CoverView or PlanCheckKind.CoverWarmth => ["set-ups.cover"],
        PlanCheckKind.HolderReach => ["holders.reach", "holders.highest", "set-ups.lights.holder"],
        PlanCheckKind.LensShadow or PlanCheckKind.LightsOutOfPicture or PlanCheckKind.LightRoom or PlanCheckKind.LightOnSheet =>
            ["set-ups.lights.azimuth", "set-ups.lights.elevation", "set-ups.lights.distance"],
        PlanCheckKind.ShelterSize or PlanCheckKind.ShelterWind or PlanCheckKind.Hands => ["set-ups.shelters", "shelters"],
        PlanCheckKind.Triggers => ["set-ups.lights.trigger", "set-ups.lights.group", "triggers"],
        PlanCheckKind.FlashBelow or PlanCheckKind.Cradle => ["set-ups.lights.distance", "frame.height"],
        PlanCheckKind.LowCameraAngles or PlanCheckKind.CameraAngles => ["set-ups.camera-pitch"],
        PlanCheckKind.PanelSize => ["panel.width", "panel.depth"],
        PlanCheckKind.UprightSize or PlanCheckKind.UprightGround => ["uprights.width", "uprights.height", "uprights.over-ground"],
        PlanCheckKind.FlashBehind => ["set-ups.lights.distance", "set-ups.lights.offset-up"],
        PlanCheckKind.Stock => ["stock"],
        PlanCheckKind.Places or PlanCheckKind.LongThing or PlanCheckKind.BagRoom => ["pack.bags.inside"],
        PlanCheckKind.BagMass or PlanCheckKind.Burden or PlanCheckKind.TargetMass => ["pack.target-mass"],
        PlanCheckKind.LongestPiece => ["frame.longest-piece"],
        PlanCheckKind.HoldTime or PlanCheckKind.Hours or PlanCheckKind.DayTime => ["session"],
        PlanCheckKind.Cells => ["flashes.spare-sets"],
        PlanCheckKind.UprightTipping or PlanCheckKind.UprightSliding or PlanCheckKind.UprightPoles or PlanCheckKind.UprightSheet or PlanCheckKind.UprightSheetLeaning or PlanCheckKind.UprightReach => ["uprights"],
        _ => ["frame"],
    };
}
