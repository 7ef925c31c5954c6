using StudioKit.Kits.SetUps;
using StudioKit.Physics.Light.Covers;

namespace StudioKit.Planning.Covers;

/// <summary>A flash that shows in a cover.</summary>
/// <param name="Flash">Its name.</param>
/// <param name="Role">What it does.</param>
/// <param name="Where">Where it shows.</param>
public sealed record ShownFlash(string Flash, LightRole Role, CoverReflection Where)
{
    /// <summary>On the clock about the middle of the frame, twelve at its top [h]; 0 to 12.</summary>
    public required double Hour { get; init; }

    /// <summary>From the middle of the frame, as a share of the way to its nearer edge [1]; 0 to 1.</summary>
    public double TowardsEdge => 2 * Math.Max(Math.Abs(Where.Right), Math.Abs(Where.Up));
}
