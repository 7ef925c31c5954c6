using UnitsNet;

namespace StudioKit.Physics.Structure.Frames;

/// <summary>Where the light design puts a flash below the panel.</summary>
/// <param name="BelowPanel">Bright window to the panel's underside; &gt; 0.</param>
/// <param name="OffsetRight">Right of the flat panel's centre.</param>
/// <param name="OffsetBack">Beyond the flat panel's centre.</param>
/// <param name="StandOff">Cradle rail's centre line to the bright window; ≥ 0.</param>
public sealed record FlashCradleCase(Length BelowPanel, Length OffsetRight, Length OffsetBack, Length StandOff)
{
    /// <summary>Width of the head, across the view; ≥ 0.</summary>
    public Length HeadWidth { get; init; } = Length.Zero;

    /// <summary>Height of the head, which lies along the view; ≥ 0.</summary>
    public Length HeadHeight { get; init; } = Length.Zero;

    /// <summary>Length of the body as it lies with the window facing up; nought where it is not known.</summary>
    public Length BodyLength { get; init; } = Length.Zero;

    /// <summary>Width of the body; ≥ 0.</summary>
    public Length BodyWidth { get; init; } = Length.Zero;

    /// <summary>Height of the window over the underside of the body; ≥ 0.</summary>
    public Length BodyHeight { get; init; } = Length.Zero;

    /// <summary>Names of the lightings it is up for; two flashes that share one are up at once.</summary>
    public IReadOnlyList<string> UpFor { get; init; } = [];
}
