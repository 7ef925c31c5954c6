namespace StudioKit.Field.Scale;

/// <summary>Scale read off a millimetre rule in a picture.</summary>
/// <param name="MicrometresPerPixel">Size of a pixel at the rule [µm].</param>
/// <param name="PeriodPixels">Distance between neighbouring millimetre ticks, in pixels of the file [1].</param>
/// <param name="AngleDegrees">Direction along the rule, anticlockwise from the stored rows [°]; 0 to 180.</param>
/// <param name="RelativeUncertainty">Relative standard uncertainty, from how the two halves of the rule differ [1].</param>
/// <param name="Caveats">What to bear in mind, one sentence each.</param>
public sealed record RuleMeasurement(
    double MicrometresPerPixel,
    double PeriodPixels,
    double AngleDegrees,
    double RelativeUncertainty,
    IReadOnlyList<string> Caveats);
