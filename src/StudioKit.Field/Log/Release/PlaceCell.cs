using StudioKit.Physics;
using StudioKit.Physics.Sources;

namespace StudioKit.Field.Log.Release;

/// <summary>A cell of the graticule that stands for every place in it, so that what is told of one says nothing of where in the cell it lies.</summary>
/// <param name="Step">Height and width of the cell [°].</param>
/// <param name="Latitude">Latitude of its middle [°].</param>
/// <param name="Longitude">Longitude of its middle [°].</param>
public sealed record PlaceCell(decimal Step, decimal Latitude, decimal Longitude)
{
    // Places are recorded with an uncertainty of their own; that much of the cell's half diagonal is kept for it, used or not. A place known
    // worse gets a coarser cell, so that the radius, too, follows from the cell alone.
    private const double ShareForUncertainty = 0.25;

    // WGS 84: equatorial radius in metres, and the first eccentricity squared.
    private const double EquatorialRadius = 6_378_137;
    private const double EccentricitySquared = 0.00669437999014;

    private static readonly decimal[] Steps = [0.01m, 0.02m, 0.05m, 0.1m, 0.2m, 0.5m, 1, 2, 5, 10];

    /// <summary>Radius around the middle that holds every place of the cell with the uncertainty it may have [m].</summary>
    public int Radius => (int)Math.Ceiling((1 + ShareForUncertainty) * HalfDiagonal);

    /// <summary>Farthest that a place of the cell lies from its middle, at most [m].</summary>
    /// <remarks>
    /// A line straight in latitude and longitude from the middle to a corner is nowhere longer than with the longest degree of latitude in the cell,
    /// which is that of its poleward edge, and the longest of longitude, that of its other edge; the shortest line is not longer.
    /// </remarks>
    [Source("Chapman2020Georeferencing", "uncertainty due to coordinate precision; radii of the spheroid")]
    public double HalfDiagonal
    {
        get
        {
            var (near, far) = ((double)(Math.Abs(Latitude) - (Step / 2)) * Math.PI / 180, (double)(Math.Abs(Latitude) + (Step / 2)) * Math.PI / 180);
            var half = (double)Step / 2 * Math.PI / 180;
            return half * Math.Sqrt(Math.Pow(MeridianRadius(far), 2) + Math.Pow(ParallelRadius(near), 2));
        }
    }

    /// <summary>The cell that stands for a place.</summary>
    /// <param name="latitude">Latitude on WGS 84 [°]; −90 to 90.</param>
    /// <param name="longitude">Longitude on WGS 84 [°]; −180 to 180, whose ends are one meridian.</param>
    /// <param name="uncertainty">Radius of the circle that holds the place [m]; none where it is unknown.</param>
    /// <param name="leastStep">Smallest step that may be told [°].</param>
    /// <returns>The smallest cell that holds the place and its uncertainty; none where it is known too badly for any.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A coordinate is off the Earth.</exception>
    [Source("Chapman2020", "generalisation of point data to the cells of a grid")]
    public static PlaceCell? Of(double latitude, double longitude, double? uncertainty, decimal leastStep)
    {
        Guard.Between(latitude, -90, 90);
        Guard.Between(longitude, -180, 180);
        var cells = Steps.Where(step => step >= leastStep).Select(step => At(latitude, longitude, step)).ToList();

        // What was told by a cell once is told by the same again, and does not grow from hand to hand.
        return cells.Find(cell => cell.Latitude == (decimal)latitude && cell.Longitude == (decimal)longitude && cell.Radius == uncertainty)
            ?? cells.Find(cell => (uncertainty ?? 0) <= ShareForUncertainty * cell.HalfDiagonal);
    }

    // In decimals: 52.6 belongs to the cell that begins there, whatever a binary fraction makes of it.
    private static PlaceCell At(double latitude, double longitude, decimal step) => new(
        step,
        Middle(Math.Min((decimal)latitude, 90 - step), step),
        Middle(longitude == 180 ? -180 : (decimal)longitude, step));

    private static decimal Middle(decimal degrees, decimal step) => (Math.Floor(degrees / step) * step) + (step / 2);

    private static double MeridianRadius(double latitude) =>
        EquatorialRadius * (1 - EccentricitySquared) / Math.Pow(1 - (EccentricitySquared * Math.Pow(Math.Sin(latitude), 2)), 1.5);

    private static double ParallelRadius(double latitude) =>
        EquatorialRadius * Math.Cos(latitude) / Math.Sqrt(1 - (EccentricitySquared * Math.Pow(Math.Sin(latitude), 2)));
}
