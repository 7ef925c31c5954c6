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

    /// <summary>Smear that takes detail away, in pixels [1]: a picture of little light over a sharp one does not.</summary>
    public double TakenAwayPixels => double.Hypot(double.Hypot(Hand.TakenAway, Subject.TakenAway), Flash.TakenAway);

    /// <summary>The cause that takes most away; the hand where nothing moves.</summary>
    public MotionBlurPart Largest => Flash.TakenAway > Math.Max(Hand.TakenAway, Subject.TakenAway) ? Flash
        : Subject.TakenAway > Hand.TakenAway ? Subject
        : Hand;
}
