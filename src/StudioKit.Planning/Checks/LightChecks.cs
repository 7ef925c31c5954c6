using StudioKit.Physics.Light;
using UnitsNet;

namespace StudioKit.Planning.Checks;

/// <summary>Whether the flashes below stand where they can light the panel.</summary>
internal static class LightChecks
{
    /// <summary>One check of all set-ups that light the panel.</summary>
    public static PlanCheck FlashBelow(IReadOnlyList<PanelLightPlan> lights)
    {
        var findings = lights.SelectMany(light => light.Problems.Select(problem => new CheckFinding.OfLight(light.SetUp, light.FlashOf(problem), problem))).ToList();
        return new PlanCheck
        {
            Kind = PlanCheckKind.FlashBelow,
            Passed = findings.Count == 0,
            SourceKey = "Derived",
            SourceLocator = "geometry of the studio",
            Findings = [.. findings],
            Remedy = findings.Select(RemedyOf).OfType<CheckRemedy>().FirstOrDefault(),
        };
    }

    // What is not the flash's fault, its finding says.
    private static CheckRemedy? RemedyOf(CheckFinding.OfLight finding) => finding.Problem switch
    {
        { Kind: LightProblemKind.InsideFloor, By: { } by } => Of(CheckRemedyKind.FlashNearerPanel, finding, by, "set-ups.lights.distance", "frame.height"),
        { Kind: LightProblemKind.AboveSheet, By: { } by } => Of(CheckRemedyKind.FlashFurtherFromPanel, finding, by, "set-ups.lights.distance", "set-ups.lights.tilt"),
        { Kind: LightProblemKind.OutsideSkirts, By: { } by } =>
            Of(CheckRemedyKind.FlashNearerMiddle, finding, by, "set-ups.lights.offset-right", "set-ups.lights.offset-back", "panel.width", "panel.depth"),
        { Kind: LightProblemKind.AimedAway } => Of(CheckRemedyKind.AimAtPanel, finding, null, "set-ups.lights.aim-right", "set-ups.lights.aim-back", "set-ups.lights.tilt"),
        _ => null,
    };

    private static CheckRemedy Of(CheckRemedyKind kind, CheckFinding.OfLight finding, Length? by, params string[] keys) => new(kind)
    {
        Amount = by is { } length ? new CheckAmount.Measure(WholeLengths.BeyondMillimetre(length)) : CheckAmount.Unmeasured,
        Parts = finding.Flash is { } flash ? [flash] : [],
        Keys = [.. keys],
    };
}
