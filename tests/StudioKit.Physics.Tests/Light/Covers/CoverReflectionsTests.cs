using StudioKit.Physics.Light;
using StudioKit.Physics.Light.Covers;
using UnitsNet;

namespace StudioKit.Physics.Tests.Light.Covers;

public sealed class CoverReflectionsTests
{
    private static readonly Length Bee = Length.FromMillimeters(12);

    /// <summary>Camera and lamp on one line square over the top: the lamp shows in the middle of the frame, over the animal.</summary>
    [Fact]
    public void A_lamp_beside_a_lens_that_looks_straight_down_shows_in_the_top()
    {
        var seen = CoverReflections.Of(SampleCovers.Tub, View(90), [Lamp(0, 0, 0.5)], Bee);

        var shown = seen.Should().ContainSingle(reflection => reflection.Face == CoverFace.Top).Which;
        shown.Right.Should().BeApproximately(0, 1e-9);
        shown.Up.Should().BeApproximately(0, 1e-9);
        shown.OnSubject.Should().BeTrue();
    }

    /// <summary>
    /// A camera at 60° through the top throws its line of sight back at 60° on the far side: a lamp that stands there shows, one over the camera does not.
    /// </summary>
    [Fact]
    public void A_lamp_shows_in_the_top_where_the_line_of_sight_is_thrown_to()
    {
        var (sin, cos) = Math.SinCos(Math.PI / 3);
        var point = new Position(0, -(0.062 - 0.0025) / Math.Tan(Math.PI / 3), 0.062);
        var thrown = new Position(0, point.Y + (0.4 * cos), point.Z + (0.4 * sin));

        CoverReflections.Of(SampleCovers.Tub, View(60), [new CoverLamp(thrown, Length.Zero, Length.Zero)], Bee)
            .Should().ContainSingle(reflection => reflection.Face == CoverFace.Top && reflection.OnSubject && Math.Abs(reflection.Up) < 1e-6);
        CoverReflections.Of(SampleCovers.Tub, View(60), [Lamp(0, -0.3, 0.6)], Bee).Should().NotContain(reflection => reflection.Face == CoverFace.Top);
    }

    /// <summary>
    /// The two dimensional form has four answers for two points on one diameter inside a circle, each as far from the middle: the ends of that diameter and of the one
    /// across it (Alhazen's problem, as solved by Huygens).
    /// </summary>
    [Fact]
    public void Two_points_of_a_diameter_see_each_other_in_four_places_of_a_round_wall() =>
        new RoundWall(0.05).Places((0.02, 0), (-0.02, 0)).Should().HaveCount(4)
            .And.OnlyContain(at => Math.Abs(at.X) < 1e-6 || Math.Abs(at.Y) < 1e-6);

    /// <summary>A small lamp far off, seen by a lens far off, shows in a ball half its radius behind the wall (convex mirror, f = r/2): where its direction from the centre halves the angle between both.</summary>
    [Fact]
    public void A_dome_shows_a_far_lamp_half_way_between_lamp_and_lens()
    {
        var cover = SampleCovers.Dome with { Wall = Length.Zero };
        var view = View(90) with { PupilDistance = Length.FromMeters(50), SubjectHeight = Length.Zero, FieldWidth = Length.FromMillimeters(150), FieldHeight = Length.FromMillimeters(100) };
        var lamp = new CoverLamp(new Position(50 * Math.Sin(0.4), 0, 50 * Math.Cos(0.4)), Length.Zero, Length.Zero);

        // sin 0.2 of the radius aside, of a frame 150 mm wide; parallax of 0.05 in 50 m leaves a thousandth.
        CoverReflections.Of(cover, view, [lamp], Bee).Select(seen => seen.Right * 0.15).Should().Contain(right => Math.Abs(right - (0.05 * Math.Sin(0.2))) < 1e-4);
    }

    /// <summary>Wherever a wall throws light to the lens, the rays before and behind make one angle with its normal, and lie in one plane with it (law of reflection).</summary>
    [Fact]
    public void Light_is_thrown_back_at_the_angle_at_which_it_comes() => Gen.Double[-0.5, 0.5].Select(Gen.Double[-0.5, 0.5], Gen.Double[0.1, 0.6]).Sample((x, y, z) =>
    {
        var (lamp, lens) = (new Position(x, y, z), new Position(0.01, -0.3, 0.25));
        return new[] { SampleCovers.Tub, SampleCovers.RoundTub, SampleCovers.Dome }.SelectMany(CoverSurface.Of).All(surface =>
            surface.Mirrors(lamp, lens).All(at => IsLawful(surface.NormalAt(at), Direction.From(at, lamp), Direction.From(at, lens))));
    });

    private static bool IsLawful(Direction normal, Direction one, Direction other)
    {
        // The sum of both directions lies along the normal.
        var along = normal.Dot(one) + normal.Dot(other);
        return Math.Abs(one.X + other.X - (along * normal.X)) < 1e-6 && Math.Abs(one.Y + other.Y - (along * normal.Y)) < 1e-6 && Math.Abs(one.Z + other.Z - (along * normal.Z)) < 1e-6;
    }

    private static CoverLamp Lamp(double x, double y, double z) => new(new Position(x, y, z), Length.FromMillimeters(20), Length.FromMillimeters(20));

    private static CameraView View(double pitch) => new()
    {
        Name = "",
        FieldWidth = Length.FromMillimeters(36),
        FieldHeight = Length.FromMillimeters(24),
        PupilDistance = Length.FromMillimeters(250),
        Pitch = Angle.FromDegrees(pitch),
        SubjectHeight = Length.FromMillimeters(2.5),
    };

    private sealed class RoundWall(double radius)
    {
        public IEnumerable<(double X, double Y)> Places((double X, double Y) light, (double X, double Y) eye) =>
            MirrorCircle.Angles(radius, light, eye).Select(angle => (radius * Math.Cos(angle), radius * Math.Sin(angle)));
    }
}
