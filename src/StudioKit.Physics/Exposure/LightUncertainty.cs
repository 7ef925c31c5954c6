namespace StudioKit.Physics.Exposure;

/// <summary>How well each kind of input is known: one standard deviation, in stops, or as a share where the name says so.</summary>
/// <remarks>The defaults are common practice without a source; a measured value deserves a smaller one.</remarks>
public sealed record LightUncertainty
{
    /// <summary>The defaults.</summary>
    public static LightUncertainty Usual { get; } = new();

    /// <summary>Everything known exactly.</summary>
    public static LightUncertainty None { get; } = new()
    {
        GuideNumber = default,
        Outdoor = default,
        Modifier = default,
        DistanceShare = 0,
        TransmittanceShare = 0,
        Scatter = default,
        Aperture = default,
        CloseFocus = default,
        ClipPoint = default,
    };

    /// <summary>Makers' guide numbers.</summary>
    public Stops GuideNumber { get; init; } = new(1.0 / 3);

    /// <summary>The outdoor correction.</summary>
    public Stops Outdoor { get; init; } = new(1.0 / 6);

    /// <summary>A modifier's loss.</summary>
    public Stops Modifier { get; init; } = new(1.0 / 3);

    /// <summary>Flash distance as set up in the field, a share of it [1]; 0 to 1.</summary>
    public double DistanceShare { get; init; } = 0.05;

    /// <summary>Panel transmittance, a share of it [1]; 0 to 1.</summary>
    public double TransmittanceShare { get; init; } = 0.2;

    /// <summary>How far a real sheet departs from an even, Lambertian exit.</summary>
    public Stops Scatter { get; init; } = new(1.0 / 6);

    /// <summary>Aperture, lens transmission and magnification together.</summary>
    public Stops Aperture { get; init; } = new(1.0 / 6);

    /// <summary>What focusing close costs, where pupils or principal planes of the lens had to be assumed; nothing where they are given.</summary>
    public Stops CloseFocus { get; init; }

    /// <summary>What the walls of a clear cover take on the way to the subject; nothing without one.</summary>
    public Stops IntoCover { get; init; }

    /// <summary>What they take on the way to the lens.</summary>
    public Stops OutOfCover { get; init; }

    /// <summary>Where the camera really clips, or puts its mid-tone.</summary>
    public Stops ClipPoint { get; init; } = new(1.0 / 3);

    internal Stops Distance => new(2 * Math.Log2(1 + Guard.Between(DistanceShare, 0, 1)));

    internal Stops Transmittance => new(Math.Log2(1 + Guard.Between(TransmittanceShare, 0, 1)));
}
