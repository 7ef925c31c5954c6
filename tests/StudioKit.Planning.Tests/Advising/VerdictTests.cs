using StudioKit.Physics.Exposure.SetUps;
using StudioKit.Planning.Tests.ByHand;

namespace StudioKit.Planning.Tests.Advising;

public sealed class VerdictTests
{
    // JCGM 100:2008, table G.1 (from memory): the normal distribution by its published values, between which a straight line is good to 0.01.
    private static readonly (double Deviations, double Share)[] Normal =
        [(0, 0.5), (0.5, 0.6915), (1, 0.8413), (1.5, 0.9332), (2, 0.9772), (2.5, 0.9938), (3, 0.9987), (6, 1)];

    [Fact]
    public void A_first_frame_is_right_when_its_darkest_corner_clips_and_its_brightest_does_not_veil()
    {
        var exposures = KitText.Demo("fen-edge.yaml").Exposures.Where(exposure => exposure.OnPanel).ToList();

        foreach (var exposure in exposures)
        {
            var sigma = exposure.Uncertainty.Value;
            var grey = 1 - Share(exposure.WhiteMargin!.Value.Value / sigma);
            var veils = 1 - Share((exposure.HighestMargin!.Value.Value - exposure.BrightestMargin!.Value.Value) / sigma);

            exposure.Verdict.GreyCorner.Should().BeApproximately(grey, 0.01);
            exposure.Verdict.FirstFrame.Should().BeApproximately(1 - grey - veils, 0.02);
        }
    }

    // One metre before its background a key at 50 cm lights it by 2·log₂ 3 = 3.17 stops less than the subject; four were asked, so it misses by 0.83.
    [Theory]
    [InlineData("1 m", "", Verdict.DoesNotWork)]
    [InlineData("1 m", "± 1.5 stop", Verdict.AtTheEdge)]
    [InlineData("2 m", "", Verdict.Works)]
    public void A_limit_missed_by_less_than_the_plan_is_unsure_of_is_at_the_edge(string behind, string known, Verdict verdict)
    {
        var exposure = KitText.Plan(HandKit.Of(
            $$"""
            set-ups:
              - {name: black, kind: dark-background, aperture: f/16, shutter: 1/200 s, iso: 400, ambient: EV 0, background-distance: {{behind}}, lights: [{flash: one, role: key, distance: 50 cm}]}

            """).Replace("guide-number: \"32 m @ ISO 100, 35 mm", $"guide-number: \"32 m @ ISO 100, 35 mm {known}", StringComparison.Ordinal)).Exposures.Single();

        exposure.Verdict.Verdict.Should().Be(verdict);
        if (verdict != Verdict.Works)
        {
            exposure.Verdict.Binding.Should().BeOfType<MissedLimit.LightsBackground>().Which.By!.Value.Value.Should().BeApproximately(4 - (2 * Math.Log2(3)), 0.2);
        }
    }

    [Fact]
    public void What_works_misses_nothing_and_what_does_not_says_by_how_much() =>
        new[] { "fen-edge.yaml", "heath-ultralight.yaml", "tall-stand.yaml" }.SelectMany(kit => KitText.Demo(kit).Exposures)
            .Should().NotContain(exposure => (exposure.Verdict.Verdict == Verdict.Works) != (exposure.Verdict.Missed.Count == 0));

    private static double Share(double deviations)
    {
        if (deviations < 0)
        {
            return 1 - Share(-deviations);
        }

        var above = Math.Max(1, Array.FindIndex(Normal, row => row.Deviations >= deviations));
        var (low, high) = (Normal[above - 1], Normal[above]);
        return low.Share + ((high.Share - low.Share) * (deviations - low.Deviations) / (high.Deviations - low.Deviations));
    }
}
