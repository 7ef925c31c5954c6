using StudioKit.Physics.Light;
using StudioKit.Physics.Light.Obstacles;
using StudioKit.Physics.Light.Solving;
using UnitsNet;

namespace StudioKit.Physics.Tests.Light;

/// <summary>What any light simulation must obey, whatever its numbers: closed forms, conservation, reciprocity, symmetry.</summary>
public sealed class LightLawsTests
{
    private static readonly PanelGrid Coarse = new(5, 4);

    private static readonly ReceiverSet NoPoints = new([]);

    private static readonly LightBox Skirted = LightBox.Prepare(Studio.Panel(), Studio.WhiteSkirts, Coarse);
    private static readonly LightBox Open = LightBox.Prepare(Studio.Panel(), Studio.BlackGround, Coarse);

    private static readonly Gen<Emitter> AnyFlash =
        from x in Gen.Double[-0.15, 0.15]
        from y in Gen.Double[-0.1, 0.1]
        from z in Gen.Double[0.05, 0.25]
        from intensity in Gen.Double[0.5, 5]
        from exponent in Gen.Double[1, 12]
        select Studio.Flash(x, y, z, intensity, exponent);

    /// <summary>Integrating-sphere relation: with one reflectance ρ everywhere, mean exposure = Φ/(A·(1 − ρ)), exactly, by conservation of energy.</summary>
    [Theory]
    [InlineData(0.2)]
    [InlineData(0.5)]
    [InlineData(0.8)]
    public void A_closed_diffuse_box_obeys_the_integrating_sphere_relation(double reflectance)
    {
        var panel = Studio.Panel(0.5, 0.5, 0.5, reflectance);
        var surround = new LightSurround { SkirtReflectance = reflectance, FloorReflectance = reflectance };
        var emitter = Studio.Flash(exponent: 3);

        var balance = LightSolver.Solve(Studio.Scene(panel, surround, emitter), Coarse).Balance!;

        var absorbed = balance.PanelAbsorbed + balance.SkirtsAbsorbed + balance.FloorAbsorbed;
        var meanExposure = absorbed / (1 - reflectance) / (6 * 0.25);
        var sphere = emitter.FluxTime / (6 * 0.25 * (1 - reflectance));
        meanExposure.Should().BeApproximately(sphere, 0.001 * sphere);
    }

    /// <summary>Nearly uniform walls of high reflectance: every place comes near the sphere's mean, as in its range of validity.</summary>
    [Fact]
    public void Well_mixed_light_brings_the_panel_near_the_integrating_spheres_mean()
    {
        const double Reflectance = 0.95;
        var panel = Studio.Panel(0.5, 0.5, 0.5, Reflectance);
        var surround = new LightSurround { SkirtReflectance = Reflectance, FloorReflectance = Reflectance };
        var emitter = Studio.Flash(z: 0.02);

        var mean = Studio.All(LightSolver.Solve(Studio.Scene(panel, surround, emitter), new PanelGrid(10, 10))).Average();

        // First bounces make up 1/20 of the light and are uneven; hence 10 %.
        var sphere = emitter.FluxTime / (1.5 * (1 - Reflectance));
        mean.Should().BeApproximately(sphere, 0.1 * sphere);
    }

    [Fact]
    public void In_a_closed_box_all_light_is_accounted_for() =>
        AnyFlash.Sample(
            flash =>
            {
                var balance = Skirted.Illuminate([flash]).Balance!;
                return Math.Abs(balance.Rest) < 0.001 * balance.Emitted;
            },
            iter: 40);

