using StudioKit.Physics.Structure.Frames;
using UnitsNet;

namespace StudioKit.Physics.Tests.Structure.Frames;

public sealed class PipeFrameTests
{
    /// <summary>cut = centre line − take-offs − gaps; laying lengths as in Modern Plumbing, take-off of 3/4 in elbows 14.3 mm from memory.</summary>
    [Theory]
    [InlineData(14.3, 0, 571.4)]
    [InlineData(14.3, 1, 569.4)]
    public void A_rail_of_600_mm_centre_line_is_cut_short_by_both_take_offs_and_gaps(double takeOff, double gap, double published)
    {
        var frame = PipeFrame.Generate(FrameCases.FenTable with
        {
            PanelWidth = Length.FromMillimeters(620),
            Fittings = FrameCases.FittingsOf(takeOff, 18.26, 1),
            InsertionGap = Length.FromMillimeters(gap),
        });

        var rail = frame.Members.First(member => member.Role == FrameMemberRole.CrossRail);

        rail.CentreLine.Millimeters.Should().BeApproximately(600, 1e-9);
        rail.CutLength.Millimeters.Should().BeApproximately(published, 0.05);
    }

    /// <summary>Metric 20 mm fittings with z = 11 mm, as ISO 264 has them (from memory): 420 − 22 = 398.</summary>
    [Fact]
    public void A_rail_of_420_mm_in_20_mm_metric_pipe_is_cut_to_398_mm()
    {
        var frame = PipeFrame.Generate(FrameCases.FenTable with { PanelDepth = Length.FromMillimeters(440) });

        frame.Members.First(member => member.Role == FrameMemberRole.SideRail).CutLength.Millimeters.Should().BeApproximately(398, 0.05);
    }

    [Fact]
    public void A_bare_table_is_four_corners_four_caps_and_eight_pipes_in_three_lengths()
    {
        var frame = PipeFrame.Generate(FrameCases.FenTable);

        frame.FittingCounts.Should().BeEquivalentTo(new Dictionary<FittingKind, int> { [FittingKind.Corner] = 4, [FittingKind.Cap] = 4 });
        CutList.Of(frame).Select(entry => (entry.Group, entry.Count))
            .Should().Equal(("A", 2), ("B", 2), ("C", 4));
        frame.Problems.Should().BeEmpty();
    }

    /// <summary>500 − (10 + 4) rail centre; feet at 20 mm: 466 mm of leg less the corner's 11 mm.</summary>
    [Fact]
    public void A_leg_reaches_from_the_corner_to_the_cap_over_the_foot() =>
        PipeFrame.Generate(FrameCases.FenTable).Members.First(member => member.Role == FrameMemberRole.Leg)
            .CutLength.Millimeters.Should().BeApproximately(455, 1e-9);

    [Fact]
    public void The_flash_comes_to_lie_where_the_light_design_chose()
    {
        var frame = PipeFrame.Generate(FrameCases.FenTable with { Cradles = [FrameCases.Cradle] });

        (frame.Cradles.Single().BrightWindow - new FramePoint(0.020, -0.030, 0.250)).Norm.Should().BeLessThan(1e-12);
        frame.Joints.Single(joint => joint.Label == frame.Cradles.Single().Joint).Ports
            .Should().ContainSingle(port => port.Member == null && port.Direction == new FramePoint(0, 0, 1));
    }

    [Fact]
    public void A_cradle_under_the_ground_is_refused()
    {
        var frame = PipeFrame.Generate(FrameCases.FenTable with { Cradles = [FrameCases.Cradle with { BelowPanel = Length.FromMillimeters(480) }] });

        frame.Cradles.Single().Joint.Should().BeNull();
        frame.Cradles.Single().Fault!.Kind.Should().Be(CradleFaultKind.TooLow);
        frame.Refused.Should().Be(1);
        frame.GoesTogether.Should().BeTrue("the pipes do not need the flash that the frame does not carry");
    }

    [Fact]
    public void A_swept_back_ends_on_the_rail_between_two_posts()
    {
        var frame = PipeFrame.Generate(Swept(400, 90));
        var rail = frame.Members.First(member => member.Role == FrameMemberRole.SweepRail);
        var end = frame.Joints.Single(joint => joint.Label == rail.From).Position;

        // Quarter circle: the sheet ends a radius behind and above; the rail's centre lies 10 mm + 4 mm behind the sheet.
        end.Back.Should().BeApproximately(0.200 + 0.400 + 0.014, 1e-12);
        end.Up.Should().BeApproximately(0.500 + 0.400, 1e-12);
        frame.SheetLength.Millimeters.Should().BeApproximately(400 + (400 * Math.PI / 2), 1e-9);
        frame.FittingCounts[FittingKind.Elbow].Should().Be(2);
    }

