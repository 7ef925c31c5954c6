using StudioKit.Kits;
using StudioKit.Planning.Framing;
using StudioKit.Planning.Studio.Lights;

namespace StudioKit.Planning.SetUps;

/// <summary>What the exposures of one set-up follow from.</summary>
/// <param name="Kit">What of the kit counts, with that set-up alone.</param>
/// <param name="Known">How well its inputs are known.</param>
/// <param name="Framings">The framings.</param>
/// <param name="Light">The studio's light, where the set-up stands on the panel.</param>
internal sealed record ExposureInputs(KitSpec Kit, KnownSetUp Known, IReadOnlyList<PlannedFraming> Framings, StudioLight? Light)
{
    /// <summary>The exposures.</summary>
    public static IReadOnlyList<ExposurePlan> Solve(ExposureInputs of) => ExposurePlanner.Plan(of.Kit, of.Kit.SetUps[0], of.Framings, of.Light, of.Known);
}
