using StudioKit.Physics.Sources;
using StudioKit.Physics.Structure.Checks;

namespace StudioKit.Physics.Structure;

/// <summary>Every check of a studio on its site, in the order a plan prints them.</summary>
public static class StudioChecks
{
    /// <summary>Checks panel, sweep, rails, legs, sway, warmth and wind.</summary>
    /// <param name="studio">The studio.</param>
    /// <returns>One check a line; each says whether it holds and, if not, what would mend it.</returns>
    /// <exception cref="ArgumentNullException">There is no case.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A field is outside the range that the record gives.</exception>
    /// <remarks>A pipe that would be hotter than PVC bears is a check that fails; its other checks are then made at 60 °C.</remarks>
    [Source("Derived", "the checks name their own sources")]
    public static IReadOnlyList<StructuralCheck> All(StudioCheckCase studio)
    {
        ArgumentNullException.ThrowIfNull(studio);
        var warmth = new PipeWarmth(studio);
        StructuralCheck[] checks =
        [
            .. PanelChecks.Of(studio),
            .. RailChecks.Of(studio, warmth),
            .. LegChecks.Of(studio, warmth),
            .. warmth.Checks(),
            .. WindChecks.Of(studio),
        ];
        return [.. checks.Select(check => check with { Loads = AssumedLoads.Of(check.Kind, studio) })];
    }

    /// <summary>The checks of the rails alone, as <see cref="All"/> has them, but without what they assume.</summary>
    /// <param name="studio">The studio; its standing mass does not matter.</param>
    /// <returns>Sag and stress of the rail with the longest span.</returns>
    /// <exception cref="ArgumentNullException">There is no case.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A field is outside the range that the record gives.</exception>
    [Source("Derived", "the checks name their own sources")]
    public static IReadOnlyList<StructuralCheck> OfRails(StudioCheckCase studio)
    {
        ArgumentNullException.ThrowIfNull(studio);
        return [.. RailChecks.Of(studio, new PipeWarmth(studio))];
    }
}
