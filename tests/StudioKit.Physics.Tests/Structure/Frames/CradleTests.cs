using StudioKit.Physics.Structure.Frames;
using UnitsNet;

namespace StudioKit.Physics.Tests.Structure.Frames;

/// <summary>Several flashes under one panel, on the fen's table: 600 × 400 mm, 500 mm high, 20 mm pipe, fittings of 11 + 16 mm.</summary>
/// <remarks>
/// By hand: rails at 500 − 10 − 4 = 486 mm, feet at 20 mm, the legs at ±290 and ±190 mm. Two tees fill their sockets 2·(11 + 16) = 54 mm apart, so
/// a lower rail lies from 20 + 16 + 27 = 63 mm to 486 − 54 = 432 mm up and a tee on it at most 290 − 54 = 236 mm to the side.
/// </remarks>
public sealed class CradleTests
{
    [Fact]
    public void A_second_flash_at_another_height_gets_stretchers_a_rail_and_a_tee_of_its_own()
    {
        var (one, two) = (Of(At(300, 0, 0)), Of(At(300, 0, 0), At(200, 0, 0)));

        two.Problems.Should().BeEmpty();
        two.Cradles.Select(cradle => Math.Round(cradle.BrightWindow.Up, 6)).Should().Equal(0.200, 0.300);
        Rails(two, FrameMemberRole.CradleRail).Should().HaveCount(2).And.OnlyHaveUniqueItems();
        two.FittingCounts[FittingKind.Tee].Should().Be(2 * one.FittingCounts[FittingKind.Tee]);
        foreach (var cradle in two.Cradles)
        {
            var joint = two.Joints.Single(joint => joint.Label == cradle.Joint);
            (joint.Position - cradle.Position).Norm.Should().BeLessThan(1e-9);
            joint.Ports.Should().ContainSingle(port => port.Member == null && port.Direction == new FramePoint(0, 0, 1));
        }
    }

    [Fact]
    public void Flashes_at_one_height_share_the_stretchers_and_those_in_one_line_the_rail()
    {
        var behind = Of(At(300, 0, -60), At(300, 0, 60));
        var beside = Of(At(300, -80, 0), At(300, 80, 0));

        behind.Problems.Concat(beside.Problems).Should().BeEmpty();
        Rails(behind, FrameMemberRole.CradleRail).Should().HaveCount(2);
        Rails(beside, FrameMemberRole.CradleRail).Should().ContainSingle();
        behind.Cradles.Concat(beside.Cradles).Should().OnlyContain(cradle => cradle.Joint != null);
        beside.Cradles.Select(cradle => cradle.Joint).Should().OnlyHaveUniqueItems();
    }

    [Fact]
    public void Two_lightings_share_the_tee_of_one_place_and_two_flashes_that_are_up_at_once_cannot()
    {
        var byTurns = Of(At(300, 0, 0) with { UpFor = ["white"] }, At(300, 0, 0) with { UpFor = ["pale"] });
        var atOnce = Of(At(300, 0, 0) with { UpFor = ["white"] }, At(300, 0, 0) with { UpFor = ["white"] });

        byTurns.Cradles.Select(cradle => cradle.Joint).Distinct().Should().ContainSingle().Which.Should().NotBeNull();
        byTurns.Members.Should().BeEquivalentTo(Of(At(300, 0, 0)).Members);
        atOnce.Cradles[1].Fault!.Kind.Should().Be(CradleFaultKind.HeadMeetsAnother);
        atOnce.Refused.Should().Be(1);
        atOnce.GoesTogether.Should().BeTrue("the pipes do not need the flash that the frame does not carry");
    }

    [Theory]
    [InlineData(300, 0, 0, 260, 0, 0, 14)]
    [InlineData(300, 0, 0, 300, 0, 40, 14)]
    [InlineData(300, -20, 0, 300, 20, 0, 14)]
    [InlineData(300, 0, 0, 300, 0, 54, null)]
    [InlineData(300, 0, 0, 246, 0, 90, null)]
    public void Tees_of_two_rails_lie_54_mm_apart_or_the_second_flash_has_none(
        double below, double right, double back, double secondBelow, double secondRight, double secondBack, int? missing)
    {
        var second = Of(At(below, right, back), At(secondBelow, secondRight, secondBack)).Cradles[1];

        (second.Joint is null).Should().Be(missing is not null);
        if (missing is { } short14)
        {
            second.Fault!.Kind.Should().Be(CradleFaultKind.TooNearAnotherRail);
            second.Fault.By.Millimeters.Should().BeApproximately(short14, 1e-6);
        }
    }

