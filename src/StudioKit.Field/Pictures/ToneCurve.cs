using StudioKit.Physics;
using StudioKit.Physics.Sources;

namespace StudioKit.Field.Pictures;

/// <summary>A camera's tone curve, as what it makes of the standard one: how far under clipping light really lies that the standard curve puts so many stops under.</summary>
/// <remarks>Code 255 is clipping under any curve. Between knots the curve is straight in stops, beyond the last it goes on a stop for a stop.</remarks>
public sealed record ToneCurve
{
    /// <summary>Most knots of a curve [1].</summary>
    public const int MostKnots = 32;

    private const double LeastSteepness = 0.02;
    private const double MostSteepness = 20;
    private const double Deepest = 16;
    private readonly ushort[] _codes;

    /// <summary>Makes a curve of its knots.</summary>
    /// <param name="standard">Stops under clipping by the standard curve [1], rising from 0.</param>
    /// <param name="light">Stops under clipping that the light really lies there [1], rising from 0.</param>
    /// <exception cref="ArgumentException">The knots are no curve that rises all along.</exception>
    public ToneCurve(ValueList<double> standard, ValueList<double> light)
    {
        ArgumentNullException.ThrowIfNull(standard);
        ArgumentNullException.ThrowIfNull(light);
        if (Fault(standard, light) is { } fault)
        {
            throw new ArgumentException(fault, nameof(light));
        }

        (StandardStops, LightStops) = (standard, light);
        _codes = [.. Enumerable.Range(0, 256).Select(code => (ushort)Math.Round(Linear(code / 255.0) * 65535))];
    }

    /// <summary>The curve of IEC 61966-2-1, assumed where nothing was learnt of the camera.</summary>
    public static ToneCurve Standard { get; } = new([0, 1], [0, 1]);

    /// <summary>Stops under clipping by the standard curve [1].</summary>
    public ValueList<double> StandardStops { get; }

    /// <summary>Stops under clipping that the light really lies there [1].</summary>
    public ValueList<double> LightStops { get; }

    /// <summary>Camera that it was learnt from, as its files name it; empty where they do not.</summary>
    public string Camera { get; init; } = "";

    /// <summary>Standard uncertainty of the curve, in stops [1].</summary>
    public double PlusMinus { get; init; } = 0.1;

    /// <summary>Whether it is the standard curve, stop for stop.</summary>
    public bool IsStandard => MostOff.Stops == 0;

    /// <summary>Where the standard curve is furthest off, and by how much: stops under clipping by the standard curve, and light less than that in stops [1].</summary>
    public (double At, double Stops) MostOff => StandardStops.Zip(LightStops, (at, light) => (at, at - light)).MaxBy(knot => Math.Abs(knot.Item2));

    /// <summary>Linear light of each 8-bit code, 65535 being saturation [1].</summary>
    internal ReadOnlySpan<ushort> Codes => _codes;

    /// <summary>What is wrong with knots, as a sentence; none where they make a curve.</summary>
    /// <param name="standard">Stops under clipping by the standard curve [1].</param>
    /// <param name="light">Stops under clipping that the light really lies there [1].</param>
    public static string? Fault(IReadOnlyList<double> standard, IReadOnlyList<double> light)
    {
        ArgumentNullException.ThrowIfNull(standard);
        ArgumentNullException.ThrowIfNull(light);
        if (standard.Count != light.Count || standard.Count is < 2 or > MostKnots || standard[0] != 0 || light[0] != 0)
        {
            return FormattableString.Invariant($"a tone curve has 2 to {MostKnots} knots, the first at 0 and 0.");
        }

        var steps = Enumerable.Range(1, standard.Count - 1).Select(i => (Standard: standard[i] - standard[i - 1], Light: light[i] - light[i - 1])).ToList();
        return steps.TrueForAll(step => step.Standard > 1e-4 && step.Light / step.Standard is >= LeastSteepness and <= MostSteepness) && standard[^1] <= Deepest && light[^1] <= 2 * Deepest
            ? null
            : "a tone curve must rise all along, and nowhere more than twentyfold.";
    }

    /// <summary>Whether it goes for a camera: it was learnt from it, or one of the two is not named.</summary>
    /// <param name="camera">The camera as a file names it.</param>
    public bool IsFor(string camera) => Camera.Length == 0 || string.IsNullOrEmpty(camera) || Camera == camera;

    /// <summary>How far under clipping light lies.</summary>
    /// <param name="standard">Stops under clipping by the standard curve [1]; ≥ 0.</param>
    /// <returns>Stops under clipping [1].</returns>
    /// <exception cref="ArgumentOutOfRangeException">The number is negative or not finite.</exception>
    [Source("Derived", "straight lines between knots")]
    public double StopsUnder(double standard) => Along(StandardStops, LightStops, Guard.NonNegative(standard));

    /// <summary>Light that an encoded value stands for.</summary>
    /// <param name="encoded">Encoded value, 1 at clipping [1]; 0 to 1.</param>
    /// <returns>Share of saturation [1].</returns>
    /// <exception cref="ArgumentOutOfRangeException">The value is outside 0 to 1.</exception>
    [Source("Iec61966", "encoding transformation, inverse; then the camera's own curve")]
    public double Linear(double encoded) => ToneCurveIec61966.Linear(encoded) is var standard and > 0 ? Math.Pow(2, -StopsUnder(-Math.Log2(standard))) : 0;

    /// <summary>Encoded value that stands for an amount of light.</summary>
    /// <param name="linear">Share of saturation [1]; 0 to 1.</param>
    /// <returns>Encoded value, 1 at clipping [1].</returns>
    /// <exception cref="ArgumentOutOfRangeException">The share is outside 0 to 1.</exception>
    [Source("Iec61966", "encoding transformation, after the camera's own curve")]
    public double Encoded(double linear) => Guard.Between(linear, 0, 1) > 0
        ? ToneCurveIec61966.Encoded(Math.Min(1, Math.Pow(2, -Along(LightStops, StandardStops, -Math.Log2(linear)))))
        : 0;

    private static double Along(ValueList<double> from, ValueList<double> to, double at)
    {
        if (at >= from[^1])
        {
            return to[^1] + at - from[^1];
        }

        var i = 1;
        while (from[i] < at)
        {
            i++;
        }

        return to[i - 1] + ((at - from[i - 1]) / (from[i] - from[i - 1]) * (to[i] - to[i - 1]));
    }
}
