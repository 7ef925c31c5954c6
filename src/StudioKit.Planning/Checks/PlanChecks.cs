using StudioKit.Kits.Studio;
using StudioKit.Planning.Studio.Frames;
using UnitsNet;

namespace StudioKit.Planning.Checks;

/// <summary>What a plan must pass before it is worth building.</summary>
internal static class PlanChecks
{
    private const string Practice = "CommonPractice";

    /// <summary>Every check in the order of the work: optics, panel, light, exposure, frame, cuts, pack.</summary>
    public static IReadOnlyList<PlanCheck> Of(Plan plan) =>
    [
        .. FramingChecks.Of(plan.Framings),
        .. NeedsPanel(plan) ? new[] { PanelSize(plan.Panel), LightChecks.FlashBelow(plan.PanelLights) } : [],
        .. LowCameraAngles(plan),
        .. plan.Panel.Unfilled.Count > 0 ? new[] { CameraAngles(plan.Panel) } : [],
        .. UprightChecks.Of(plan),
        .. plan.Frame is null && NeedsPanel(plan) && FramePlanner.Obstacle(plan.Kit, plan.Panel) is { } obstacle ? new[] { FrameChecks.Room(obstacle) } : [],
        .. GuideNumberChecks.Of(plan.Exposures),
        .. StandChecks.Of(plan),
        .. TriggerChecks.Of(plan),
        .. plan.Exposures.GroupBy(exposure => exposure.SetUp).Select(Exposure),
        .. FeatureChecks.Of(plan),
        .. CoverChecks.Of(plan),
        .. ShelterChecks.Of(plan),
        .. plan.Frame is { } frame ? FrameChecks.Of(frame).Append(Stock(frame.Workshop)).Concat(StructureChecks.Of(plan, frame)) : plan.Workshop is { } workshop ? [Stock(workshop)] : [],
        .. UprightStandChecks.Of(plan),
        .. PackChecks.Of(plan),
        .. plan.Session is { } session ? SessionChecks.Of(session) : [],
    ];

    private static bool NeedsPanel(Plan plan) => plan.Panel.RequiredWidth > Length.Zero;

    private static PlanCheck PanelSize(PanelPlan panel)
    {
        var enough = panel.Width >= panel.RequiredWidth && panel.Depth >= panel.RequiredDepth;
        var required = new CheckAmount.TwoSides(panel.RequiredWidth, panel.RequiredDepth);
        return new PlanCheck
        {
            Kind = PlanCheckKind.PanelSize,
            Passed = enough,
            Demand = required,
            Capacity = new CheckAmount.TwoSides(panel.Width, panel.Depth),
            Ratio = Math.Max(panel.RequiredWidth / panel.Width, panel.RequiredDepth / panel.Depth),
            SourceKey = "Derived",
            SourceLocator = "camera's frustum cut with the panel plane, over all framings and pitches",
            Remedy = enough ? null : new CheckRemedy(CheckRemedyKind.LargerPanel)
            {
                Amount = required,
                Parts = panel.LargestFraming is { } largest ? [largest] : [],
                Keys = ["panel.width", "panel.depth", "set-ups.camera-pitch"],
            },
        };
    }

    private static PlanCheck CameraAngles(PanelPlan panel) => new()
    {
        Kind = PlanCheckKind.CameraAngles,
        Parts = panel.Unfilled,
        Passed = false,
        SourceKey = "Derived",
        SourceLocator = "camera's frustum cut with the panel plane, or with an arc tangent to it",
        Remedy = new CheckRemedy(CheckRemedyKind.SteeperCamera) { Amount = Steep(panel), Keys = ["set-ups.camera-pitch", "set-ups.upright"] },
    };

    private static CheckAmount Steep(PanelPlan panel) => panel.FlatFrom is { } angle ? new CheckAmount.Measure(angle) : CheckAmount.Unmeasured;

    private static IEnumerable<PlanCheck> LowCameraAngles(Plan plan)
    {
        if (plan.Panel.SweepRadius is not { } radius || plan.Kit.Frame.Kind == FrameKind.SweptTable)
        {
            yield break;
        }

        yield return new PlanCheck
        {
            Kind = PlanCheckKind.LowCameraAngles,
            Passed = false,
            Demand = new CheckAmount.Measure(radius),
            SourceKey = "Derived",
            SourceLocator = "camera's frustum cut with the panel plane",
            Remedy = new CheckRemedy(CheckRemedyKind.SweptTable) { Amount = Steep(plan.Panel), Keys = ["frame.kind", "set-ups.upright", "set-ups.camera-pitch"] },
        };
    }

    private static PlanCheck Exposure(IGrouping<string, ExposurePlan> setUp)
    {
        var failing = setUp.Where(exposure => !exposure.IsUsable).ToList();
        return new PlanCheck
        {
            Kind = PlanCheckKind.Exposure,
            Parts = [setUp.Key],
            Passed = failing.Count == 0,
            Demand = new CheckAmount.HowMany(setUp.Count()),
            Capacity = new CheckAmount.HowMany(setUp.Count() - failing.Count),
            SourceKey = "Iso12232",
            SourceLocator = "image-plane exposure against 78/S",
            Findings = [.. setUp.Where(exposure => exposure.Verdict.Verdict != Verdict.Works).Select(exposure => new CheckFinding.OfExposure(exposure))],
        };
    }

    private static PlanCheck Stock(Workshop workshop)
    {
        var uncut = workshop.PipeCuts.Uncut.Concat(workshop.SheetCuts.Uncut).ToList();
        return new PlanCheck
        {
            Kind = PlanCheckKind.Stock,
            Passed = uncut.Count == 0,
            SourceKey = Practice,
            SourceLocator = "cutting stock with kerf",
            Findings = [.. uncut.Select(piece => new CheckFinding.NotCut(piece))],
            Remedy = uncut.Count == 0 ? null : new CheckRemedy(CheckRemedyKind.MoreStock) { Keys = ["stock"] },
        };
    }
}
