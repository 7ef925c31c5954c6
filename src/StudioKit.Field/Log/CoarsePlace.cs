using StudioKit.Physics.Sources;

namespace StudioKit.Field.Log;

/// <summary>A place as it may be told, with what was done to it in the words that Darwin Core has for it.</summary>
/// <param name="Latitude">Latitude [°]; none where it is withheld or unknown.</param>
/// <param name="Longitude">Longitude [°].</param>
/// <param name="Uncertainty">Radius of the circle that holds the true place [m]; none where it is unknown.</param>
/// <param name="DataGeneralizations">What was made coarser; empty where nothing was.</param>
/// <param name="InformationWithheld">What was left out; empty where nothing was.</param>
public sealed record CoarsePlace(
    double? Latitude, double? Longitude, double? Uncertainty, string DataGeneralizations, string InformationWithheld)
{
    private const double MetresPerDegree = 111_320;

    /// <summary>The place of a session as it may be told of one of its subjects.</summary>
    /// <param name="session">The session.</param>
    /// <param name="sensitivity">How sensitive the subject is.</param>
    /// <remarks>
    /// Coordinates are rounded to the middle of a cell of the graticule, so the true place lies within half a cell's diagonal, at most
    /// ½·d·√(1 + cos² φ)·111.32 km, of what is told; that is added to the uncertainty recorded. A place that was never given an uncertainty
    /// gets the cell's alone, the least it can be.
    /// </remarks>
    [Source("Chapman2020", "generalisation by grid, reporting of uncertainty")]
    public static CoarsePlace Of(FieldSession session, PlaceSensitivity sensitivity)
    {
        ArgumentNullException.ThrowIfNull(session);
        return (sensitivity, session.Latitude, session.Longitude) switch
        {
            (PlaceSensitivity.Open, _, _) => new(session.Latitude, session.Longitude, session.CoordinateUncertainty, "", ""),
            (PlaceSensitivity.Withheld, _, _) => new(null, null, null, "", "coordinates, elevation and locality withheld; ask the recorder"),
            (_, { } latitude, { } longitude) => Rounded(latitude, longitude, session.CoordinateUncertainty, sensitivity == PlaceSensitivity.Tenth ? 1 : 2),
            _ => new(null, null, null, "", "elevation and locality withheld; ask the recorder"),
        };
    }

    private static CoarsePlace Rounded(double latitude, double longitude, double? uncertainty, int decimals)
    {
        var step = Math.Pow(10, -decimals);
        var cosine = Math.Cos(Math.Max(0, Math.Abs(latitude) - step) * Math.PI / 180);
        var halfDiagonal = 0.5 * step * MetresPerDegree * Math.Sqrt(1 + (cosine * cosine));
        return new CoarsePlace(
            Math.Round(latitude, decimals),
            Math.Round(longitude, decimals),
            Math.Ceiling(halfDiagonal + (uncertainty ?? 0)),
            FormattableString.Invariant($"coordinates rounded to {step:0.##} degree"),
            "exact coordinates, elevation and locality withheld; ask the recorder");
    }
}
