namespace StudioKit.Planning.Tests.ByHand;

/// <summary>What a lens reaches with what is on hand, and what fits its frame.</summary>
public sealed class FramingTests
{
    // m = (own travel + tube)/f: a 60 mm lens that comes to 1:2 by itself reaches 1/2 + tube/60. A tenth beside the wish still frames the subject (common
    // practice, no source): 25 mm reach 0.917, 22 mm only 0.867.
    [Theory]
    [InlineData(30, 1.0)]
    [InlineData(25, 0.9167)]
    [InlineData(22, null)]
    public void A_magnification_a_tenth_beside_the_wish_will_do(int tube, double? reached)
    {
        var framing = KitText.Plan(HandKit.Of($"accessories: {{extension-tubes: [{{name: tube, length: {tube} mm}}]}}\n")
            .Replace("largest-magnification: 1:1, magnifications: [1:2]", "largest-magnification: 1:2, magnifications: [1:1]", StringComparison.Ordinal)).Framings.Single();

        framing.Reached.Should().Be(reached is not null);
        framing.Magnification.Value.Should().BeApproximately(reached ?? 1, 0.0005);
        framing.Caveats.Any(caveat => caveat.Contains("not met exactly", StringComparison.Ordinal)).Should().Be(reached < 1);
    }

    // Half life size of 36 mm × 24 mm is 72 mm × 48 mm: what is longer than 48 mm lies along the frame. The longest comes first, the depth is for it.
    [Fact]
    public void A_subject_fits_that_is_no_longer_than_the_frame()
    {
        var exposure = HandKit.Plan(
            """
            subjects:
              - {name: mayfly, group: flying-insects, length: 12 mm}
              - {name: dragonfly, group: flying-insects, length: 70 mm}
              - {name: newt, group: amphibians, length: 74 mm}

            """ + HandKit.White).Exposures.Single();

        exposure.Subjects.Should().Equal("dragonfly", "mayfly");
        exposure.Sharpness.ForSubject.Should().Be("dragonfly");
    }
}
