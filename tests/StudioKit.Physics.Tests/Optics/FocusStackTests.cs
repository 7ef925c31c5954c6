using StudioKit.Physics.Optics;
using UnitsNet;

namespace StudioKit.Physics.Tests.Optics;

public sealed class FocusStackTests
{
    private static readonly FocusStackCase Beetle = new()
    {
        Depth = Length.FromMillimeters(8),
        DepthOfField = Length.FromMillimeters(0.640),
        Overlap = 0.3,
        RailPitch = Length.FromMillimeters(1),
        FrameInterval = Duration.FromSeconds(4),
        FlashesPerFrame = 2,
    };

    /// <summary>By hand: 0.640 mm of depth, 30 % overlap, step 0.448 mm; 8 mm take ⌈7.36/0.448⌉ + 1 = 18 or ⌈8/0.448⌉ + 1 = 19 frames.</summary>
    [Theory]
    [InlineData(false, 18)]
    [InlineData(true, 19)]
    public void A_beetle_8_mm_deep_at_life_size_takes_the_frames_worked_by_hand(bool onEndPlanes, int frames)
    {
        var plan = FocusStack.Plan(Beetle with { FocusOnEndPlanes = onEndPlanes });

        plan.LargestStep.Millimeters.Should().BeApproximately(0.448, 1e-12);
        plan.Frames.Should().Be(frames);
        plan.Flashes.Should().Be(2 * frames);
        plan.Time.Seconds.Should().BeApproximately(4 * (frames - 1), 1e-9);
    }

    [Fact]
    public void The_frames_cover_the_subject_with_no_gap_and_no_step_above_the_largest() =>
        Gen.Select(Gen.Double[0, 50], Gen.Double[0.05, 5], Gen.Double[0, 0.9], Gen.Bool).Sample((depth, slice, overlap, onEndPlanes) =>
        {
            var plan = FocusStack.Plan(Beetle with
            {
                Depth = Length.FromMillimeters(depth),
                DepthOfField = Length.FromMillimeters(slice),
                Overlap = overlap,
                FocusOnEndPlanes = onEndPlanes,
            });
            var covered = ((plan.Frames - 1) * plan.Step.Millimeters) + slice;
            return covered >= depth - 1e-9 && plan.Step.Millimeters <= plan.LargestStep.Millimeters * (1 + 1e-8);
        });

    [Fact]
    public void A_subject_within_the_depth_of_field_takes_one_frame()
    {
        var plan = FocusStack.Plan(Beetle with { Depth = Length.FromMillimeters(0.5) });

        plan.Frames.Should().Be(1);
        plan.Step.Should().Be(Length.Zero);
        plan.Time.Seconds.Should().Be(0);
    }

    [Fact]
    public void Turns_of_the_rail_follow_from_its_pitch()
    {
        FocusStack.Plan(Beetle with { RailPitch = Length.FromMillimeters(0.5) }).TurnsPerStep
            .Should().BeApproximately(2 * FocusStack.Plan(Beetle).TurnsPerStep!.Value, 1e-12);
        FocusStack.Plan(Beetle with { RailPitch = null }).TurnsPerStep.Should().BeNull();
    }

    [Fact]
    public void A_step_that_divides_the_subject_evenly_wants_no_extra_frame() =>
        FocusStack.Plan(Beetle with
        {
            Depth = Length.FromMillimeters(0.7),
            DepthOfField = Length.FromMillimeters(0.1),
            Overlap = 0,
        }).Frames.Should().Be(7);

    [Theory]
    [InlineData(-1, 0.6, 0.3)]
    [InlineData(8, 0, 0.3)]
    [InlineData(8, 0.6, 1)]
    [InlineData(8, 0.6, -0.1)]
    [InlineData(8, 0.6, double.NaN)]
    [InlineData(1e9, 0.1, 0.3)]
    public void A_stack_that_cannot_be_taken_is_refused(double depth, double slice, double overlap) =>
        FluentActions.Invoking(() => FocusStack.Plan(Beetle with
        {
            Depth = Length.FromMillimeters(depth),
            DepthOfField = Length.FromMillimeters(slice),
            Overlap = overlap,
        })).Should().Throw<ArgumentOutOfRangeException>();
}
