using StudioKit.Field.Log;
using StudioKit.Field.Log.Release;
using StudioKit.Field.Tests.Log.Archive;

namespace StudioKit.Field.Tests.Log.Release;

public sealed class PlaceCellTests
{
    private static readonly Gen<(decimal Step, double Latitude, double Longitude)> AnyCorner =
        Gen.Select(Gen.Bool, Gen.Int[-90, 89], Gen.Int[-180, 179], Gen.Int[0, 99], Gen.Int[0, 99], (fine, latitude, longitude, north, east) =>
            fine ? (0.01m, (double)(latitude + (north * 0.01m)), (double)(longitude + (east * 0.01m)))
                : (0.1m, (double)(latitude + (north / 10 * 0.1m)), (double)(longitude + (east / 10 * 0.1m))));

    /// <summary>
    /// Chapman and Wieczorek (2020), table of uncertainties by coordinate precision: 15,691 m for 0.1° at the equator and 1,570 m for 0.01° as other
    /// guides quote it; 14,697 m at 30° and 12,461 m at 60° from memory. They give the whole diagonal of a cell, for precision may mean cutting off.
    /// A cell that begins at the latitude is up to 0.1° nearer the pole, which is worth 0.1 % at 60°.
    /// </summary>
    [Theory]
    [InlineData(0, 0.1, 15691)]
    [InlineData(0, 0.01, 1570)]
    [InlineData(30, 0.1, 14697)]
    [InlineData(60, 0.1, 12461)]
    public void Half_a_cells_diagonal_is_half_of_what_the_georeferencing_guide_gives_for_its_precision(double latitude, double step, double published) =>
        (2 * PlaceCell.Of(latitude, 10, null, (decimal)step)!.HalfDiagonal).Should().BeApproximately(published, 0.0015 * published);

    [Fact]
    public void Any_two_places_of_one_cell_publish_the_same_bytes() =>
        Gen.Select(AnyCorner, Share, Share, Share, Share).Select(Gen.Double[0, 100]).Sample(
            (places, uncertainty) =>
            {
                var ((step, latitude, longitude), north1, east1, north2, east2) = places;
                var sensitivity = step == 0.1m ? PlaceSensitivity.Tenth : PlaceSensitivity.Hundredth;
                var width = (double)step;
                return Published(latitude + (north1 * width), longitude + (east1 * width), null, sensitivity)
                    == Published(latitude + (north2 * width), longitude + (east2 * width), uncertainty * width, sensitivity);
            },
            iter: RandomFiles.Count);

    [Fact]
    public void The_true_place_always_lies_within_the_stated_uncertainty_of_the_published_one() =>
        Gen.Select(Gen.Double[-90, 90], Gen.Double[-180, 180], Gen.Double[0, 20_000], Gen.Bool).Sample((latitude, longitude, uncertainty, fine) =>
        {
            var cell = PlaceCell.Of(latitude, longitude, uncertainty, fine ? 0.01m : 0.1m)!;
            return Distance(latitude, longitude, (double)cell.Latitude, (double)cell.Longitude) + uncertainty <= cell.Radius;
        });

    [Fact]
    public void What_was_told_by_a_cell_is_told_by_the_same_again() =>
        Gen.Select(Gen.Double[-90, 90], Gen.Double[-180, 180], Gen.Bool).Sample((latitude, longitude, fine) =>
        {
            var step = fine ? 0.01m : 0.1m;
            var cell = PlaceCell.Of(latitude, longitude, 30, step)!;
            return PlaceCell.Of((double)cell.Latitude, (double)cell.Longitude, cell.Radius, step) == cell;
        });

    [Theory]
    [InlineData(90, 180, 89.95, -179.95)]
    [InlineData(-90, -180, -89.95, -179.95)]
    [InlineData(52.6, -0.0, 52.65, 0.05)]
    [InlineData(-0.01, -0.01, -0.05, -0.05)]
    public void The_ends_of_the_Earth_and_the_edges_of_cells_belong_to_one_cell(double latitude, double longitude, double middleNorth, double middleEast)
    {
        var cell = PlaceCell.Of(latitude, longitude, null, 0.1m)!;

        (cell.Latitude, cell.Longitude).Should().Be(((decimal)middleNorth, (decimal)middleEast));
    }

    [Fact]
    public void A_place_known_to_no_better_than_a_country_has_no_cell() => PlaceCell.Of(52, -21, 1_000_000, 0.01m).Should().BeNull();

    [Fact]
    public void A_place_off_the_Earth_is_refused() => FluentActions.Invoking(() => PlaceCell.Of(91, 0, null, 0.1m)).Should().Throw<ArgumentOutOfRangeException>();

    // Inside the cell: its far edges belong to the next.
    private static readonly Gen<double> Share = Gen.Double[0.001, 0.999];

    private static string Published(double latitude, double longitude, double? uncertainty, PlaceSensitivity sensitivity)
    {
        var log = LogSamples.Snapshot with
        {
            Sessions = [LogSamples.Session with { Latitude = latitude, Longitude = longitude, CoordinateUncertainty = uncertainty }],
            Subjects = [LogSamples.Subject with { Sensitivity = sensitivity }],
        };
        return Written.Csv(LogRelease.Of(log));
    }

    // Lambert's formula for the spheroid of WGS 84 (a = 6,378,137 m, f = 1/298.257); it is good to some ten metres over thousands of kilometres.
    private static double Distance(double latitude1, double longitude1, double latitude2, double longitude2)
    {
        const double Degree = Math.PI / 180;
        const double Flattening = 1 / 298.257223563;
        var (b1, b2) = (Math.Atan((1 - Flattening) * Math.Tan(latitude1 * Degree)), Math.Atan((1 - Flattening) * Math.Tan(latitude2 * Degree)));
        var (p, q) = ((b1 + b2) / 2, (b2 - b1) / 2);
        var h = Math.Pow(Math.Sin(q), 2) + (Math.Cos(b1) * Math.Cos(b2) * Math.Pow(Math.Sin((longitude2 - longitude1) * Degree / 2), 2));
        var angle = 2 * Math.Asin(Math.Sqrt(h));
        var x = (angle - Math.Sin(angle)) * Math.Pow(Math.Sin(p) * Math.Cos(q) / Math.Cos(angle / 2), 2);
        var y = h == 0 ? 0 : (angle + Math.Sin(angle)) * Math.Pow(Math.Cos(p) * Math.Sin(q), 2) / h;
        return 6_378_137 * (angle - (Flattening / 2 * (x + y)));
    }
}
