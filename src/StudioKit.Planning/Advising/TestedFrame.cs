using StudioKit.Physics.Exposure;
using StudioKit.Planning.Expected;

namespace StudioKit.Planning.Advising;

/// <summary>What a test frame of a white background showed, and how it was taken.</summary>
/// <param name="Shot">Power and distance of the flash below, f-number and ISO speed; as planned where left out.</param>
/// <param name="Darkest">Margin of the darkest background, negative under clipping; none where all of it is white, which tells no more than that it is not negative.</param>
public sealed record TestedFrame(ShotSettings Shot, Stops? Darkest)
{
    /// <summary>How much brighter than in the plan's darkest view the darkest background is in the view of this frame, where its camera pitch is known.</summary>
    public Stops ViewAboveDarkest { get; init; }

    /// <summary>Brightest less darkest background as the frame shows them, or the least that this is where part of it is clipped; none where the plan's own serves.</summary>
    public Stops? Spread { get; init; }

    /// <summary>Margin to aim for; the set-up's own where there is none.</summary>
    public Stops? Target { get; init; }
}
