namespace StudioKit.Physics.Structure.Frames;

/// <summary>A family of fittings for one pipe size.</summary>
/// <param name="Elbow">Elbow of 90°.</param>
/// <param name="Tee">Tee.</param>
/// <param name="Cross">Cross.</param>
/// <param name="Corner">Three-way corner.</param>
/// <param name="Coupling">Straight coupling; its take-off is half the stop in its middle.</param>
/// <param name="Cap">End cap; its take-off is counted from the cap's floor.</param>
public sealed record FittingSet(Fitting Elbow, Fitting Tee, Fitting Cross, Fitting Corner, Fitting Coupling, Fitting Cap)
{
    /// <summary>The fitting of a kind.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The kind is unknown.</exception>
    public Fitting Of(FittingKind kind) => kind switch
    {
        FittingKind.Elbow => Elbow,
        FittingKind.Tee => Tee,
        FittingKind.Cross => Cross,
        FittingKind.Corner => Corner,
        FittingKind.Coupling => Coupling,
        FittingKind.Cap => Cap,
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "Unknown kind of fitting."),
    };
}
