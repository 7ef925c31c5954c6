using StudioKit.Physics.Light;
using StudioKit.Physics.Light.Lobes;
using StudioKit.Physics.Light.Obstacles;
using StudioKit.Physics.Light.Solving;
using UnitsNet;

namespace StudioKit.Physics.Tests.Light;

/// <summary>Rays that are seen at a glance to pass an obstacle by are those that pass it by: the independent route asks the obstacle ray by ray.</summary>
public sealed class ShadowRaysTests
{
    private static readonly Gen<Position> AnyPlace =
        Gen.Select(Gen.Double[-0.6, 0.6], Gen.Double[-0.5, 0.5], Gen.Double[0, 0.6], (x, y, z) => new Position(x, y, z));

    // A box has to be aimed somewhere: drawn numbers are round, or next to nothing, often enough for two places to be one.
    private static readonly Gen<(Position From, Position To)> TwoPlaces = Gen.Select(AnyPlace, AnyPlace).Where((from, to) => from.DistanceTo(to) > 1e-6);

    private static readonly Gen<Obstacle> AnyPipe = Gen.Select(AnyPlace, AnyPlace, Gen.Double[0.001, 0.1], Gen.Int[0, 3], (start, end, diameter, lie) =>
        (Obstacle)new PipeObstacle(start, Lying(start, end, lie), Length.FromMeters(diameter)));

    private static readonly Gen<Obstacle> AnyBox = Gen.Select(TwoPlaces, Gen.Double[0.01, 0.3], (places, size) =>
        (Obstacle)new BoxObstacle(places.From, Orientation.AimedAt(places.From, places.To), Length.FromMeters(size), Length.FromMeters(size / 2), Length.FromMeters(size / 3)));

    private static readonly Gen<Obstacle> AnyBarrel = Gen.Select(TwoPlaces, Gen.Double[0.01, 0.2], (ends, diameter) =>
        (Obstacle)new BarrelObstacle(ends.From, ends.To, Length.FromMeters(diameter)));

    private static readonly Gen<Obstacle> AnyObstacle = Gen.OneOf(AnyPipe, AnyBox);

    /// <summary>Ten thousand places of the window, each ray asked of the pipe by itself.</summary>
    /// <remarks>Tolerance: 2.5 % of what an open window gives: two pipes have four slanting edges of shade, each of which passes a lattice's points a few at a time.</remarks>
    [Fact]
    public void A_pipe_that_hides_a_part_of_a_window_takes_the_light_of_that_part_alone() => AnyPipe.Array[1, 2].Sample(
        pipes =>
        {
            const int Side = 99;
            var flash = Studio.Flash(z: 0.02, size: 0.15);
            (Position Place, Direction Normal)[] points = [.. from x in Enumerable.Range(-2, 5) from y in Enumerable.Range(-2, 4) select (new Position(x * 0.13, y * 0.11, 0.6), -Direction.Up)];

            double[] exposure = [.. Exposure(new DirectLight(flash, pipes, 0.58), points)];

            for (var i = 0; i < points.Length; i++)
            {
                var parts = (from u in Enumerable.Range(0, Side)
                             from v in Enumerable.Range(0, Side)
                             let spot = new Position((((u + 0.5) / Side) - 0.5) * 0.15, (((v + 0.5) / Side) - 0.5) * 0.15, 0.02)
                             select (Light: 0.58 * 0.58 / Math.Pow(spot.SquareTo(points[i].Place), 2) / (Side * Side), IsOpen: !pipes.Any(pipe => pipe.Blocks(spot, points[i].Place)))).ToList();
                exposure[i].Should().BeApproximately(parts.Where(part => part.IsOpen).Sum(part => part.Light), 0.025 * parts.Sum(part => part.Light));
            }
        },
        iter: 20);

    [Fact]
    public void A_glance_hides_no_ray_that_meets_the_obstacle_and_lets_none_through_that_does_not() =>
        Gen.Select(AnyObstacle, AnyPlace.Array[40]).Sample((obstacle, places) =>
        {
            var sighted = new SightedPlaces(obstacle, places);
            return Pairs(places.Length).All(pair =>
                obstacle.Blocks(places[pair.I], places[pair.J]) == ((sighted.Sides[pair.I] & sighted.Sides[pair.J]) == 0 && sighted.IsBetween(pair.I, pair.J)));
        });

    [Fact]
    public void Rays_that_are_asked_of_an_obstacle_together_are_answered_as_one_by_one() =>
        Gen.Select(Gen.OneOf(AnyObstacle, AnyBarrel), AnyPlace, AnyPlace.Array[16]).Sample((obstacle, from, places) =>
        {
            var receivers = new ReceiverSet([.. places.Append(from).Select(place => (place, Direction.Up))]);
            for (var start = 0; start < receivers.PaddedCount; start += VectorMath.Lanes)
            {
                var blocked = obstacle.Blocks(from, receivers.Places(start));
                for (var lane = 0; lane < VectorMath.Lanes; lane++)
                {
                    (blocked[lane] != 0).Should().Be(obstacle.Blocks(from, receivers.Place(start + lane)));
                }
            }
        });

