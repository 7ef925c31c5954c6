using StudioKit.Physics;
using UnitsNet;

namespace StudioKit.Planning.Covers;

/// <summary>One framing through a cover.</summary>
public sealed record CoveredFraming
{
    /// <summary>Name of the framing.</summary>
    public required string Framing { get; init; }

    /// <summary>Depth of field that it was judged by.</summary>
    public required Length DepthOfField { get; init; }

    /// <summary>The camera angles of the set-up.</summary>
    public required ValueList<CoveredView> Views { get; init; }

    /// <summary>Camera angles from which nothing would spoil the picture, whether the set-up has them or not; empty where there is none.</summary>
    public required ValueList<PitchRange> Clear { get; init; }
}
