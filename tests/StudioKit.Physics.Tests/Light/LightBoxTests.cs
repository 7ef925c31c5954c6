using StudioKit.Physics.Light;
using StudioKit.Physics.Light.Lobes;
using StudioKit.Physics.Light.Obstacles;
using StudioKit.Physics.Light.Solving;
using UnitsNet;

namespace StudioKit.Physics.Tests.Light;

/// <summary>A kept box must give what a fresh solve gives, to the last bit, whatever was moved since it was made.</summary>
public sealed class LightBoxTests
{
    private static readonly PanelGrid Grid = new(6, 5);

    private static readonly LightSurround[] Surrounds = [Studio.WhiteSkirts, new() { FloorReflectance = 0.3 }, Studio.BlackGround];

    private static readonly Gen<LightSurround> AnySurround = Gen.Int[0, Surrounds.Length - 1].Select(i => Surrounds[i]);

    private static readonly Gen<Position> AnyPlace =
        Gen.Select(Gen.Double[-0.28, 0.28], Gen.Double[-0.2, 0.2], Gen.Double[0.02, 0.48]).Select((x, y, z) => new Position(x, y, z));

    private static readonly Gen<Obstacle> AnyPipe = Gen.Select(AnyPlace, AnyPlace, Gen.Double[0.01, 0.05])
        .Select((start, end, diameter) => (Obstacle)new PipeObstacle(start, end, Length.FromMeters(diameter)));

    private static readonly Gen<Emitter> AnyFlash =
        from x in Gen.Double[-0.15, 0.15]
        from y in Gen.Double[-0.1, 0.1]
        from z in Gen.Double[0.12, 0.25]
        from intensity in Gen.Double[0.5, 5]
        from exponent in Gen.Double[1, 12]
        from hasBody in Gen.Bool
        let flash = Studio.Flash(x, y, z, intensity, exponent)
        select hasBody ? flash.WithBody(Length.FromMillimeters(90)) : flash;

    [Fact]
    public void A_kept_box_lights_moved_flashes_exactly_as_a_fresh_solve_does() =>
        Gen.Select(AnySurround, AnyPipe.Array[0, 4], AnyFlash.Array[1, 2], AnyFlash.Array[1, 2]).Sample(
            (surround, pipes, before, after) =>
            {
                var framed = surround with { Frame = [.. pipes] };
                var box = LightBox.Prepare(Studio.Panel(), framed, Grid);
                box.Illuminate(before);

                return IsSame(box.Illuminate(after), LightSolver.Solve(Studio.Scene(Studio.Panel(), framed, after), Grid));
            },
            iter: 20);

    [Fact]
    public void A_box_with_moved_pipes_lights_exactly_as_a_fresh_one_does() =>
        Gen.Select(AnySurround, AnyPipe.Array[1, 4], AnyPipe.Array[1, 3], AnyFlash).Sample(
            (surround, stay, move, flash) =>
            {
                var box = LightBox.Prepare(Studio.Panel(), surround with { Frame = [.. stay, .. move.Take(1)] }, Grid);
                Obstacle[] frame = [.. move.Skip(1), .. stay];

                var fresh = LightSolver.Solve(Studio.Scene(Studio.Panel(), surround with { Frame = [.. frame] }, flash), Grid);
                return IsSame(box.WithFrame(frame).Illuminate([flash]), fresh);
            },
            iter: 20);

    /// <summary>Two routes to one scene: a black box shades the same whether it is called a flash's body or a part of the frame.</summary>
    [Fact]
    public void A_flashs_body_shades_as_the_same_box_in_the_frame_does() =>
        Gen.Select(AnySurround, AnyPipe.Array[0, 3], AnyFlash).Sample(
            (surround, pipes, flash) =>
            {
                var bodied = flash.WithBody(Length.FromMillimeters(80));
                var asBody = LightSolver.Solve(Studio.Scene(Studio.Panel(), surround with { Frame = [.. pipes] }, bodied), Grid);
                var framed = surround with { Frame = [bodied.Body!, .. pipes] };
                return IsSame(asBody, LightSolver.Solve(Studio.Scene(Studio.Panel(), framed, bodied with { Body = null }), Grid));
            },
            iter: 10);

