using StudioKit.Physics.Exposure;
using StudioKit.Physics.Exposure.Flashes;
using StudioKit.Physics.Light;
using StudioKit.Physics.Light.Lobes;
using StudioKit.Physics.Light.Views;
using UnitsNet;

namespace StudioKit.Physics.Tests.Light;

public sealed class CameraViewTests
{
    private static readonly PanelGrid Grid = new(24, 24);

    [Fact]
    public void Looking_straight_down_the_patch_is_the_field_itself()
    {
        var patch = VisiblePatch.Of(Studio.Panel(), View(90));

        patch.OnPanel.Should().Be(1);
        patch.Outline.Max(place => place.Across.Millimeters).Should().BeApproximately(18, 1e-9);
        patch.Outline.Min(place => place.AlongSheet.Millimeters).Should().BeApproximately(225 - 12, 1e-9);
        patch.Outline.Max(place => place.AlongSheet.Millimeters).Should().BeApproximately(225 + 12, 1e-9);
    }

    /// <summary>By hand: pupil 300·(cos 30°, sin 30°) before and over the foot; top ray at 30° − atan(12/300) under the horizontal.</summary>
    [Fact]
    public void A_low_pitch_stretches_the_patch_away_from_the_camera()
    {
        var patch = VisiblePatch.Of(Studio.Panel(0.6, 2), View(30));

        var half = Math.Atan2(12, 300);
        var rise = 300 * Math.Sin(Math.PI / 6);
        var run = 300 * Math.Cos(Math.PI / 6);
        patch.Outline.Max(place => place.AlongSheet.Millimeters).Should().BeApproximately(1000 - run + (rise / Math.Tan((Math.PI / 6) - half)), 1e-6);
        patch.Outline.Min(place => place.AlongSheet.Millimeters).Should().BeApproximately(1000 - run + (rise / Math.Tan((Math.PI / 6) + half)), 1e-6);
    }

    /// <summary>The sight line goes on from a raised point by height/tan(pitch) before it meets the sheet.</summary>
    [Fact]
    public void A_tall_subject_moves_the_patch_back()
    {
        var view = View(45) with { FieldWidth = Length.FromMillimeters(0.01), FieldHeight = Length.FromMillimeters(0.01), SubjectHeight = Length.FromMillimeters(40) };

        VisiblePatch.Of(Studio.Panel(), view).Outline.Average(place => place.AlongSheet.Millimeters).Should().BeApproximately(225 + 40, 0.01);
    }

    [Fact]
    public void A_quarter_turn_of_the_camera_swaps_width_and_height()
    {
        var patch = VisiblePatch.Of(Studio.Panel(), View(90) with { Roll = Angle.FromDegrees(90) });

        patch.Outline.Max(place => place.Across.Millimeters).Should().BeApproximately(12, 1e-9);
        patch.Outline.Max(place => place.AlongSheet.Millimeters).Should().BeApproximately(225 + 18, 1e-9);
    }

    /// <summary>A rectangle turned by an angle: each corner by hand, (±w/2, ±h/2) turned with the right side towards the photographer.</summary>
    [Theory]
    [InlineData(20)]
    [InlineData(-35)]
    public void A_rolled_camera_looking_straight_down_sees_the_same_rectangle_turned(double degrees)
    {
        var patch = VisiblePatch.Of(Studio.Panel(), View(90) with { Roll = Angle.FromDegrees(degrees) });

        var (sin, cos) = Math.SinCos(degrees * Math.PI / 180);
        var reach = patch.Outline.Max(place => place.Across.Millimeters);
        reach.Should().BeApproximately((18 * cos) + (12 * Math.Abs(sin)), 1e-6, "the frame's top turns along with its right side");
        patch.Outline.Max(place => place.AlongSheet.Millimeters).Should().BeApproximately(225 + (18 * Math.Abs(sin)) + (12 * cos), 1e-6);
        patch.Outline.Max(place => Math.Pow(place.Across.Millimeters, 2) + Math.Pow(place.AlongSheet.Millimeters - 225, 2))
            .Should().BeApproximately((18 * 18) + (12 * 12), 1e-6, "width and height turn the same way, else the field is skewed");
    }

