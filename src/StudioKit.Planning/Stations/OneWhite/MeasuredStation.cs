using StudioKit.Physics.Exposure;
using StudioKit.Planning.Advising;
using UnitsNet;

namespace StudioKit.Planning.Stations.OneWhite;

/// <summary>A station whose white was measured: its plan, and what its power ladder showed of one exposure.</summary>
public sealed record MeasuredStation
{
    /// <summary>Its plan, with whatever corrections were kept for its kit.</summary>
    public required Plan Plan { get; init; }

    /// <summary>The exposure that the ladder was taken of, as its card has it.</summary>
    public required ExposurePlan Exposure { get; init; }

    /// <summary>Camera pitch of the ladder's frames.</summary>
    public required Angle Pitch { get; init; }

    /// <summary>What the ladder showed at one of its powers; its darkest place was seen.</summary>
    public required TestedFrame Frame { get; init; }

    /// <summary>Standard uncertainty of the ladder's darkest place.</summary>
    public required Stops Uncertainty { get; init; }

    /// <summary>Root mean square by which the light lies over the frame otherwise than planned, its mean taken away.</summary>
    public required Stops OtherShape { get; init; }
}
