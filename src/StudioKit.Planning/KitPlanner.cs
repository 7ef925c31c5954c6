using StudioKit.Kits;
using StudioKit.Kits.SetUps;
using StudioKit.Planning.Checks;
using StudioKit.Planning.Exposures;
using StudioKit.Planning.Frames;
using StudioKit.Planning.Framing;
using StudioKit.Planning.Handling;
using StudioKit.Planning.Packing;
using StudioKit.Planning.Panels;
using StudioKit.Planning.Sessions;
using StudioKit.Planning.Uncertainties;

namespace StudioKit.Planning;

/// <summary>Turns a kit into a plan.</summary>
public static class KitPlanner
{
    /// <summary>Works out everything: framings, panel, light, exposures, frame, cuts, pack and checks.</summary>
    /// <param name="read">A kit as it was read, without errors.</param>
    /// <param name="services">Cut planners; the plain ones where none are given.</param>
    /// <exception cref="ArgumentException">The reading holds no kit.</exception>
    public static Plan Plan(KitReadResult read, PlanningServices? services = null)
    {
        ArgumentNullException.ThrowIfNull(read);
        var kit = read.Kit ?? throw new ArgumentException("The kit could not be read; see its diagnostics.", nameof(read));
        services ??= new PlanningServices();

        var framings = FramingPlanner.Plan(kit);
        var panel = PanelPlanner.Plan(kit, framings);
        var frame = UsesPanel(kit, panel) && FramePlanner.Obstacle(kit, panel) is null ? FramePlanner.Plan(kit, panel, services) : null;
        var panelLight = new PanelLight(kit, panel, frame?.Geometry, framings);
        var exposures = ExposurePlanner.Plan(kit, framings, panelLight, new KnownInputs(kit, read.Uncertainties));
        var pack = PackPlanner.Plan(kit, panel, frame, exposures);
        var draft = new Plan
        {
            Kit = kit,
            ContentHash = read.ContentHash,
            Corrections = read.Corrections,
            Framings = [.. framings.Select(framing => framing.Plan)],
            Panel = panel,
            PanelLights = new PanelLightPlanner(kit, panel, panelLight, frame?.Geometry).Plan(framings, exposures),
            Exposures = exposures,
            DepthCurves = DepthCurves.Of(kit, exposures),
            Frame = frame,
            Pack = pack,
            Handling = HandlingPlanner.Of(kit),
            Session = SessionPlanner.Plan(kit, exposures),
            Checks = [],
            Defaults = [.. read.Defaults.Select(entry => new PlanDefault(entry.Path, entry.Value))],
        };
        return draft with { Checks = PlanChecks.Of(draft, panelLight.Problems) };
    }

    private static bool UsesPanel(KitSpec kit, PanelPlan panel) =>
        kit.SetUps.Any(setUp => setUp.Kind == SetUpKind.WhiteBackground) && panel.Width.Meters > 0 && panel.Depth.Meters > 0;
}
