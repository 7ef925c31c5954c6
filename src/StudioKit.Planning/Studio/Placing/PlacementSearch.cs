using StudioKit.Kits.SetUps;
using StudioKit.Physics.Light.Checks;
using StudioKit.Physics.Light.Placements;
using StudioKit.Planning.Framing;
using StudioKit.Planning.Studio.Lights;
using StudioKit.Planning.Studio.Panels;
using UnitsNet;

namespace StudioKit.Planning.Studio.Placing;

/// <summary>The search for the place of a set-up's flash below.</summary>
internal sealed class PlacementSearch
{
    private static readonly string[] SearchCaveats =
    [
        "The shadows of pipes and flash bodies are left out of the search, for the kit's own placement and for all others alike: put the lines into the kit and plan again to see them.",
        "Powers in the search are exact; the dial's clicks come with the plan.",
    ];

    private const string OwnTilt = "The kit tilts its flash; the search compares against the same place facing straight up.";

    private readonly Plan _plan;
    private readonly SetUpSpec _setUp;
    private readonly LightSpec _own;
    private readonly int _ownCount;
    private readonly PlacementRanges _ranges;
    private readonly PlacementCase _case;

    private PlacementSearch(Plan plan, SetUpSpec setUp, IReadOnlyList<PlacementFraming> framings)
    {
        (_plan, _setUp) = (plan, setUp);
        var below = PanelScene.Below(setUp).ToList();
        (_own, _ownCount) = (below[0], Math.Min(2, below.Count));
        _ranges = new PlacementRanges(plan.Kit, plan.Panel, _own);
        _case = new PlacementCase
        {
            Panel = PanelScene.Sheet(plan.Kit, plan.Panel, null),
            Framings = framings,
            Flashes = [.. _ranges.Lights.Select(_ranges.FlashOf)],
            PanelHeights = _ranges.PanelHeights,
            Surrounds = [PanelScene.Surround(plan.Kit, plan.Kit.Panel.Skirts), PanelScene.Surround(plan.Kit, !plan.Kit.Panel.Skirts)],
            Distances = _ranges.Distances,
            OffsetsRight = _ranges.OffsetsRight,
            OffsetsBack = _ranges.OffsetsBack,
            TargetMargin = setUp.TargetWhiteMargin,
        };
    }

    /// <summary>A search made ready; none where no framing sees the panel.</summary>
    public static PlacementSearch? For(Plan plan, SetUpSpec setUp)
    {
        var framings = Framings(plan, setUp);
        return framings.Count == 0 || plan.Panel.Width <= Length.Zero || plan.Panel.Depth <= Length.Zero ? null : new PlacementSearch(plan, setUp, framings);
    }

    /// <summary>Runs it.</summary>
    public PlacementPlan Run(IProgress<PlacementProgress>? progress, CancellationToken cancellation)
    {
        var own = Own(cancellation);
        var result = FlashPlacement.Search(_case, progress, cancellation);
        var recommended = result.Recommended is { } best ? ChoiceOf(best) : null;
        return new PlacementPlan
        {
            SetUp = _setUp.Name,
            Evaluated = result.Evaluated,
            Recommended = recommended,
            Own = own,
            Nearest = result.Nearest is { } nearest ? ChoiceOf(nearest) : null,
            Advice = result.Advice,
            Frontier = [.. result.Frontier.Select(ChoiceOf)],
            EnergySaved = recommended is not null && own.Limit == PlacementLimit.None ? 1 - (recommended.FullPowerFlashes / own.FullPowerFlashes) : null,
            KitLines = recommended is null ? [] : PlacementLines.Of(_plan.Kit, _own, recommended),
            Caveats = _own.Tilt.Radians == 0 && _own.AimBack is null && _own.AimRight is null ? SearchCaveats : [.. SearchCaveats, OwnTilt],
        };
    }

    // With one entry in every list the search has nothing to choose: it only works out the kit's own placement.
    private PlacementChoice Own(CancellationToken cancellation)
    {
        var alone = _case with
        {
            Flashes = [_case.Flashes[0]],
            PanelHeights = [_case.PanelHeights[0]],
            Surrounds = [_case.Surrounds[0]],
            Distances = [_own.Distance],
            OffsetsRight = [_own.OffsetRight],
            OffsetsBack = [_own.OffsetBack + PanelScene.FlatMiddle(_plan.Panel)],
            Counts = [_ownCount],
            Aims = [false],
        };
        var result = FlashPlacement.Search(alone, null, cancellation);
        return ChoiceOf((result.Recommended ?? result.Nearest)!);
    }

    private static IReadOnlyList<PlacementFraming> Framings(Plan plan, SetUpSpec setUp)
    {
        var planned = plan.PlannedFramings;
        var sheet = PanelScene.Sheet(plan.Kit, plan.Panel, null);
        return [.. plan.Exposures
            .Where(exposure => exposure.SetUp == setUp.Name)
            .SelectMany(exposure => Framings(plan, setUp, planned.First(framing => framing.Plan.Name == exposure.Framing.Name), exposure))
            .Where(framing => SceneCheck.ViewProblems(sheet, framing.View).Count == 0)];
    }

    private static IEnumerable<PlacementFraming> Framings(Plan plan, SetUpSpec setUp, PlannedFraming framing, ExposurePlan exposure)
    {
        var camera = LightingCases.Camera(plan.Kit, setUp, framing, exposure.Aperture) with { Iso = exposure.Iso };
        return PanelSight.Of(plan.Kit.Subjects, setUp, framing).Select(sight => new PlacementFraming(
            sight.ViewAt(plan.Panel.SubjectFromFront - (plan.Panel.Depth / 2)) with { Name = $"{exposure.Framing.Name}, {MeasureFormat.Degrees(sight.Pitch)}" },
            camera,
            exposure.HighestMargin ?? new(20)));
    }

    private PlacementChoice ChoiceOf(Placement placement)
    {
        var candidate = placement.Candidate;
        var light = _ranges.Lights[int.Parse(candidate.Flash.Name, System.Globalization.CultureInfo.InvariantCulture)];
        var middle = PanelScene.FlatMiddle(_plan.Panel);
        return new PlacementChoice
        {
            Flash = light.Flash,
            Modifier = light.Modifier,
            Zoom = light.Zoom,
            Count = candidate.Count,
            Skirts = candidate.Surround.SkirtReflectance is not null,
            PanelHeight = candidate.PanelHeight,
            Distance = candidate.Distance,
            OffsetRight = candidate.OffsetRight,
            OffsetBack = candidate.OffsetBack - middle,
            AimRight = candidate.Target is { } right ? Length.FromMeters(right.X) : null,
            AimBack = candidate.Target is { } back ? Length.FromMeters(back.Y) - middle : null,
            FullPowerFlashes = placement.MeanEnergy / candidate.Flash.FullPowerEnergy,
            Spread = placement.Spread,
            Limit = placement.Limit,
            Framings = placement.Framings,
        };
    }
}
