namespace StudioKit.Physics.Optics;

/// <summary>Smear of a picture, cause by cause.</summary>
/// <param name="Hand">By the hand, in the ambient light.</param>
/// <param name="Subject">By the subject, in the ambient light.</param>
/// <param name="Flash">By both, in the light of the flash.</param>
public sealed record MotionBlurResult(MotionBlurPart Hand, MotionBlurPart Subject, MotionBlurPart Flash)
{
    /// <summary>Smear of the picture that the flash makes, in pixels [1].</summary>
    public double FlashPixels => Flash.Pixels;

    /// <summary>Smear of the picture that ambient light makes, in pixels [1].</summary>
    public double AmbientPixels => double.Hypot(Hand.Pixels, Subject.Pixels);

    /// <summary>Root mean square of the two, weighted by their light, in pixels [1].</summary>
    public double CombinedPixels => double.Hypot(double.Hypot(Hand.Counted, Subject.Counted), Flash.Counted);

    /// <summary>The cause that adds most; the hand where nothing moves.</summary>
    public MotionBlurPart Largest => Flash.Counted > Math.Max(Hand.Counted, Subject.Counted) ? Flash
        : Subject.Counted > Hand.Counted ? Subject
        : Hand;
}
