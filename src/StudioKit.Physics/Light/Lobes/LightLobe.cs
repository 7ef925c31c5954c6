using System.Numerics;
using StudioKit.Physics.Sources;

namespace StudioKit.Physics.Light.Lobes;

/// <summary>How an emitter's luminous intensity falls off with the angle from its axis.</summary>
public abstract record LightLobe
{
    /// <summary>Luminous flux over axial intensity, Φ/I₀ [sr]; &gt; 0.</summary>
    public abstract double FluxOverAxialIntensity { get; }

    /// <summary>Intensity towards a direction over axial intensity [1]; ≥ 0.</summary>
    /// <param name="across">Cosine between the direction and the emitter's width [1]; −1 to 1.</param>
    /// <param name="along">Cosine between the direction and the emitter's height [1]; −1 to 1.</param>
    /// <param name="axial">Cosine between the direction and the emitter's axis [1]; −1 to 1.</param>
    /// <returns>I/I₀ [1].</returns>
    [Source("Walsh1958", "luminous intensity distribution, relative to the axis")]
    public double RelativeIntensity(double across, double along, double axial) =>
        Relative(new Vector<double>(across), new Vector<double>(along), new Vector<double>(axial))[0];

    /// <summary>Whether any light may go to where the axial cosine is below zero.</summary>
    internal virtual bool LightsBehind => true;

    // The same for as many directions as the machine's vectors hold; the solver's inner loops call this one.
    internal abstract Vector<double> Relative(Vector<double> across, Vector<double> along, Vector<double> axial);
}
