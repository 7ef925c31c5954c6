using StudioKit.Physics;
using StudioKit.Physics.Exposure;
using StudioKit.Planning.Studio.Uprights;

namespace StudioKit.Planning;

/// <summary>Light that a sheet behind the subject throws round the subject's edges.</summary>
public sealed record EdgeSpillPlan
{
    /// <summary>Level against the lights on the subject from which on a rim counts as lit by the sheet (common practice, no source).</summary>
    public static Stops RimFrom { get; } = new(-1);

    /// <summary>Each edge of the subject.</summary>
    public required ValueList<LimbSpill> Limbs { get; init; }

    /// <summary>The edge that gets most; of equal ones the first.</summary>
    public LimbSpill Strongest => Limbs.MaxBy(limb => Math.Round(limb.AgainstKey.Value, 6))!;
}
