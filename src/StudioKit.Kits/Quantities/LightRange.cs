using StudioKit.Physics.Exposure;

namespace StudioKit.Kits.Quantities;

/// <summary>A range of ambient light, as in <c>EV 12 to EV 15</c>.</summary>
/// <param name="Darkest">Its darker end.</param>
/// <param name="Brightest">Its brighter end.</param>
public sealed record LightRange(ExposureValue Darkest, ExposureValue Brightest)
{
    // Round-off decides nothing.
    private const double Same = 1e-9;

    /// <summary>Whether a light lies in it, the ends included.</summary>
    /// <param name="light">The light.</param>
    public bool Holds(ExposureValue light) => light.AtIso100 >= Darkest.AtIso100 - Same && light.AtIso100 <= Brightest.AtIso100 + Same;

    /// <summary>What it has in common with another; none where they do not meet.</summary>
    /// <param name="other">The other range.</param>
    /// <exception cref="ArgumentNullException">There is no other range.</exception>
    public LightRange? With(LightRange other)
    {
        ArgumentNullException.ThrowIfNull(other);
        var darkest = Math.Max(Darkest.AtIso100, other.Darkest.AtIso100);
        var brightest = Math.Min(Brightest.AtIso100, other.Brightest.AtIso100);
        return darkest <= brightest + Same ? new LightRange(new ExposureValue(darkest), new ExposureValue(Math.Max(darkest, brightest))) : null;
    }

    /// <summary>The light in it that is nearest to another.</summary>
    /// <param name="light">The other light.</param>
    public ExposureValue Nearest(ExposureValue light) => new(Math.Min(Math.Max(light.AtIso100, Darkest.AtIso100), Brightest.AtIso100));
}
