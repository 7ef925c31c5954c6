using StudioKit.Physics.Sources;

namespace StudioKit.Physics.Optics;

/// <summary>The largest blur spot on the sensor that still passes for a point.</summary>
public static class CircleOfConfusion
{
    /// <summary>Circle of confusion as a share of the sensor's diagonal.</summary>
    /// <param name="sensorWidth">Longer side of the sensor [m]; &gt; 0.</param>
    /// <param name="sensorHeight">Shorter side of the sensor [m]; &gt; 0.</param>
    /// <param name="divisor">Parts that the diagonal is divided into [1]; &gt; 0.</param>
    /// <returns>Diameter c = √(w² + h²)/divisor [m].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or not finite.</exception>
    [Source("CommonPractice", "a 1500th of the diagonal")]
    public static double FromDiagonal(double sensorWidth, double sensorHeight, double divisor = 1500)
    {
        var w = Guard.Positive(sensorWidth);
        var h = Guard.Positive(sensorHeight);
        return Math.Sqrt((w * w) + (h * h)) / Guard.Positive(divisor);
    }

    /// <summary>Circle of confusion for a picture looked at from 25 cm.</summary>
    /// <param name="enlargement">Width of the picture over width of the sensor [1]; &gt; 0.</param>
    /// <returns>Diameter c = 0.2 mm/enlargement [m]: five line pairs a millimetre on the picture.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The enlargement is outside its range, or not finite.</exception>
    [Source("CircleOfConfusionArticle", "section 2: 25 cm, 5 lp/mm, 0.2 mm")]
    public static double ForPrint(double enlargement) => 0.2e-3 / Guard.Positive(enlargement);

    /// <summary>Circle of confusion for a picture looked at pixel by pixel.</summary>
    /// <param name="pixelPitch">Distance between pixel centres [m]; &gt; 0.</param>
    /// <param name="pixels">Pixels that a spot may cover [1]; &gt; 0.</param>
    /// <returns>Diameter c [m].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or not finite.</exception>
    [Source("CommonPractice", "two pixels for critical work")]
    public static double FromPixels(double pixelPitch, double pixels = 2) =>
        Guard.Positive(pixelPitch) * Guard.Positive(pixels);
}
