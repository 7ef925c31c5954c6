using StudioKit.Physics.Structure.Frames;

namespace StudioKit.Physics.Tests.Structure.Frames;

public sealed class CutListTests
{
    private const double Step = 0.5;

    [Fact]
    public void Rounding_is_taken_up_in_the_sockets_and_the_frame_keeps_its_size() =>
        FrameCases.Any.Sample(
            design =>
            {
                var frame = PipeFrame.Generate(design);
                foreach (var entry in CutList.Of(frame))
                {
                    var steps = entry.Rounded.Millimeters / Step;
                    steps.Should().BeApproximately(Math.Round(steps), 1e-6);
                    (entry.Rounded + (2 * entry.TakenUpPerEnd)).Millimeters.Should().BeApproximately(entry.Exact.Millimeters, 1e-9);
                    (design.InsertionGap + entry.TakenUpPerEnd).Millimeters.Should().BeGreaterThan(-0.001);
                    Math.Abs(entry.TakenUpPerEnd.Millimeters).Should().BeLessThanOrEqualTo((Step / 2) + 1e-6);
                }
            },
            iter: 200);

    [Fact]
    public void No_piece_is_lost_or_counted_twice() =>
        FrameCases.Any.Sample(
            design =>
            {
                var frame = PipeFrame.Generate(design);
                var list = CutList.Of(frame);
                Assert.Equal(frame.Members.Select(member => member.Label).Order(StringComparer.Ordinal), list.SelectMany(entry => entry.Members).Order(StringComparer.Ordinal));
                list.Sum(entry => entry.Count * entry.Exact.Millimeters).Should().BeApproximately(frame.PipeLength.Millimeters, 0.01 * frame.Members.Count);
            },
            iter: 200);
}