    /// <summary>A window level with the middle of the skirts' patches: its light begins half way up each of them.</summary>
    [Theory]
    [InlineData(0.15625, 1)]
    [InlineData(0.155, 1)]
    [InlineData(0.155, 1.5)]
    [InlineData(0.09375, 1)]
    [InlineData(0.25, 1)]
    public void In_a_closed_box_light_that_only_grazes_the_skirts_is_accounted_for(double height, double exponent)
    {
        var balance = Skirted.Illuminate([Studio.Flash(z: height, exponent: exponent)]).Balance!;

        balance.Rest.Should().BeApproximately(0, 0.0005 * balance.Emitted, "walls, ground and panel take all that the flash emits");
    }

    /// <summary>White furnace: where every surface is lit just enough to make up what it absorbs, all stay equally bright.</summary>
    [Fact]
    public void A_white_furnace_is_equally_bright_everywhere()
    {
        const double Reflectance = 0.7;
        var surround = new LightSurround { SkirtReflectance = Reflectance, FloorReflectance = Reflectance };
        var box = LightBox.Prepare(Studio.Panel(reflectance: Reflectance), surround, Coarse);
        double[] direct = [.. box.Mesh!.Patches.Select(_ => 1 - Reflectance)];

        var reflectedAtPoints = box.Reflections!.Settle(direct);

        // Gauss–Seidel stops when a sweep changes less than 1e-7; what is left over is at most a few times that.
        direct.Should().AllSatisfy(exposure => exposure.Should().BeApproximately(1, 1e-6));
        reflectedAtPoints.Should().AllSatisfy(exposure => exposure.Should().BeApproximately(Reflectance, 1e-6));
    }

    [Fact]
    public void Every_patch_of_a_closed_box_sends_all_its_light_to_the_others()
    {
        var mesh = new PatchMesh(Studio.Panel(), Studio.WhiteSkirts, 6);
        var factors = FormFactors.Of(mesh, Studio.Panel(), NoPoints).Exchange;
        var stride = factors.Length / mesh.Patches.Length;

        for (var i = 0; i < mesh.Patches.Length; i++)
        {
            factors.AsSpan(i * stride, stride).ToArray().Sum().Should().BeApproximately(1, 1e-9);
        }
    }

    [Fact]
    public void Every_point_of_a_closed_boxs_lid_sees_floor_and_skirts_and_nothing_else()
    {
        var points = new ReceiverSet([(new Position(0.1, -0.05, 0.5), -Direction.Up), (new Position(-0.29, 0.2, 0.5), -Direction.Up)]);
        var mesh = new PatchMesh(Studio.Panel(), Studio.WhiteSkirts, 6);

        var factors = FormFactors.Of(mesh, Studio.Panel(), points).Gather;

        factors.Chunk(factors.Length / 2).Should().AllSatisfy(row => row.Sum().Should().BeApproximately(1, 1e-9));
    }

    /// <summary>Closed forms against Lambert's polygon sum, which knows nothing of lattices or corners.</summary>
    [Fact]
    public void The_lattices_factors_agree_with_Lamberts_polygon_sum()
    {
        var mesh = new PatchMesh(Studio.Panel(), Studio.WhiteSkirts, 4);
        var stride = VectorMath.PaddedRow(mesh.Patches.Length);
        var closed = FormFactors.Of(mesh, Studio.Panel(), NoPoints).Exchange;
        var summed = new double[closed.Length];

        PolygonExchange.Fill(mesh.Patches, summed, stride);

        // Patches that share an edge are the hard case for nine points; 0.006 is a fortieth of the largest factor there.
        closed.Zip(summed).Should().AllSatisfy(pair => pair.Second.Should().BeApproximately(pair.First, 0.006));
    }

    [Fact]
    public void Exchange_between_patches_is_reciprocal()
    {
        var mesh = new PatchMesh(Studio.Panel(), Studio.WhiteSkirts, 5);
        var factors = FormFactors.Of(mesh, Studio.Panel(), NoPoints).Exchange;
        var stride = factors.Length / mesh.Patches.Length;

        Gen.Int[0, mesh.Patches.Length - 1].Select(Gen.Int[0, mesh.Patches.Length - 1]).Sample((i, j) =>
            Math.Abs((mesh.Patches[i].Area * factors[(i * stride) + j]) - (mesh.Patches[j].Area * factors[(j * stride) + i])) < 1e-12);
    }