    [Fact]
    public void A_level_camera_sees_past_a_flat_panel_but_not_past_a_swept_one()
    {
        var flat = Studio.Panel(0.6, 0.6);
        var swept = Studio.Panel(0.6, 1.4) with { SweepRadius = Length.FromMeters(0.5), SweptLength = Length.FromMeters(0.75) };
        var view = View(5) with { SubjectHeight = Length.FromMillimeters(20) };

        VisiblePatch.Of(flat, view).OnPanel.Should().BeLessThan(1);
        VisiblePatch.Of(swept, view with { SubjectBack = Length.FromMeters(-0.2) }).OnPanel.Should().Be(1);
    }

    /// <summary>GN 30 m at 1/5.04, 0.45 m under a sheet of T = 0.5: 2204.6 lx·s, 350.9 cd·s/m², +0.51 stop at N_e 32, ISO 500 (independent program).</summary>
    [Fact]
    public void One_whole_chain_from_guide_number_to_white_margin()
    {
        var intensity = FlashExposure.IntensityTime(Length.FromMeters(30), new FlashPower(1 / 5.04));
        var flash = Studio.Flash(z: 0.05, intensity: intensity, size: 0.001);
        var map = LightSolver.Solve(Studio.Scene(Studio.Panel(), Studio.BlackGround, flash), new PanelGrid(25, 25));
        var view = View(90) with { FieldWidth = Length.FromMillimeters(0.1), FieldHeight = Length.FromMillimeters(0.1) };

        var margins = WhiteMarginMap.Of(map, view, Camera(16, 500) with { EffectiveFNumber = new FNumber(32) });

        map.Exposure(12, 12).Should().BeApproximately(2204.6, 0.1);
        map.LuminanceTime(Length.Zero, Length.FromMeters(0.225), Direction.Up).Should().BeApproximately(350.9, 0.05);
        margins.Darkest!.Margin.Value.Should().BeApproximately(0.51, 0.005);
        margins.At(margins.Darkest.Place).Value.Should().BeApproximately(0.51, 0.005);
    }

    [Fact]
    public void A_clip_point_and_a_filter_take_their_stops_from_the_margin()
    {
        var map = LightSolver.Solve(Studio.Scene(Studio.Panel(), Studio.BlackGround, Studio.Flash(intensity: 100)), Grid);
        Stops Darkest(CameraCase camera) => WhiteMarginMap.Of(map, View(60), camera).Darkest!.Margin;

        var less = Darkest(Camera(16, 200) with { ClipPoint = new Stops(0.4), FilterLoss = new Stops(1.5) });

        (Darkest(Camera(16, 200)) - less).Value.Should().BeApproximately(1.9, 1e-9);
    }

    [Fact]
    public void No_light_is_black_and_not_a_fault()
    {
        var map = LightSolver.Solve(Studio.Scene(Studio.Panel(), Studio.BlackGround, Studio.Flash(intensity: 0)), Grid);

        WhiteMarginMap.Of(map, View(60), Camera(16, 200)).Darkest!.Margin.Value.Should().Be(-30);
    }

    /// <summary>A Lambertian window under the middle falls off as cos⁴, so the patch's corner is its darkest point.</summary>
    [Fact]
    public void Over_a_central_flash_the_middle_is_brightest_and_a_corner_darkest()
    {
        var map = LightSolver.Solve(Studio.Scene(Studio.Panel(), Studio.BlackGround, Studio.Flash(intensity: 500)), Grid);
        var view = View(90) with { FieldWidth = Length.FromMillimeters(300), FieldHeight = Length.FromMillimeters(200), PupilDistance = Length.FromMeters(1) };

        var margins = WhiteMarginMap.Of(map, view, Camera(16, 200));

        Math.Abs(margins.Brightest!.FrameRight).Should().BeLessThan(0.05);
        Math.Abs(margins.Darkest!.FrameRight).Should().Be(0.5);
        Math.Abs(margins.Darkest.FrameUp).Should().Be(0.5);
        var square = (0.4 * 0.4) + (0.15 * 0.15) + (0.1 * 0.1);
        (margins.Darkest.Margin - margins.Brightest.Margin).Value.Should().BeApproximately(2 * Math.Log2(0.16 / square), 0.02);
    }