    /// <summary>A receiver by itself has no neighbours for whose sake an obstacle, or the light, could be passed over.</summary>
    [Fact]
    public void A_receiver_among_others_gets_what_it_gets_by_itself() =>
        Gen.Select(Gen.OneOf(AnyObstacle, AnyBarrel).Array[0, 12], TwoPlaces, Gen.Bool.Select(isBeam => isBeam ? (LightLobe)new CosineLobe(3, 3) : new DomeLobe()), AnyPlace, Gen.Double[0.01, 1], Gen.Double[0, 1].Array[105])
            .Sample((obstacles, aimed, lobe, corner, size, shares) =>
            {
                var flash = Studio.Flash() with { Centre = aimed.From, Orientation = Orientation.AimedAt(aimed.From, aimed.To), Lobe = lobe };
                // Clouds of any size, so that some lie wholly beside, behind or in the shadow of something.
                (Position, Direction)[] points = [.. shares.Chunk(3).Select(at => (new Position(corner.X + (size * at[0]), corner.Y + (size * at[1]), corner.Z + (size * at[2])), Direction.From(aimed.To, aimed.From)))];
                var light = new DirectLight(flash, obstacles, 0.5);

                Exposure(light, points).Should().Equal(points.SelectMany(point => Exposure(light, [point])));
            },
            iter: 50);

    [Fact]
    public void A_ray_along_a_pipe_or_touching_its_round_end_is_judged_by_the_pipe_itself()
    {
        var pipe = new PipeObstacle(new(0, 0, 0.1), new(0, 0, 0.4), Length.FromMillimeters(20));
        Position[] places = [new(0, 0, 0), new(0, 0, 0.5), new(0.0099999, 0, 0), new(0.0099999, 0, 0.5), new(0.0100001, 0, 0), new(0.0100001, 0, 0.5), new(-0.3, 0, 0.41), new(0.3, 0, 0.4099)];
        var sighted = new SightedPlaces(pipe, places);
        Pairs(places.Length).Should().AllSatisfy(pair => pipe.Blocks(places[pair.I], places[pair.J])
            .Should().Be((sighted.Sides[pair.I] & sighted.Sides[pair.J]) == 0 && sighted.IsBetween(pair.I, pair.J)));
    }

    // Seven patches a side leave rows that do not fill whole words.
    [Theory]
    [InlineData(3)]
    [InlineData(7)]
    public void The_shadow_of_an_obstacle_is_what_its_rays_say_one_by_one(int perSide)
    {
        var panel = Studio.Panel();
        var mesh = new PatchMesh(panel, Studio.WhiteSkirts, perSide);
        var points = LightBox.GridPoints(panel, new PanelGrid(6, 5));
        var rays = new ShadowRays(mesh, points);
        AnyObstacle.Sample(
            obstacle =>
            {
                var shadow = rays.Of(obstacle);
                shadow.Exchange.Order().Should().Equal(Exchange(mesh, obstacle).Order());
                shadow.Gather.Order().Should().Equal(Gather(mesh, points, obstacle).Order());
            },
            iter: 30);
    }

    private static IEnumerable<double> Exposure(DirectLight light, (Position Place, Direction Normal)[] points)
    {
        var receivers = new ReceiverSet(points);
        var exposure = new double[receivers.PaddedCount];
        light.AddTo(receivers, exposure);
        return exposure.Take(points.Length);
    }

    private static IEnumerable<int> Exchange(PatchMesh mesh, Obstacle obstacle)
    {
        var stride = VectorMath.PaddedRow(mesh.Patches.Length);
        return from pair in Pairs(mesh.Patches.Length)
               where pair.I < pair.J && obstacle.Blocks(At(mesh, pair.I, pair.I + pair.J), At(mesh, pair.J, pair.I + (3 * pair.J)))
               from place in new[] { (pair.I * stride) + pair.J, (pair.J * stride) + pair.I }
               select place;
    }

    private static IEnumerable<int> Gather(PatchMesh mesh, ReceiverSet points, Obstacle obstacle) =>
        from i in Enumerable.Range(0, points.Count)
        from j in Enumerable.Range(0, mesh.SenderCount)
        where obstacle.Blocks(points.Place(i), At(mesh, j, i + j))
        select (i * VectorMath.PaddedRow(mesh.SenderCount)) + j;

    private static Position At(PatchMesh mesh, int patch, int turn) => (turn % 4) switch
    {
        0 => mesh.Patches[patch].At(0.25, 0.25),
        1 => mesh.Patches[patch].At(0.75, 0.75),
        2 => mesh.Patches[patch].At(0.75, 0.25),
        _ => mesh.Patches[patch].At(0.25, 0.75),
    };

    private static IEnumerable<(int I, int J)> Pairs(int count) => from i in Enumerable.Range(0, count) from j in Enumerable.Range(0, count) where i != j select (i, j);

    // Frames have pipes along the axes, upright and of no length too.
    private static Position Lying(Position start, Position end, int lie) => lie switch
    {
        0 => start with { Z = end.Z },
        1 => start with { X = end.X },
        2 => start,
        _ => end,
    };
}