    /// <summary>A panel nine patches wide and seven deep has a patch right under its middle, whose middle is that of the window.</summary>
    [Fact]
    public void A_window_that_lies_on_the_ground_lights_the_sheet_and_not_itself()
    {
        var (panel, surround) = (Studio.Panel(0.16, 0.13, 0.5), new LightSurround { FloorReflectance = 0.3 });

        var lying = LightSolver.Solve(Studio.Scene(panel, surround, Studio.Flash(z: 0)), new PanelGrid(6, 5));
        var raised = LightSolver.Solve(Studio.Scene(panel, surround, Studio.Flash(z: 1e-6)), new PanelGrid(6, 5));

        Studio.All(lying).Zip(Studio.All(raised)).Should().AllSatisfy(pair => pair.First.Should().BeApproximately(pair.Second, 1e-4 * pair.Second));
    }

    [Fact]
    public void Two_flashes_give_the_sum_of_what_each_gives() =>
        AnyFlash.Select(AnyFlash).Sample(
            (one, other) =>
            {
                var both = Studio.All(Skirted.Illuminate([one, other]));
                var sum = Studio.All(Skirted.Illuminate([one])).Zip(Studio.All(Skirted.Illuminate([other])), (a, b) => a + b);
                return both.Zip(sum).All(pair => Math.Abs(pair.First - pair.Second) < 1e-5 * pair.First);
            },
            iter: 8);

    [Fact]
    public void Exposure_is_proportional_to_the_flashs_intensity() =>
        AnyFlash.Select(Gen.Double[0.01, 100]).Sample(
            (flash, factor) =>
            {
                var one = Studio.All(Skirted.Illuminate([flash]));
                var many = Studio.All(Skirted.Illuminate([flash with { AxialIntensityTime = flash.AxialIntensityTime * factor }]));
                return one.Zip(many).All(pair => Math.Abs((pair.First * factor) - pair.Second) < 1e-5 * pair.Second);
            },
            iter: 8);

    [Fact]
    public void Moving_the_flash_to_the_other_side_mirrors_the_map() =>
        AnyFlash.Sample(
            flash =>
            {
                var here = Skirted.Illuminate([flash]);
                var mirrored = Skirted.Illuminate([flash with { Centre = flash.Centre with { X = -flash.Centre.X } }]);
                return Enumerable.Range(0, Coarse.Count).All(i =>
                {
                    var (row, column) = Math.DivRem(i, Coarse.Columns);
                    var expected = here.Exposure(Coarse.Columns - 1 - column, row);
                    return Math.Abs(mirrored.Exposure(column, row) - expected) < 1e-5 * expected;
                });
            },
            iter: 8);

    /// <summary>Inverse square and cosine laws: H = I₀·h²/(h² + r²)² for a Lambertian point under a plane.</summary>
    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    public void Far_from_a_small_head_light_follows_the_inverse_square_and_cosine_laws(int column)
    {
        var panel = Studio.Panel(2, 2, 2.1, 0);
        var map = LightSolver.Solve(Studio.Scene(panel, Studio.BlackGround, Studio.Flash(z: 0.1, intensity: 7, size: 0.02)), new PanelGrid(5, 5));

        var radius = Math.Abs(column - 2) * 0.4;
        var square = 4 + (radius * radius);
        map.Exposure(column, 2).Should().BeApproximately(7 * 4 / (square * square), 1e-4 * 7 / 4);
    }

