using StudioKit.Physics;
using StudioKit.Physics.Sources;

namespace StudioKit.Field.Pictures;

/// <summary>From the code values in a picture file back to amounts of light and on again, by the sRGB curve.</summary>
/// <remarks>A camera's own look may bend the curve; clipping, at code 255, is the same under any curve.</remarks>
public static class ToneCurveIec61966
{
    private static readonly ushort[] Table = [.. Enumerable.Range(0, 256).Select(code => (ushort)Math.Round(Linear(code / 255.0) * 65535))];

    /// <summary>Linear light of each 8-bit code, 65535 being saturation [1].</summary>
    internal static ReadOnlySpan<ushort> Codes => Table;

    /// <summary>Light that an encoded value stands for.</summary>
    /// <param name="encoded">Encoded value v, 1 at clipping [1]; 0 to 1.</param>
    /// <returns>Share of saturation: v/12.92 up to 0.04045, ((v + 0.055)/1.055)^2.4 above [1].</returns>
    /// <exception cref="ArgumentOutOfRangeException">The value is outside 0 to 1.</exception>
    [Source("Iec61966", "encoding transformation, inverse")]
    public static double Linear(double encoded) => Guard.Between(encoded, 0, 1) <= 0.04045
        ? encoded / 12.92
        : Math.Pow((encoded + 0.055) / 1.055, 2.4);

    /// <summary>Encoded value that stands for an amount of light.</summary>
    /// <param name="linear">Share of saturation E [1]; 0 to 1.</param>
    /// <returns>12.92·E up to 0.0031308, 1.055·E^(1/2.4) − 0.055 above [1].</returns>
    /// <exception cref="ArgumentOutOfRangeException">The share is outside 0 to 1.</exception>
    [Source("Iec61966", "encoding transformation")]
    public static double Encoded(double linear) => Guard.Between(linear, 0, 1) <= 0.0031308
        ? 12.92 * linear
        : (1.055 * Math.Pow(linear, 1 / 2.4)) - 0.055;
}
