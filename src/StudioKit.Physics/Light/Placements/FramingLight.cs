using StudioKit.Physics.Exposure;

namespace StudioKit.Physics.Light.Placements;

/// <summary>What a placement gives one framing.</summary>
/// <param name="Framing">The framing.</param>
/// <param name="Power">Power of each flash as a share of full that brings the darkest visible point to the target [1]; over 1 where full power falls short.</param>
/// <param name="Darkest">Margin of the darkest visible point at that power.</param>
/// <param name="Brightest">Margin of the brightest visible point at that power.</param>
public sealed record FramingLight(PlacementFraming Framing, double Power, Stops Darkest, Stops Brightest)
{
    /// <summary>Unevenness of what the camera sees.</summary>
    public Stops Spread => Brightest - Darkest;
}
