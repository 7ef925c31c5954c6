using StudioKit.Kits.Studio;
using StudioKit.Physics.Structure.Frames;
using StudioKit.Planning.Studio.Frames;
using UnitsNet;

namespace StudioKit.Planning.Tests.Frames;

/// <summary>What a builder measures off: joints, clips, the foot's hole and the heights of lower rails.</summary>
public sealed class FrameMeasuresTests
{
    // Tees with 11 mm of take-off and 16 mm of socket in the library's family of 20 mm fittings.
    private static readonly Lazy<Plan> Plan = new(() => PlannedKit.Of("kind: table\n  insertion-gap: 2 mm"));

    private static FramePlan Table => Plan.Value.Frame!;

    /// <summary>By hand: 11 mm of take-off and 2 mm of gap to the pipe's end, 11 mm and 16 mm of socket to the fitting's edge.</summary>
    [Fact]
    public void A_pipe_ends_a_gap_behind_its_take_off_and_is_marked_at_the_fittings_edge()
    {
        var tee = Table.Fittings.Single(fitting => fitting.Kind == FittingKind.Tee);

        tee.TakeOff.Millimeters.Should().BeApproximately(11, 1e-9);
        tee.ToPipeEnd.Millimeters.Should().BeApproximately(13, 1e-9);
        tee.ToMark.Millimeters.Should().BeApproximately(27, 1e-9);
    }

    [Fact]
    public void From_the_middle_of_a_joint_to_its_mark_it_is_the_way_to_the_pipes_end_and_the_insertion_depth() =>
        Table.Fittings.Should().OnlyContain(fitting =>
            Math.Abs((fitting.ToPipeEnd + Table.InsertionDepths[fitting.Kind] - fitting.ToMark).Millimeters) < 1e-9);

    /// <summary>A rail of 580 mm under a panel of 600 mm, two clips at a quarter and three quarters of it: 10 + 145 and 10 + 435 mm from the left.</summary>
    [Fact]
    public void Clips_are_measured_from_the_panels_left_and_front_edges()
    {
        var clips = Table.FrontClips;

        clips.Select(clip => Math.Round(clip.FromLeft.Millimeters, 6)).Should().Equal(155, 445);
        clips.Should().OnlyContain(clip => Math.Abs(clip.FromEdge.Millimeters - 10) < 1e-6, "the panel's edge is flush with the outer side of a 20 mm rail");
    }

    /// <summary>ISO 273, medium series: 9 mm for M8 (from memory).</summary>
    [Fact]
    public void A_foots_screw_goes_through_a_hole_of_9_mm_where_there_are_feet()
    {
        Table.FootHole.Should().Be(Length.FromMillimeters(9));
        var lying = Plan.Value.Kit with { Frame = Plan.Value.Kit.Frame with { Kind = FrameKind.LowGround, Height = Length.FromMillimeters(40) } };
        FramePlanner.Plan(lying, Plan.Value.Panel, new PlanningServices()).FootHole.Should().BeNull();
    }

    [Fact]
    public void Once_round_the_pipe_is_pi_times_its_width() =>
        Table.PipeGirth.Millimeters.Should().BeApproximately(20 * 3.14159265, 1e-6);
}