    /// <summary>The head of the lower flash reaches from its rail, 140 mm up, to its window at 200 mm; a rail at 194 mm would go through it within 20 + 10 mm of its middle.</summary>
    [Theory]
    [InlineData(25, CradleFaultKind.TooNearAnotherRail)]
    [InlineData(35, null)]
    public void No_rail_goes_through_the_head_of_another_flash(double back, CradleFaultKind? fault)
    {
        var low = At(300, 0, 0) with { HeadWidth = Length.FromMillimeters(70), HeadHeight = Length.FromMillimeters(40) };

        (Of(low, At(246, 0, back)).Cradles[1].Fault?.Kind).Should().Be(fault);
        (Of(At(246, 0, back), low).Cradles[1].Fault?.Kind).Should().Be(fault);
    }

    [Theory]
    [InlineData(480, 0, 0, CradleFaultKind.TooLow)]
    [InlineData(5, 0, 0, CradleFaultKind.TooNearTopRails)]
    [InlineData(300, 240, 0, CradleFaultKind.OutsideLegs)]
    [InlineData(300, 0, -140, CradleFaultKind.OutsideLegs)]
    public void A_flash_that_the_frame_cannot_hold_says_why(double below, double right, double back, CradleFaultKind kind)
    {
        var frame = Of(At(300, 0, 0), At(below, right, back));

        frame.Cradles[0].Joint.Should().NotBeNull();
        frame.Cradles[1].Fault!.Kind.Should().Be(kind);
        (frame.Refused, frame.Problems.Count).Should().Be((1, 0));
    }

    /// <summary>Legs at ±290 mm, 10 mm of pipe inwards: a head 200 mm wide goes between them up to 290 − 10 − 100 = 180 mm to the side.</summary>
    [Theory]
    [InlineData(179, null)]
    [InlineData(185, 5)]
    public void A_wide_head_stays_between_the_legs(double right, int? over)
    {
        var cradle = Of(At(300, right, 0) with { HeadWidth = Length.FromMillimeters(200) }).Cradles.Single();

        (cradle.Fault?.Kind).Should().Be(over is null ? null : CradleFaultKind.HeadOutsideLegs);
        (cradle.Fault?.By.Millimeters ?? 0).Should().BeApproximately(over ?? 0, 1e-6);
    }

    /// <summary>
    /// By the heights and places above: a rail 60 mm under a window 480 mm below the panel lies 40 mm under the ground, 103 mm too low; 5 mm below it, 3 mm too high; a tee at
    /// 240 mm 4 mm too far to the side, one 140 mm to the front 190 − 54 = 136 mm beyond what goes by 4 mm.
    /// </summary>
    [Theory]
    [InlineData(480, 0, 0, CradleMoveKind.Up, 103)]
    [InlineData(480, 0, 0, CradleMoveKind.RaisePanel, 103)]
    [InlineData(5, 0, 0, CradleMoveKind.Down, 3)]
    [InlineData(300, 240, 0, CradleMoveKind.Left, 4)]
    [InlineData(300, -240, 0, CradleMoveKind.Right, 4)]
    [InlineData(300, 0, -140, CradleMoveKind.Back, 4)]
    [InlineData(300, 0, 140, CradleMoveKind.Front, 4)]
    public void A_refused_flash_is_carried_after_the_move_that_it_lacks(double below, double right, double back, CradleMoveKind kind, int millimeters)
    {
        var moves = CradleMoves.Of(FrameCases.FenTable with { Cradles = [At(below, right, back)] }, 0);

        moves.Single(move => move.Kind == kind).By.Millimeters.Should().BeInRange(millimeters, millimeters + 1, "what fits to the micrometre may miss by rounding");
        moves[0].By.Should().Be(moves.Min(move => move.By));
    }

