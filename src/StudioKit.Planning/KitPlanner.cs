using StudioKit.Kits;

namespace StudioKit.Planning;

/// <summary>Turns a kit into a plan, in one call.</summary>
public static class KitPlanner
{
    /// <summary>Works out everything: framings, panel, light, exposures, frame, cuts, pack and checks.</summary>
    /// <param name="read">A kit as it was read, without errors.</param>
    /// <param name="services">Cut planners; the plain ones where none are given.</param>
    /// <exception cref="ArgumentException">The reading holds no kit.</exception>
    public static Plan Plan(KitReadResult read, PlanningServices? services = null) => new PlanSession(services).Plan(read);
}
