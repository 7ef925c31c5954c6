namespace StudioKit.Physics.Light.Views;

/// <summary>A ray of a view, and how far away another sheet stands on the one that it looks at.</summary>
/// <param name="Pupil">From where it comes.</param>
/// <param name="Ray">Which way it goes.</param>
/// <param name="End">Where the other sheet stands, away from the camera [m]; none where none does.</param>
internal readonly record struct SheetRay(Position Pupil, Direction Ray, double? End)
{
    /// <summary>Where it meets the sheet, or where it passes on to the other one; none where it meets neither.</summary>
    public (double X, double S)? Within((double X, double S)? met) =>
        End is not { } end || (met is { } place && place.S <= end) ? met
        : Ray.Y > 0 ? (Pupil.X + (Ray.X * (end - Pupil.Y) / Ray.Y), end)
        : met;
}