    /// <summary>
    /// Tees lie 54 mm apart, which a rail 40 mm over that of a flash before it would keep after 14 mm; but that flash reaches from its rail, 140 mm up, to its window at
    /// 200 mm, and the rail from 180 mm clears it after 20 mm. Down by 40 mm it lies on the other's level, where the two share the tee in turn.
    /// </summary>
    [Fact]
    public void A_flash_that_another_is_in_the_way_of_goes_past_it_or_onto_its_rail()
    {
        var moves = CradleMoves.Of(FrameCases.FenTable with { Cradles = [At(300, 0, 0), At(260, 0, 0)] }, 1);

        moves.Select(move => move.Kind).Should().Equal(CradleMoveKind.Up, CradleMoveKind.Down);
        moves[0].By.Millimeters.Should().BeInRange(20, 21);
        moves[1].By.Millimeters.Should().Be(40);
    }

    [Fact]
    public void A_flash_after_its_move_is_carried_and_no_other_is_refused() => FrameCases.Any.Sample(
        design =>
        {
            var frame = PipeFrame.Generate(design);
            for (var i = 0; i < frame.Cradles.Count && design.Shape != FrameShape.LowGround; i++)
            {
                foreach (var move in frame.Cradles[i].Fault is null ? [] : CradleMoves.Of(design, i).Where(move => move.Kind != CradleMoveKind.RaisePanel))
                {
                    var after = PipeFrame.Generate(design with { Cradles = [.. design.Cradles.Select((cradle, j) => i == j ? Moved(cradle, move) : cradle)] });

                    after.Cradles[i].Fault.Should().BeNull();
                    after.Refused.Should().BeLessThan(frame.Refused);
                    after.Problems.Count.Should().BeLessThanOrEqualTo(frame.Problems.Count);
                }
            }
        },
        iter: 40);

    [Fact]
    public void A_move_is_asked_for_a_flash_of_the_frame()
    {
        var act = () => CradleMoves.Of(FrameCases.FenTable, 0);

        act.Should().Throw<ArgumentOutOfRangeException>();
    }

    [Fact]
    public void A_low_frame_leaves_its_flashes_on_the_ground_and_says_how_high_their_windows_stand()
    {
        var frame = PipeFrame.Generate(FrameCases.FenTable with
        {
            Shape = FrameShape.LowGround,
            Height = Length.FromMillimeters(200),
            Cradles = [At(150, 0, 0), At(250, 0, 0)],
        });

        frame.Cradles.Select(cradle => cradle.Fault!.Kind).Should().Equal(CradleFaultKind.LowFrame, CradleFaultKind.UnderGround);
        frame.Caveats.Where(caveat => caveat.Kind == FrameCaveatKind.FlashOnGround).Select(caveat => Math.Round(caveat.Size!.Value.Millimeters, 6)).Should().Equal(50, -50);
        frame.Refused.Should().Be(1);
    }

    private static FlashCradleCase Moved(FlashCradleCase cradle, CradleMove move)
    {
        var (up, right, back) = move.Kind switch
        {
            CradleMoveKind.Up => (1, 0, 0),
            CradleMoveKind.Down => (-1, 0, 0),
            CradleMoveKind.Left => (0, -1, 0),
            CradleMoveKind.Right => (0, 1, 0),
            CradleMoveKind.Front => (0, 0, -1),
            _ => (0, 0, 1),
        };
        return cradle with
        {
            BelowPanel = cradle.BelowPanel - (up * move.By),
            OffsetRight = cradle.OffsetRight + (right * move.By),
            OffsetBack = cradle.OffsetBack + (back * move.By),
        };
    }

    private static FlashCradleCase At(double below, double right, double back) => new(
        Length.FromMillimeters(below), Length.FromMillimeters(right), Length.FromMillimeters(back), Length.FromMillimeters(60));

    private static FrameResult Of(params FlashCradleCase[] cradles) => PipeFrame.Generate(FrameCases.FenTable with { Cradles = cradles });

    // Height and line of every rail of a role, however many pieces it is in.
    private static List<(double Up, double Back)> Rails(FrameResult frame, FrameMemberRole role) =>
        [.. frame.Members.Where(member => member.Role == role)
            .Select(member => frame.Joints.Single(joint => joint.Label == member.From).Position)
            .Select(place => (Math.Round(place.Up, 6), Math.Round(place.Back, 6))).Distinct()];
}