    [Fact]
    public void A_low_frame_without_room_for_legs_lies_on_the_ground_and_says_so()
    {
        var frame = PipeFrame.Generate(FrameCases.FenTable with { Shape = FrameShape.LowGround, Height = Length.FromMillimeters(40) });

        frame.Feet.Should().BeEmpty();
        frame.FittingCounts.Should().BeEquivalentTo(new Dictionary<FittingKind, int> { [FittingKind.Elbow] = 4 });
        frame.PanelHeight.Millimeters.Should().BeApproximately(28, 1e-9);
        frame.Caveats.Single(caveat => caveat.Kind == FrameCaveatKind.WithoutLegs).Against.Should().Be(Length.FromMillimeters(40));
    }

    [Fact]
    public void A_low_frame_says_how_high_the_flash_must_stand()
    {
        var frame = PipeFrame.Generate(FrameCases.FenTable with
        {
            Shape = FrameShape.LowGround,
            Height = Length.FromMillimeters(300),
            Cradles = [FrameCases.Cradle],
        });

        frame.Caveats.Single(caveat => caveat.Kind == FrameCaveatKind.FlashOnGround).Size!.Value.Millimeters.Should().BeApproximately(50, 1e-9);
    }

    [Fact]
    public void A_rail_too_long_for_the_pack_is_split_into_equal_pieces_by_a_coupling()
    {
        var frame = PipeFrame.Generate(FrameCases.FenTable with { LongestPiece = Length.FromMillimeters(460) });
        var rail = frame.Members.Where(member => member.Role == FrameMemberRole.CrossRail).ToList();

        // 580 − 2·11 less 2·1 in the coupling, halved.
        rail.Should().HaveCount(4).And.OnlyContain(member => Math.Abs(member.CutLength.Millimeters - 278) < 1e-9);
        frame.FittingCounts[FittingKind.Coupling].Should().Be(2);
    }

    [Fact]
    public void A_piece_that_cannot_fit_the_pack_is_named()
    {
        var frame = PipeFrame.Generate(FrameCases.FenTable with { LongestPiece = Length.FromMillimeters(25) });

        frame.Problems.Should().Contain(problem => problem.Kind == FrameProblemKind.PieceTooLong && problem.Member!.Label == "A1");
        frame.GoesTogether.Should().BeFalse();
    }

    [Fact]
    public void Geometry_closes_parts_take_offs_and_gaps_sum_to_the_centre_line() =>
        FrameCases.Any.Sample(
            design =>
            {
                var frame = PipeFrame.Generate(design);
                foreach (var member in frame.Members)
                {
                    var sum = member.CutLength + member.TakeOffFrom + member.TakeOffTo + (2 * member.InsertionGap);
                    var distance = (PlaceOf(frame, member.To) - PlaceOf(frame, member.From)).Norm;
                    Assert.Equal(distance, sum.Meters, 1e-5);
                    Assert.Equal(distance, member.CentreLine.Meters, 1e-5);
                }
            },
            iter: 300);

    [Fact]
    public void Walking_round_the_top_rails_by_their_parts_comes_back_to_the_start() =>
        FrameCases.Any.Sample(
            design =>
            {
                var frame = PipeFrame.Generate(design with { Shape = FrameShape.Table, LongestPiece = Length.FromMillimeters(300) });
                var rails = frame.Members.Where(member => member.Role is FrameMemberRole.CrossRail or FrameMemberRole.SideRail).ToList();
                var right = rails.Where(rail => rail.Role == FrameMemberRole.CrossRail)
                    .GroupBy(rail => PlaceOf(frame, rail.From).Back).Select(side => side.Sum(PartsOf)).ToList();

                right.Should().HaveCount(2);
                right[0].Should().BeApproximately(right[1], 0.01);
            },
            iter: 100);

    [Fact]
    public void Every_piece_fits_the_pack_or_is_named() =>
        FrameCases.Any.Sample(
            design =>
            {
                var frame = PipeFrame.Generate(design);
                frame.Members.Where(member => member.CutLength > design.LongestPiece + Length.FromMicrometers(1)).ToList()
                    .TrueForAll(member => frame.Problems.Any(problem => problem.Member == member)).Should().BeTrue();
            },
            iter: 300);

    [Fact]
    public void Every_pipe_sits_in_a_socket_that_points_along_it() =>
        FrameCases.Any.Sample(
            design =>
            {
                var frame = PipeFrame.Generate(design);
                foreach (var joint in frame.Joints)
                {
                    foreach (var port in joint.Ports.Where(port => port.Member is not null))
                    {
                        var member = frame.Members.Single(piece => piece.Label == port.Member);
                        var other = member.From == joint.Label ? member.To : member.From;
                        var way = PlaceOf(frame, other) - joint.Position;
                        (way - (way.Norm * port.Direction)).Norm.Should().BeLessThan(1e-9);
                    }
                }
            },
            iter: 100);