    [Fact]
    public void The_clipped_share_of_the_frame_grows_with_the_light()
    {
        var view = View(60) with { FieldWidth = Length.FromMillimeters(200), FieldHeight = Length.FromMillimeters(130), PupilDistance = Length.FromMeters(0.6) };
        var box = LightBox.Prepare(Studio.Panel(), Studio.BlackGround, Grid);
        double Clipped(double intensity) => WhiteMarginMap
            .Of(box.Illuminate([Studio.Flash(intensity: intensity)]), view, Camera(16, 200)).ClippedFraction;

        Clipped(1).Should().Be(0);
        Clipped(165).Should().BeInRange(0.05, 0.95);
        Clipped(1e4).Should().Be(1);
    }

    [Fact]
    public void A_stop_more_light_clips_the_share_that_twice_the_light_clips()
    {
        var view = View(60) with { FieldWidth = Length.FromMillimeters(200), FieldHeight = Length.FromMillimeters(130), PupilDistance = Length.FromMeters(0.6) };
        var box = LightBox.Prepare(Studio.Panel(), Studio.BlackGround, Grid);
        WhiteMarginMap Lit(double intensity) => WhiteMarginMap.Of(box.Illuminate([Studio.Flash(intensity: intensity)]), view, Camera(16, 200));

        Lit(82.5).ClippedFractionWith(new Stops(1)).Should().Be(Lit(165).ClippedFraction).And.BeInRange(0.05, 0.99);
        Lit(330).ClippedFractionWith(new Stops(-1)).Should().Be(Lit(165).ClippedFraction).And.BeInRange(0.05, 0.99);
    }

    [Fact]
    public void A_poor_diffuser_shows_its_hot_spot_where_the_camera_looks_down_the_beam()
    {
        var flash = Studio.Flash(y: 0.15);
        var poor = Studio.Panel() with { ScatterExponent = 6 };
        var map = LightSolver.Solve(Studio.Scene(poor, Studio.BlackGround, flash), Grid);
        var middle = Length.FromMeters(0.225);

        var downTheBeam = map.LuminanceTime(Length.Zero, middle, Direction.From(flash.Centre, new Position(0, 0, 0.5)));
        var across = map.LuminanceTime(Length.Zero, middle, Direction.Of(0, 1, 1));

        downTheBeam.Should().BeGreaterThan(3 * across);
    }

    /// <summary>All light counted in the total transmittance leaves the top, whatever the lobe and the light's direction.</summary>
    [Theory]
    [InlineData(0, 1)]
    [InlineData(2, 1)]
    [InlineData(6, 0.7)]
    [InlineData(20, 0.5)]
    public void A_scatter_lobe_lets_out_all_the_light_it_is_given(double exponent, double incidence)
    {
        var lobe = new ScatterLobe(exponent);
        var onward = Direction.Of(Math.Sqrt(1 - (incidence * incidence)), 0, incidence);
        var sum = 0.0;
        const int Steps = 300;
        for (var i = 0; i < Steps; i++)
        {
            var (sine, cosine) = Math.SinCos((i + 0.5) * Math.PI / 2 / Steps);
            for (var j = 0; j < Steps; j++)
            {
                var (up, right) = Math.SinCos((j + 0.5) * 2 * Math.PI / Steps);
                var way = Direction.Of(sine * right, sine * up, cosine);
                var deviation = (way.X * onward.X) + (way.Y * onward.Y) + (way.Z * onward.Z);
                sum += lobe.PerExitance(incidence, deviation) * cosine * sine;
            }
        }

        (sum * Math.PI / 2 * 2 * Math.PI / (Steps * Steps)).Should().BeApproximately(1, 0.01);
    }

    private static CameraCase Camera(double fNumber, double iso) => new() { Aperture = new FNumber(fNumber), Iso = new IsoSpeed(iso) };

    private static CameraView View(double pitch) => new()
    {
        Name = "view",
        FieldWidth = Length.FromMillimeters(36),
        FieldHeight = Length.FromMillimeters(24),
        PupilDistance = Length.FromMillimeters(300),
        Pitch = Angle.FromDegrees(pitch),
    };
}
