using System.Numerics;
using StudioKit.Physics.Sources;

namespace StudioKit.Physics.Light.Lobes;

/// <summary>The light of a translucent half ball over the head: half as much sideways as ahead, some of it backwards.</summary>
/// <remarks>A Lambertian half sphere shows the area πr²(1 + cos θ)/2 towards θ, so I = I₀(1 + cos θ)/2 all round.</remarks>
public sealed record DomeLobe : LightLobe
{
    /// <inheritdoc/>
    [Source("Derived", "∫(1 + cos θ)/2 dω over the full sphere = 2π")]
    public override double FluxOverAxialIntensity => 2 * Math.PI;

    internal override Vector<double> Relative(Vector<double> across, Vector<double> along, Vector<double> axial) =>
        0.5 * (Vector<double>.One + axial);
}
