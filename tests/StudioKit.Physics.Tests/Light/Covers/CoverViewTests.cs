using StudioKit.Physics.Light;
using StudioKit.Physics.Light.Covers;
using UnitsNet;

namespace StudioKit.Physics.Tests.Light.Covers;

public sealed class CoverViewTests
{
    private static readonly SheetAround Sheet = new(Length.FromMillimeters(300), Length.FromMillimeters(200), Length.FromMillimeters(200));

    /// <summary>At 60° through a flat top the incidence is 30°, and what is lost follows from it alone.</summary>
    [Fact]
    public void A_steep_camera_looks_through_the_top()
    {
        var sight = CoverView.Of(SampleCovers.Tub, View(60));

        sight.Face.Should().Be(CoverFace.Top);
        sight.Incidence.Degrees.Should().BeApproximately(30, 1e-6);
        sight.SubjectLoss.Value.Should().BeApproximately(ClearWall.Loss(1.49, Math.PI / 6).Value, 1e-9);
        sight.Distance.Millimeters.Should().BeApproximately((62 - 2.5) / Math.Sin(Math.PI / 3), 1, "the ray bends within 2 mm of wall");
        sight.SheetMirrored.Should().Be(0, "what the top throws to the lens is sky");
    }

    /// <summary>At 20° it looks through the front wall, which throws the sheet before it to the lens: 1 − T at 20° of it.</summary>
    [Fact]
    public void A_low_camera_looks_through_the_front_wall_and_sees_the_sheet_in_it()
    {
        var sight = CoverView.Of(SampleCovers.Tub, View(20), Sheet);

        sight.Face.Should().Be(CoverFace.Front);
        sight.SheetMirrored.Should().BeApproximately(ClearWall.Reflectance(1.49, Math.PI / 9), 1e-9);
        CoverView.Of(SampleCovers.Tub, View(20), Sheet with { Front = Length.FromMillimeters(60) }).SheetMirrored.Should().Be(0, "no sheet lies where the wall looks");
    }

    /// <summary>The sheet behind a tub shows through two walls at a low angle, through one at a steep angle.</summary>
    [Fact]
    public void The_sheet_behind_loses_a_wall_more_at_a_low_angle()
    {
        CoverView.Of(SampleCovers.Tub, View(80)).SheetLoss.Value.Should().BeInRange(0.1, 0.13);
        CoverView.Of(SampleCovers.Tub, View(5)).SheetLoss.Value.Should().BeInRange(0.2, 0.26);
    }

    /// <summary>Straight down into water: three quarters as deep (n = 4/3 to within 0.03 %), 2 % lost at the surface and 2·log₂ n spread.</summary>
    [Fact]
    public void Water_looks_shallower_and_its_subject_darker()
    {
        var sight = CoverView.Of(SampleCovers.Tank, View(90));

        sight.Face.Should().Be(CoverFace.Water);
        sight.SeemingDistance.Millimeters.Should().BeApproximately((60 - 2.5) * 0.75, 0.02);
        sight.SubjectLoss.Value.Should().BeApproximately(0.83 + 0.03, 0.005);
        sight.SheetLoss.Value.Should().BeApproximately(0.03 + ClearWall.Loss(1.52, 0, 1.333).Value, 0.005, "the sheet lies in air, so that water spreads none of its light");
    }

    /// <summary>From water into air all is turned back beyond 48.6°, so a line of sight that enters by the front wall at less than 61.9° sees a mirror beneath it: sin² p = n² − 1.</summary>
    [Fact]
    public void Through_the_front_wall_the_bottom_of_a_tank_is_a_mirror()
    {
        var long30 = SampleCovers.Tank with { Depth = Length.FromMillimeters(300) };

        CoverView.Of(long30, View(30) with { SubjectHeight = Length.FromMillimeters(5) }).Should().Match<CoverSight>(sight => sight.Face == CoverFace.Water);
        CoverView.Of(SampleCovers.Tank, View(25)).Should().Match<CoverSight>(sight => sight.Face == CoverFace.Front && sight.BottomMirrors);
        CoverView.Of(SampleCovers.Tank, View(0)).BottomMirrors.Should().BeFalse("a level line of sight never comes to the bottom");
    }

