using StudioKit.Kits.Studio;
using StudioKit.Planning.Frames;
using UnitsNet;

namespace StudioKit.Planning.Checks;

/// <summary>What a plan must pass before it is worth building.</summary>
internal static class PlanChecks
{
    private const string Practice = "CommonPractice";

    /// <summary>Every check in the order of the work: optics, panel, light, exposure, frame, cuts, pack.</summary>
    public static IReadOnlyList<PlanCheck> Of(Plan plan, IReadOnlyList<string> lightProblems) =>
    [
        .. FramingChecks.Of(plan.Framings),
        .. UsesPanel(plan) ? new[] { PanelSize(plan.Panel), LightGeometry(lightProblems) } : [],
        .. Sweep(plan),
        .. plan.Panel.Unfilled.Count > 0 ? new[] { Unfilled(plan.Panel) } : [],
        .. plan.Frame is null && UsesPanel(plan) && FramePlanner.Obstacle(plan.Kit, plan.Panel) is { } obstacle ? new[] { NoFrame(obstacle) } : [],
        .. plan.Exposures.GroupBy(exposure => exposure.SetUp).Select(SetUp),
        .. plan.Frame is { } frame ? FrameChecks(frame).Concat(StructureChecks.Of(plan, frame)) : [],
        .. PackChecks.Of(plan),
        .. plan.Session is { } session ? SessionChecks.Of(session) : [],
    ];

    private static bool UsesPanel(Plan plan) => plan.Panel.RequiredWidth > Length.Zero;

    private static PlanCheck PanelSize(PanelPlan panel)
    {
        var enough = panel.Width >= panel.RequiredWidth && panel.Depth >= panel.RequiredDepth;
        return new PlanCheck
        {
            Name = "Panel size",
            Passed = enough,
            Demand = PlanFormat.Rectangle(panel.RequiredWidth, panel.RequiredDepth),
            Capacity = PlanFormat.Rectangle(panel.Width, panel.Depth),
            Ratio = Math.Max(panel.RequiredWidth / panel.Width, panel.RequiredDepth / panel.Depth),
            SourceKey = "Derived",
            SourceLocator = "camera's frustum cut with the panel plane, over all framings and pitches",
            Remedy = enough
                ? ""
                : $"Cut the panel to {PlanFormat.Rectangle(panel.RequiredWidth, panel.RequiredDepth)}, or leave out {panel.LargestFraming} or its low camera angle.",
        };
    }

    private static PlanCheck LightGeometry(IReadOnlyList<string> problems) => new()
    {
        Name = "Place of the flash below",
        Passed = problems.Count == 0,
        Demand = "under the panel, over the ground, aimed at it",
        Capacity = problems.Count == 0 ? "so it is" : string.Join(" ", problems),
        SourceKey = "Derived",
        SourceLocator = "geometry of the studio",
        Remedy = problems.Count == 0 ? "" : "Change the light's distance, or the frame's height.",
    };

    private static PlanCheck Unfilled(PanelPlan panel) => new()
    {
        Name = "Camera angles over the panel",
        Passed = false,
        Demand = "a panel behind all of the frame",
        Capacity = $"none for {string.Join(", ", panel.Unfilled)}",
        SourceKey = "Derived",
        SourceLocator = "camera's frustum cut with the panel plane, or with an arc tangent to it",
        Remedy = "Look down more steeply, or leave these framings out of the set-up.",
    };

    private static PlanCheck NoFrame(string obstacle) => new()
    {
        Name = "Frame can be built",
        Passed = false,
        Demand = "room for rails and fittings",
        Capacity = "none",
        SourceKey = "Derived",
        SourceLocator = "centre lines of rails within panel and height",
        Remedy = obstacle,
    };

    private static IEnumerable<PlanCheck> Sweep(Plan plan)
    {
        if (plan.Panel.SweepRadius is not { } radius || plan.Kit.Frame.Kind == FrameKind.SweptTable)
        {
            yield break;
        }

        yield return new PlanCheck
        {
            Name = "Low camera angles",
            Passed = false,
            Demand = $"sheet swept up behind the subject, radius {PlanFormat.Millimetres(radius)}",
            Capacity = "flat panel",
            SourceKey = "Derived",
            SourceLocator = "camera's frustum cut with the panel plane",
            Remedy = "Take 'kind: swept-table' for the frame, or look down more steeply.",
        };
    }

    private static PlanCheck SetUp(IGrouping<string, ExposurePlan> setUp)
    {
        var failing = setUp.Where(exposure => !exposure.Works).ToList();
        return new PlanCheck
        {
            Name = $"Exposure, {setUp.Key}",
            Passed = failing.Count == 0,
            Demand = $"{setUp.Count()} framings",
            Capacity = $"{setUp.Count() - failing.Count} can be exposed",
            SourceKey = "Iso12232",
            SourceLocator = "image-plane exposure against 78/S",
            Remedy = string.Join(" ", failing.Select(exposure => $"{exposure.Framing.Name}: {exposure.BindingLimit}")),
        };
    }

    private static IEnumerable<PlanCheck> FrameChecks(FramePlan frame)
    {
        yield return new PlanCheck
        {
            Name = "Frame can be built",
            Passed = frame.Geometry.Problems.Count == 0,
            Demand = "every pipe fills its sockets",
            Capacity = frame.Geometry.Problems.Count == 0 ? "so it is" : string.Join(" ", frame.Geometry.Problems),
            SourceKey = "Derived",
            SourceLocator = "centre lines less take-offs and gaps",
            Remedy = frame.Geometry.Problems.Count == 0 ? "" : "Change the frame's height or the panel's size.",
            Caveats = frame.Geometry.Caveats,
        };
        var uncut = frame.PipeCuts.Uncut.Concat(frame.SheetCuts.Uncut).ToList();
        yield return new PlanCheck
        {
            Name = "Everything can be cut from stock",
            Passed = uncut.Count == 0,
            Demand = "all pieces",
            Capacity = uncut.Count == 0 ? "all pieces" : string.Join(" ", uncut.Select(piece => piece.Sentence)),
            SourceKey = Practice,
            SourceLocator = "cutting stock with kerf",
            Remedy = uncut.Count == 0 ? "" : "Add longer or more stock under 'stock:'.",
        };
    }
}