    /// <summary>The five-times rule: a window nearer than five times its size gives less than the guide number promises.</summary>
    /// <remarks>Uniform Lambertian square on its axis, Howell configuration B-3: I₀·F·π/A against I₀/d².</remarks>
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(5)]
    public void A_wide_window_gives_what_the_rectangles_form_factor_says(double sizesAway)
    {
        const double Size = 0.08;
        var distance = sizesAway * Size;
        var panel = Studio.Panel(0.6, 0.6, 0.1 + distance, 0);
        var map = LightSolver.Solve(Studio.Scene(panel, Studio.BlackGround, Studio.Flash(z: 0.1, size: Size)), new PanelGrid(5, 5));

        var expected = Math.PI / (Size * Size) * FormFactor.PointToRectangle(Size, Size, distance);
        map.Exposure(2, 2).Should().BeApproximately(expected, 2e-4 * expected);
        (map.Exposure(2, 2) * distance * distance).Should().BeLessThan(1).And.BeGreaterThan(sizesAway >= 5 ? 0.98 : 0.7);
    }

    [Fact]
    public void White_skirts_never_take_light_away() =>
        AnyFlash.Sample(
            flash =>
            {
                var skirted = Studio.All(Skirted.Illuminate([flash]));
                var open = Studio.All(Open.Illuminate([flash]));
                return skirted.Zip(open).All(pair => pair.First > pair.Second);
            },
            iter: 10);

    [Fact]
    public void A_frame_member_over_the_flash_shades_the_panel_above_it()
    {
        var member = new PipeObstacle(new(-0.3, 0, 0.3), new(0.3, 0, 0.3), Length.FromMillimeters(40));
        var shaded = Studio.BlackGround with { Frame = [member] };
        var grid = new PanelGrid(5, 5);

        var with = LightSolver.Solve(Studio.Scene(Studio.Panel(), shaded, Studio.Flash(size: 0.01)), grid);
        var without = LightSolver.Solve(Studio.Scene(Studio.Panel(), Studio.BlackGround, Studio.Flash(size: 0.01)), grid);

        with.Exposure(2, 2).Should().Be(0);
        with.Exposure(2, 4).Should().Be(without.Exposure(2, 4));
    }

    [Fact]
    public void The_body_of_one_flash_shades_the_light_of_another()
    {
        var grid = new PanelGrid(5, 5);
        var low = Studio.Flash(z: 0.05, size: 0.01);
        var high = Studio.Flash(z: 0.3, intensity: 0, size: 0.1);

        var bare = LightSolver.Solve(Studio.Scene(Studio.Panel(), Studio.BlackGround, low, high), grid);
        var withBody = LightSolver.Solve(Studio.Scene(Studio.Panel(), Studio.BlackGround, low, high.WithBody(Length.FromMillimeters(60))), grid);

        withBody.Exposure(2, 2).Should().Be(0);
        withBody.Exposure(0, 0).Should().Be(bare.Exposure(0, 0));
    }

    /// <summary>A sweep of next to no length is a flat panel: the polygon route must agree with the closed forms.</summary>
    [Fact]
    public void A_barely_swept_panel_is_lit_as_a_flat_one()
    {
        var flat = Studio.Panel();
        var swept = flat with { SweepRadius = Length.FromMeters(50), SweptLength = Length.FromMeters(0.2) };

        var one = Studio.All(LightSolver.Solve(Studio.Scene(flat, Studio.WhiteSkirts, Studio.Flash()), Coarse));
        var other = Studio.All(LightSolver.Solve(Studio.Scene(swept, Studio.WhiteSkirts, Studio.Flash()), Coarse));

        one.Zip(other).Should().AllSatisfy(pair => pair.Second.Should().BeApproximately(pair.First, 0.01 * pair.First));
    }

    [Fact]
    public void Light_falls_off_up_the_sweep()
    {
        var swept = Studio.Panel(0.6, 0.9, 0.4) with { SweepRadius = Length.FromMeters(0.5), SweptLength = Length.FromMeters(0.4) };

        var map = LightSolver.Solve(Studio.Scene(swept, Studio.WhiteSkirts, Studio.Flash()), new PanelGrid(3, 12));

        map.Exposure(1, 11).Should().BeLessThan(map.Exposure(1, 8)).And.BePositive();
    }

    /// <summary>Second route for open ground: the light's way panel, ground, panel as a plain double sum of cos·cos/(π·d²) over small cells.</summary>
    [Fact]
    public void Over_open_ground_the_second_bounce_agrees_with_a_plain_double_sum()
    {
        const double Share = 0.1;
        var panel = Studio.Panel(0.6, 0.6, 0.5, Share);
        var surround = new LightSurround { FloorReflectance = Share, OpenFloorMargin = Length.FromMeters(0.3) };
        var flash = Studio.Flash(z: 0.1);

        var map = LightSolver.Solve(Studio.Scene(panel, surround, flash), new PanelGrid(5, 5));

        var direct = LightSolver.Solve(Studio.Scene(panel, Studio.BlackGround, flash), new PanelGrid(24, 24));
        double ToGround(double x, double y) => Share * Sum(0.6, 24, (u, v, i, j) => direct.Exposure(i, j) * Kernel(x - u, y - v)) / Math.PI;
        double[] ground = [.. from j in Enumerable.Range(0, 24) from i in Enumerable.Range(0, 24) select ToGround(Middle(i, 1.2, 24), Middle(j, 1.2, 24))];
        var expected = Share * Sum(1.2, 24, (u, v, i, j) => ground[(j * 24) + i] * Kernel(u - 0.12, v + 0.24)) / Math.PI;

        // Two further bounces add a share of 0.1·0.1·F², well under 1 %, and the patches are constant; hence 2 %.
        (map.Exposure(3, 0) - map.DirectExposure(3, 0)).Should().BeApproximately(expected, 0.02 * expected);
    }

    [Fact]
    public void Black_frame_members_take_reflected_light_too()
    {
        var member = new PipeObstacle(new(-0.25, -0.2, 0.25), new(-0.25, 0.2, 0.25), Length.FromMillimeters(60));
        var flash = Studio.Flash(x: 0.1, exponent: 12);

        var with = LightSolver.Solve(Studio.Scene(Studio.Panel(), Studio.WhiteSkirts with { Frame = [member] }, flash), Coarse);
        var without = LightSolver.Solve(Studio.Scene(Studio.Panel(), Studio.WhiteSkirts, flash), Coarse);

        Reflected(with).Zip(Reflected(without)).Should().AllSatisfy(pair => pair.First.Should().BeLessThan(pair.Second));
    }

    [Fact]
    public void A_small_panel_over_wide_ground_stays_within_its_means()
    {
        var panel = Studio.Panel(0.1, 0.1, 1);

        var map = LightSolver.Solve(Studio.Scene(panel, new LightSurround { FloorReflectance = 0.5 }, Studio.Flash()), Coarse);

        Studio.All(map).Should().AllSatisfy(exposure => exposure.Should().BePositive());
    }

    private static IEnumerable<double> Reflected(LightMap map) =>
        from row in Enumerable.Range(0, map.Grid.Rows)
        from column in Enumerable.Range(0, map.Grid.Columns)
        select map.Exposure(column, row) - map.DirectExposure(column, row);

    // Two parallel planes 0.5 m apart: both cosines are 0.5/d.
    private static double Kernel(double x, double y) => 0.25 / Math.Pow(0.25 + (x * x) + (y * y), 2);

    private static double Middle(int cell, double side, int cells) => ((cell + 0.5) / cells * side) - (side / 2);

    private static double Sum(double side, int cells, Func<double, double, int, int, double> value)
    {
        var sum = 0.0;
        for (var i = 0; i < cells; i++)
        {
            for (var j = 0; j < cells; j++)
            {
                sum += value(Middle(i, side, cells), Middle(j, side, cells), i, j);
            }
        }

        return sum * side * side / (cells * cells);
    }
}