    /// <summary>A low line of sight out of deep water may leave by the surface, grazing it, where the camera stands higher, or squarely by the front wall where it stands lower: the camera stands lower.</summary>
    [Fact]
    public void Level_into_a_tank_the_camera_looks_through_its_front_wall_and_not_along_the_water()
    {
        var deep = SampleCovers.Tank with { Depth = Length.FromMillimeters(140) };

        CoverView.Of(deep, View(5)).Should().Match<CoverSight>(sight => sight.Face == CoverFace.Front && Math.Abs(sight.Incidence.Degrees - 5) < 1e-6);
        CoverView.Of(deep, View(60)).Face.Should().Be(CoverFace.Water);
    }

    /// <summary>A frame 36 mm wide lies within a tub 120 mm wide; one 200 mm wide takes in where its walls stand.</summary>
    [Fact]
    public void A_wide_frame_shows_where_the_walls_stand()
    {
        CoverView.Of(SampleCovers.Tub, View(60)).ShowsFoot.Should().BeFalse();
        CoverView.Of(SampleCovers.Tub, View(60) with { FieldWidth = Length.FromMillimeters(200), FieldHeight = Length.FromMillimeters(133) }).ShowsFoot.Should().BeTrue();
    }

    /// <summary>Light that enters water at 45° refracts to 32.0° and loses what Fresnel's formulae say at 45° (2.8 %, tables of sea reflectance).</summary>
    [Fact]
    public void Light_enters_water_at_the_angle_that_the_law_of_refraction_gives()
    {
        var deep = 0.06 - 0.0025;
        var lamp = new Position((0.3 * 1) + (deep * Math.Tan(Math.Asin(Math.Sin(Math.PI / 4) / 1.333))), 0, 0.06 + 0.3);

        CoverLighting.LossToSubject(SampleCovers.Tank with { Width = Length.FromMeters(1) }, lamp, new Position(0, 0, 0.0025)).Ratio
            .Should().BeApproximately(1 / (1 - 0.028), 0.0005);
    }

    /// <summary>EV 15 is about 82,000 lx: 752 W/m² at 109 lm/W on 0.0120 m², out by 0.0384 m² through 0.17 m²·K/W, 40 K at most (by hand).</summary>
    [Fact]
    public void Full_sun_would_cook_what_sits_under_a_tub() =>
        CoverAir.Warming(SampleCovers.Tub, Illuminance.FromLux(82_000)).Kelvins.Should().BeApproximately(82_000 / 109.0 * 0.012 * 0.17 / 0.0384, 1e-6);

    /// <summary>A wet ball of 40 mm in half a litre: ln 2·V/(2π·d·D) is 55 s (by hand, D = 0.25 cm²/s).</summary>
    [Fact]
    public void A_wet_animal_fogs_half_a_litre_of_air_within_a_minute() =>
        CoverAir.HalfSaturation(Volume.FromLiters(0.5), Length.FromMillimeters(40)).Seconds.Should().BeApproximately(55, 0.5);

    /// <summary>Half a ball of 50 mm holds 2/3·π·r³, 0.262 litre.</summary>
    [Fact]
    public void Half_a_ball_holds_two_thirds_of_pi_r_cubed() => CoverAir.Inside(SampleCovers.Dome).Liters.Should().BeApproximately(2.0 / 3 * Math.PI * 0.125, 1e-6);

    private static CameraView View(double pitch) => new()
    {
        Name = "",
        FieldWidth = Length.FromMillimeters(36),
        FieldHeight = Length.FromMillimeters(24),
        PupilDistance = Length.FromMillimeters(250),
        Pitch = Angle.FromDegrees(pitch),
        SubjectHeight = Length.FromMillimeters(2.5),
    };
}