    [Fact]
    public void Another_power_scales_the_map_exactly_as_a_fresh_solve_would() =>
        Gen.Select(AnySurround, AnyFlash.Array[1, 3], Gen.Double[0, 20].Array[3]).Sample(
            (surround, flashes, intensities) =>
            {
                var others = flashes.Zip(intensities, (flash, intensity) => flash with { AxialIntensityTime = intensity }).ToArray();
                var map = LightBox.Prepare(Studio.Panel(), surround, Grid).Illuminate(flashes);

                return IsSame(
                    map.AtIntensities([.. others.Select(flash => flash.AxialIntensityTime)]),
                    LightSolver.Solve(Studio.Scene(Studio.Panel(), surround, others), Grid));
            },
            iter: 20);

    /// <summary>Reciprocity: what stands between two patches stands between them whichever sends.</summary>
    [Fact]
    public void An_obstacle_blocks_light_both_ways()
    {
        var mesh = new PatchMesh(Studio.Panel(), Studio.WhiteSkirts, 6);
        var stride = VectorMath.PaddedRow(mesh.Patches.Length);
        AnyPipe.Sample(pipe =>
        {
            var blocked = new ShadowRays(mesh, new ReceiverSet([])).Of(pipe).Exchange.ToHashSet();
            return blocked.All(place => blocked.Contains((place % stride * stride) + (place / stride)));
        });
    }

    [Fact]
    public void One_box_serves_many_threads_at_once()
    {
        var box = LightBox.Prepare(Studio.Panel(), Studio.WhiteSkirts, Grid);
        Emitter[] flashes = [.. Enumerable.Range(0, 8).Select(i => Studio.Flash(x: (0.03 * i) - 0.1, z: 0.15).WithBody(Length.FromMillimeters(100)))];
        var alone = flashes.Select(flash => box.Illuminate([flash])).ToArray();

        var together = flashes.AsParallel().AsOrdered().Select(flash => box.Illuminate([flash])).ToArray();

        together.Zip(alone).Should().AllSatisfy(pair => IsSame(pair.First, pair.Second).Should().BeTrue("threads share nothing that changes"));
    }

    [Fact]
    public void Scenes_of_equal_parts_are_equal_and_may_key_what_is_kept()
    {
        static LightScene Scene(double pipeX) => Studio.Scene(
            Studio.Panel(),
            Studio.WhiteSkirts with { Frame = [new PipeObstacle(new(pipeX, 0, 0.1), new(0.2, 0, 0.1), Length.FromMillimeters(20))] },
            Studio.Flash().WithBody(Length.FromMillimeters(50)) with
            {
                Lobe = new TabulatedLobe([Angle.Zero, Angle.FromDegrees(90)], [Angle.Zero], [1, 0.2]),
            });

        Scene(-0.2).Should().Be(Scene(-0.2));
        Scene(-0.2).GetHashCode().Should().Be(Scene(-0.2).GetHashCode());
        Scene(-0.2).Should().NotBe(Scene(-0.21), "one pipe lies elsewhere");
    }

    [Fact]
    public void As_many_intensities_as_flashes_are_asked_for()
    {
        var map = LightSolver.Solve(Studio.Scene(Studio.Panel(), Studio.BlackGround, Studio.Flash()), Grid);

        map.Invoking(it => it.AtIntensities([1, 2])).Should().Throw<ArgumentException>().WithParameterName("axialIntensityTimes");
        map.Invoking(it => it.AtIntensities([-1])).Should().Throw<ArgumentOutOfRangeException>().WithParameterName("axialIntensityTimes");
    }

    private static bool IsSame(LightMap one, LightMap other) =>
        Direct(one).SequenceEqual(Direct(other)) && Studio.All(one).SequenceEqual(Studio.All(other)) && one.Balance == other.Balance;

    private static double[] Direct(LightMap map) => Points((column, row) => map.DirectExposure(column, row));

    private static double[] Points(Func<int, int, double> value) =>
        [.. from row in Enumerable.Range(0, Grid.Rows) from column in Enumerable.Range(0, Grid.Columns) select value(column, row)];
}
