namespace StudioKit.Physics.Optics;

/// <summary>One cause of smear, and how much of the light it smears.</summary>
/// <param name="Kind">What smears.</param>
/// <param name="Pixels">Length of its smear, in pixels [1]; ≥ 0.</param>
/// <param name="LightShare">Share of the light on the subject that is smeared so [1]; 0 to 1.</param>
public readonly record struct MotionBlurPart(MotionBlurKind Kind, double Pixels, double LightShare)
{
    /// <summary>What it adds, in quadrature, to the smear of the whole picture: its length times the root of its share, in pixels [1].</summary>
    public double Counted => Pixels * Math.Sqrt(LightShare);

    // Two points are told apart down to a dip of about a fifth between them (Rayleigh's criterion: 26 %), so a picture that holds no more of the light
    // than that is a ghost over a sharp one, and takes no detail away.
    private const double Ghost = 0.2;

    /// <summary>What it takes away of detail: as <see cref="Counted"/>, the share counted from where it is more than a ghost, in pixels [1].</summary>
    public double TakenAway => Pixels * Math.Sqrt(Math.Max(0, LightShare - Ghost) / (1 - Ghost));
}
