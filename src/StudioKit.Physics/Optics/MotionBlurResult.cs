namespace StudioKit.Physics.Optics;

/// <summary>Motion blur of the two parts of a picture.</summary>
/// <param name="FlashPixels">Smear of the picture that the flash makes, in pixels [1].</param>
/// <param name="AmbientPixels">Smear of the picture that ambient light makes, in pixels [1].</param>
/// <param name="CombinedPixels">Root mean square of the two, weighted by their light, in pixels [1].</param>
public sealed record MotionBlurResult(double FlashPixels, double AmbientPixels, double CombinedPixels);
