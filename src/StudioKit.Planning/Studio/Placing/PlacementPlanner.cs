using StudioKit.Physics.Light.Placements;

namespace StudioKit.Planning.Studio.Placing;

/// <summary>Searches where the flash below should go; asked for on its own, as no plan needs it.</summary>
public static class PlacementPlanner
{
    /// <summary>Searches for one white-background set-up.</summary>
    /// <param name="plan">The plan of the kit as it is.</param>
    /// <param name="setUp">Name of the set-up.</param>
    /// <param name="progress">Told about every hundredth of the work; none where nobody watches.</param>
    /// <param name="cancellation">Stops the search.</param>
    /// <returns>The recommendation; none where the set-up has no framing that sees the panel, or is no white-background set-up.</returns>
    /// <exception cref="OperationCanceledException">The search was stopped.</exception>
    public static PlacementPlan? Search(
        Plan plan, string setUp, IProgress<PlacementProgress>? progress = null, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var spec = plan.Kit.SetUps.FirstOrDefault(candidate => candidate.Name == setUp);
        var search = spec is null || plan.PanelLights.All(light => light.SetUp != setUp) ? null : PlacementSearch.For(plan, spec);
        return search?.Run(progress, cancellation);
    }
}
