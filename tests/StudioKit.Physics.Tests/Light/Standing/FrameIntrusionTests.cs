using StudioKit.Physics.Light;
using StudioKit.Physics.Light.Obstacles;
using StudioKit.Physics.Light.Standing;
using UnitsNet;

namespace StudioKit.Physics.Tests.Light.Standing;

public sealed class FrameIntrusionTests
{
    /// <summary>By triangles: level view, 100 mm wide at 400 mm; 400 mm further on the frame is 200 mm wide, 100 mm to either side.</summary>
    [Theory]
    [InlineData(0.07, true)]
    [InlineData(0.115, true)]
    [InlineData(0.13, false)]
    [InlineData(-0.13, false)]
    public void A_box_behind_the_subject_is_seen_where_the_frame_has_grown_to_it(double right, bool seen) =>
        FrameIntrusion.Shows(Box(new Position(right, 0.4, 0.5), 0.04), Level, 0.5).Should().Be(seen);

    [Fact]
    public void What_stands_behind_the_camera_is_not_seen() => FrameIntrusion.Shows(Box(new Position(0, -0.6, 0.5), 0.04), Level, 0.5).Should().BeFalse();

    [Fact]
    public void A_pole_beside_the_frame_is_not_seen_and_one_across_it_is()
    {
        FrameIntrusion.Shows(new Position(0.15, 0.4, 0), new Position(0.15, 0.4, 1), Level, 0.5).Should().BeFalse();
        FrameIntrusion.Shows(new Position(0.05, 0.4, 0), new Position(0.05, 0.4, 1), Level, 0.5).Should().BeTrue();
    }

    [Fact]
    public void A_head_is_measured_to_its_lowest_corner() =>
        HeadRoom.Lowest(new BoxObstacle(new Position(0, 0, 0.5), Orientation.Tilted(Angle.FromDegrees(45), Angle.Zero), Length.FromMeters(0.2), Length.FromMeters(0.1), Length.FromMeters(0.2)))
            .Should().BeApproximately(0.5 - (0.2 * Math.Sqrt(0.5)), 1e-9);

    [Theory]
    [InlineData(0.55, 0, false)]
    [InlineData(0.515, 0, true)]
    [InlineData(0.515, 0.4, false)]
    public void A_head_meets_the_sheet_where_it_dips_under_it_between_its_edges(double height, double right, bool meets) =>
        HeadRoom.ReachesSheet(Box(new Position(right, 0, height), 0.04), 0.5, 0.6, -0.2, 0.2).Should().Be(meets);

    /// <summary>A pipe of 20 mm whose middle passes 25 mm from the middle of a box of 40 mm: 20 + 10 mm is more.</summary>
    [Theory]
    [InlineData(0.025, true)]
    [InlineData(0.035, false)]
    public void A_head_meets_a_pipe_that_passes_nearer_than_both_are_thick(double aside, bool meets) => HeadRoom
        .Touches(Box(new Position(0, 0, 0.5), 0.04), new PipeObstacle(new Position(aside, -1, 0.5), new Position(aside, 1, 0.5), Length.FromMillimeters(20)))
        .Should().Be(meets);

    [Theory]
    [InlineData(0.04, true)]
    [InlineData(0.06, false)]
    public void A_head_meets_a_lens_that_it_reaches_into(double aside, bool meets) => HeadRoom
        .Touches(Box(new Position(aside, -0.2, 0.5), 0.04), new BarrelObstacle(new Position(0, -0.1, 0.5), new Position(0, -0.4, 0.5), Length.FromMillimeters(60)))
        .Should().Be(meets);

    [Fact]
    public void The_way_from_a_point_to_a_head_ends_at_its_near_face() =>
        HeadRoom.Distance(Box(new Position(0, 0.3, 0.5), 0.1), new Position(0, 0, 0.5)).Should().BeApproximately(0.25, 1e-9);

    private static CameraView Level => new()
    {
        Name = "level",
        FieldWidth = Length.FromMillimeters(100),
        FieldHeight = Length.FromMillimeters(66),
        PupilDistance = Length.FromMillimeters(400),
        Pitch = Angle.Zero,
    };

    private static BoxObstacle Box(Position centre, double side) =>
        new(centre, Orientation.FacingUp, Length.FromMeters(side), Length.FromMeters(side), Length.FromMeters(side));
}
