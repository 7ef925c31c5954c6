using StudioKit.Planning.Studio;

namespace StudioKit.Planning.Tests.ByHand;

/// <summary>A flash is held by a rail where there is room for one under it, else it lies on the ground.</summary>
public sealed class CradleTests
{
    // The sheet lies 500 mm over the ground. A rail stands 60 mm under the bright window (the kit's default), and a flash on the ground has its window
    // about 40 mm up (common practice, no source): from 500 − 60 − 40 = 400 mm under the sheet on it lies there, and a
    // frame that was asked for a rail so low would have to send it to a stand of its own.
    [Theory]
    [InlineData(250, true)]
    [InlineData(330, true)]
    [InlineData(410, false)]
    [InlineData(430, false)]
    [InlineData(455, false)]
    public void A_flash_that_leaves_less_than_its_own_height_over_the_ground_lies_on_it(int distance, bool held)
    {
        var plan = HandKit.Plan(
            HandKit.White.Replace("distance: 45 cm", FormattableString.Invariant($"distance: {distance} mm"), StringComparison.Ordinal),
            panel: "width: 400 mm, depth: 400 mm");

        plan.Frame!.LowerFlashes.Single().Support.Should().Be(held ? FlashSupport.Cradle : FlashSupport.Ground);
        plan.Frame.Assembly.Any(step => step.StartsWith("Lay ", StringComparison.Ordinal) && step.Contains("on the ground", StringComparison.Ordinal)).Should().Be(!held);
    }
}