    [Fact]
    public void Splitting_is_no_finer_than_the_pack_asks() =>
        FrameCases.Any.Sample(
            design =>
            {
                var frame = PipeFrame.Generate(design);
                foreach (var member in frame.Members.Where(member => member.Parts > 1 && member.Part == 1))
                {
                    // One piece fewer, with one coupling less, would be too long for the pack.
                    var lost = 2 * (design.Fittings.Coupling.TakeOff + design.InsertionGap);
                    var pipe = (member.Parts * member.CutLength) + lost;
                    (pipe / (member.Parts - 1)).Millimeters.Should().BeGreaterThan(design.LongestPiece.Millimeters);
                }
            },
            iter: 300);

    [Fact]
    public void A_frame_on_a_slope_stands_level_within_its_feet() =>
        Gen.Select(FrameCases.Any, Gen.Double[0, 2 * Math.PI]).Sample(
            (design, bearing) =>
            {
                var frame = PipeFrame.Generate(design);
                var settings = FootLevelling.Extensions(frame, design.Slope, Angle.FromRadians(bearing));
                foreach (var foot in frame.Feet.Where(_ => !frame.Caveats.Any(caveat => caveat.Kind == FrameCaveatKind.SlopeBeyondFeet) && frame.Problems.Count == 0))
                {
                    settings[foot.Joint].Millimeters.Should().BeInRange(
                        foot.ShortestExtension.Millimeters - 1e-6, foot.LongestExtension.Millimeters + 1e-6);
                }
            },
            iter: 200);

    /// <summary>Ground that falls by 5 cm in a metre: feet 380 mm (580 mm) apart downhill are turned out by ±9.5 mm (±14.5 mm).</summary>
    [Theory]
    [InlineData(0, -9.5, -9.5, 9.5, 9.5)]
    [InlineData(90, -14.5, 14.5, 14.5, -14.5)]
    [InlineData(180, 9.5, 9.5, -9.5, -9.5)]
    public void Feet_downhill_are_turned_out(double bearing, params double[] frontLeftRightBackRightLeft)
    {
        var frame = PipeFrame.Generate(FrameCases.FenTable);

        var settings = FootLevelling.Extensions(frame, Angle.FromRadians(Math.Atan(0.05)), Angle.FromDegrees(bearing));

        frame.Feet.Zip(frontLeftRightBackRightLeft).Should().OnlyContain(pair =>
            Math.Abs((settings[pair.First.Joint] - pair.First.LevelExtension).Millimeters - pair.Second) < 1e-6);
    }

    [Fact]
    public void Labels_are_given_once() =>
        FrameCases.Any.Sample(
            design =>
            {
                var frame = PipeFrame.Generate(design);
                frame.Members.Select(member => member.Label).Concat(frame.Joints.Select(joint => joint.Label)).Should().OnlyHaveUniqueItems();
            },
            iter: 100);

    [Fact]
    public void A_table_of_loose_push_fits_gets_stretchers_and_a_stiff_one_does_not()
    {
        var low = FrameCases.FenTable with { Height = Length.FromMillimeters(300), Stretchers = FrameStretchers.WhereNeeded };

        var loose = PipeFrame.Generate(low);
        var stiff = PipeFrame.Generate(low with
        {
            JointStiffness = RotationalStiffness.FromNewtonMetersPerRadian(5000),
        });

        loose.Members.Should().Contain(member => member.Role == FrameMemberRole.Stretcher);
        stiff.Members.Should().NotContain(member => member.Role == FrameMemberRole.Stretcher);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(40)]
    public void An_impossible_panel_is_refused(double width)
    {
        var act = () => PipeFrame.Generate(FrameCases.FenTable with { PanelWidth = Length.FromMillimeters(width) });

        act.Should().Throw<ArgumentOutOfRangeException>().WithParameterName("PanelWidth");
    }

    [Fact]
    public void A_swept_table_without_radius_is_refused()
    {
        var act = () => PipeFrame.Generate(FrameCases.FenTable with { Shape = FrameShape.SweptTable });

        act.Should().Throw<ArgumentOutOfRangeException>().WithParameterName("SweepRadius");
    }

    private static FrameCase Swept(double radius, double degrees) => FrameCases.FenTable with
    {
        Shape = FrameShape.SweptTable,
        SweepRadius = Length.FromMillimeters(radius),
        SweepAngle = Angle.FromDegrees(degrees),
    };

    private static FramePoint PlaceOf(FrameResult frame, string joint) => frame.Joints.Single(other => other.Label == joint).Position;

    private static double PartsOf(FrameMember member) =>
        (member.CutLength + member.TakeOffFrom + member.TakeOffTo + (2 * member.InsertionGap)).Millimeters;
}
