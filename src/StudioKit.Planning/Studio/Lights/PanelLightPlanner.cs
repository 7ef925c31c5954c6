using StudioKit.Kits;
using StudioKit.Kits.SetUps;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Light;
using StudioKit.Physics.Light.Covers;
using StudioKit.Physics.Light.Views;
using StudioKit.Physics.Structure.Frames;
using StudioKit.Planning.Framing;
using StudioKit.Planning.Studio.Panels;
using UnitsNet;

namespace StudioKit.Planning.Studio.Lights;

/// <summary>Light maps and planned powers → what each framing sees of the lit panel.</summary>
internal sealed class PanelLightPlanner(KitSpec kit, PanelPlan panel, StudioLight light, FrameResult? frame)
{
    private const string MatSurfaces =
        "Skirts, ground and the sheet's underside count as evenly matt, pipes and flash bodies as black: a white frame makes the shadows of its pipes shallower than shown.";

    // What is darker than this counts as black at every power.
    private const double Black = -30;

    private const string TwoBelow = "Flashes below are all set to the same power.";

    /// <summary>Plans one set-up that lights the panel, from its exposures.</summary>
    public PanelLightPlan Of(SetUpSpec setUp, IReadOnlyList<PlannedFraming> framings, IReadOnlyList<ExposurePlan> exposures)
    {
        var scene = light.Of(setUp).Scene;
        var section = new SectionPlanner(kit, panel, scene.Panel, frame);
        return new PanelLightPlan
        {
            SetUp = setUp.Name,
            Problems = light.ProblemsOf(setUp, framings),
            PanelWidth = panel.Width,
            PanelDepth = panel.Depth,
            SweptLength = panel.SweptLength,
            PanelHeight = scene.Panel.Height,
            Skirts = kit.Panel.Skirts,
            SubjectFromFront = panel.SubjectFromFront,
            TargetMargin = setUp.TargetWhiteMargin,
            Flashes = [.. PanelScene.Below(setUp).Zip(scene.Emitters, section.FlashAt)],
            Covered = CoveredStrips.Of(scene),
            Foot = kit.CoverOf(setUp) is { } cover
                ? new CoverFoot(cover.Name, cover.Case.OuterWidth, cover.Case.OuterDepth, cover.Shape is CoverShape.RoundTub or CoverShape.Dome)
                : null,
            Framings = light.Of(setUp).Map is { } map
                ? [.. exposures.Select(exposure => Of(setUp, framings.First(framing => framing.Plan.Name == exposure.Framing.Name), exposure, map, section)).OfType<FramingLightPlan>()]
                : [],
            Section = section.Section,
            Caveats = scene.Emitters.Count > 1 ? [MatSurfaces, TwoBelow] : [MatSurfaces],
        };
    }

    private FramingLightPlan? Of(SetUpSpec setUp, PlannedFraming framing, ExposurePlan exposure, LightMap map, SectionPlanner section)
    {
        var camera = LightingCases.Camera(kit, setUp, framing, exposure.Aperture) with { Iso = exposure.Iso };
        var below = exposure.Lights.FirstOrDefault(used => used.Role == LightRole.Below);
        var power = below?.Power;
        var gain = new Stops(-(power ?? FlashPower.Full).StopsBelowFull);
        var seen = light.Seen(setUp, framing, camera).Select(view => (Plan: View(view.Sight, view.Margins, gain, section), view.Margins)).ToList();
        var visible = seen.Where(view => view.Plan.Darkest is not null).ToList();
        if (visible.Count == 0)
        {
            return null;
        }

        var darkest = visible.MinBy(view => view.Plan.Darkest!.Margin.Value);
        return new FramingLightPlan(() => GridOf(darkest.Margins, gain))
        {
            Framing = framing.Plan.Name,
            Power = power ?? FlashPower.Full,
            PowerStep = below?.PowerStep ?? default,
            IsUsable = exposure.IsUsable,
            DarkestView = darkest.Plan,
            BrightestView = visible.MaxBy(view => view.Plan.Brightest!.Margin.Value).Plan,
            ClippedFraction = seen.Min(view => view.Plan.ClippedFraction),
            HighestMargin = exposure.HighestMargin,
            Veil = exposure.Veil,
            UplightAgainstKey = exposure.Uplight,
            Views = [.. seen.Select(view => view.Plan)],
            Outline = PlaneHull.Around(seen.SelectMany(view => view.Plan.Patch)),
        };
    }

    private static ViewLightPlan View(PanelSight sight, WhiteMarginMap margins, Stops gain, SectionPlanner section)
    {
        var patch = margins.Seen.Outline;
        return new ViewLightPlan
        {
            Pitch = sight.Pitch,
            Roll = sight.Roll,
            Patch = patch,
            PanelFraction = margins.PanelFraction,
            Darkest = At(margins.Darkest, gain),
            Brightest = At(margins.Brightest, gain),
            ClippedFraction = margins.ClippedFractionWith(gain),
            Sight = section.Sight(margins.View, patch),
        };
    }

    // Light grows in step with power, so a power shifts every margin alike.
    private static MarginPoint? At(MarginPoint? point, Stops gain) => point is null ? null : point with { Margin = point.Margin + gain };

    private static MarginGrid GridOf(WhiteMarginMap margins, Stops gain)
    {
        const int Nodes = 25;
        double[] values = [.. margins.Over(Nodes, Nodes).Select(margin => Math.Max(Black, (margin + gain).Value))];
        var (step, levels) = ContourSteps.For(values, margins.Darkest!.Margin + gain);
        return new MarginGrid(Nodes, Nodes, values, step, levels);
    }
}
