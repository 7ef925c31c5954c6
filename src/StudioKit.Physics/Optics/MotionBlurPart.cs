namespace StudioKit.Physics.Optics;

/// <summary>One cause of smear, and how much of the light it smears.</summary>
/// <param name="Kind">What smears.</param>
/// <param name="Pixels">Length of its smear, in pixels [1]; ≥ 0.</param>
/// <param name="LightShare">Share of the light on the subject that is smeared so [1]; 0 to 1.</param>
public readonly record struct MotionBlurPart(MotionBlurKind Kind, double Pixels, double LightShare)
{
    /// <summary>What it adds, in quadrature, to the smear of the whole picture: its length times the root of its share, in pixels [1].</summary>
    public double Counted => Pixels * Math.Sqrt(LightShare);
}
