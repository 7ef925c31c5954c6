using StudioKit.Kits;
using StudioKit.Kits.SetUps;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Light;
using StudioKit.Physics.Light.Views;
using StudioKit.Planning.Framing;
using StudioKit.Planning.Studio.Panels;

namespace StudioKit.Planning.Studio.Lights;

/// <summary>Margins that a framing sees of a sheet with its flashes at full power → what it sees at the planned power.</summary>
internal static class FramingLights
{
    // What is darker than this counts as black at every power.
    private const double Black = -30;

    /// <summary>The camera of an exposure.</summary>
    public static CameraCase Camera(KitSpec kit, SetUpSpec setUp, PlannedFraming framing, ExposurePlan exposure) =>
        LightingCases.Camera(kit, setUp, framing, exposure.Aperture) with { Iso = exposure.Iso };

    /// <summary>What one framing sees over all its camera angles; none where it does not see the sheet.</summary>
    /// <param name="exposure">The exposure.</param>
    /// <param name="role">What the sheet's flashes do.</param>
    /// <param name="margins">Margins at each camera angle, the sheet's flashes at full power.</param>
    /// <param name="sightOf">What the camera looks along, in the side view.</param>
    public static FramingLightPlan? Of(
        ExposurePlan exposure, LightRole role, IEnumerable<(PanelSight Sight, WhiteMarginMap Margins)> margins, Func<CameraView, IReadOnlyList<PanelPlace>, SightLine> sightOf)
    {
        var light = exposure.Lights.FirstOrDefault(used => used.Role == role);
        var gain = new Stops(-(light?.Power ?? FlashPower.Full).StopsBelowFull);
        var seen = margins.Select(view => (Plan: View(view.Sight, view.Margins, gain, sightOf), view.Margins)).ToList();
        var visible = seen.Where(view => view.Plan.Darkest is not null).ToList();
        if (visible.Count == 0)
        {
            return null;
        }

        var darkest = visible.MinBy(view => view.Plan.Darkest!.Margin.Value);
        return new FramingLightPlan(() => GridOf(darkest.Margins, gain))
        {
            Framing = exposure.Framing.Name,
            Power = light?.Power ?? FlashPower.Full,
            PowerStep = light?.PowerStep ?? default,
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

    private static ViewLightPlan View(PanelSight sight, WhiteMarginMap margins, Stops gain, Func<CameraView, IReadOnlyList<PanelPlace>, SightLine> sightOf)
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
            Sight = sightOf(margins.View, patch),
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
