using StudioKit.Physics.Sources;

namespace StudioKit.Physics.Optics;

/// <summary>What a close-up lens before the main lens does, both thin and in contact.</summary>
public static class CloseUpLens
{
    /// <summary>Distance at which the pair focuses.</summary>
    /// <param name="power">Optical power d of the close-up lens [1/m]; &gt; 0. Stacked powers add.</param>
    /// <param name="mainFocusDistance">Distance X that the main lens is focused at [m]; &gt; 0.</param>
    /// <returns>Subject distance X/(d·X + 1) [m].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or not finite.</exception>
    [Source("CloseUpLensArticle", "optical power; main lens focused nearer than infinity")]
    public static double FocusDistance(double power, double mainFocusDistance) =>
        Guard.Positive(mainFocusDistance) / ((Guard.Positive(power) * mainFocusDistance) + 1);

    /// <summary>Distance at which the pair focuses with the main lens at infinity.</summary>
    /// <param name="power">Optical power d of the close-up lens [1/m]; &gt; 0.</param>
    /// <returns>Subject distance 1/d [m].</returns>
    /// <exception cref="ArgumentOutOfRangeException">The power is outside its range, or not finite.</exception>
    [Source("CloseUpLensArticle", "optical power")]
    public static double FocusDistanceAtInfinity(double power) => 1 / Guard.Positive(power);

    /// <summary>How much larger the image becomes at one focus setting of the main lens.</summary>
    /// <param name="power">Optical power d of the close-up lens [1/m]; &gt; 0.</param>
    /// <param name="mainFocusDistance">Distance X that the main lens is focused at [m]; &gt; 0.</param>
    /// <returns>Magnification with over without the close-up lens, d·X + 1 [1].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or not finite.</exception>
    [Source("Derived", "m = v/u with v unchanged and u from FocusDistance")]
    public static double MagnificationGain(double power, double mainFocusDistance) =>
        (Guard.Positive(power) * Guard.Positive(mainFocusDistance)) + 1;

    /// <summary>Magnification of the pair with the main lens at infinity.</summary>
    /// <param name="power">Optical power d of the close-up lens [1/m]; &gt; 0.</param>
    /// <param name="focalLength">Focal length f of the main lens [m]; &gt; 0.</param>
    /// <returns>Magnification m = f·d [1].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or not finite.</exception>
    [Source("CloseUpLensArticle", "magnification")]
    public static double MagnificationAtInfinity(double power, double focalLength) =>
        Guard.Positive(focalLength) * Guard.Positive(power);
}
