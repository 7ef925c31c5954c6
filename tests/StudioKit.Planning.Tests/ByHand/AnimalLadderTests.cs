namespace StudioKit.Planning.Tests.ByHand;

/// <summary>From an animal's length to its card: a sensor 36 mm wide shows 144 mm at 1:4, 72 mm at 1:2, 36 mm at 1:1.</summary>
public sealed class AnimalLadderTests
{
    private const string Daylight =
        """
          - name: scene
            kind: daylight-fill
            magnifications: [1:2]
            aperture: f/11
            ambient: EV 12
            lights:
              - {flash: two, role: fill, distance: 120 cm}

        """;

    [Fact]
    public void Each_length_leads_to_the_closest_framing_of_each_set_up_that_shows_it_whole()
    {
        var plan = KitText.Plan(HandKit.Of(HandKit.White + Daylight).Replace("magnifications: [1:2], mass", "magnifications: [1:4, 1:2, 1:1], mass", StringComparison.Ordinal));

        plan.AnimalLadder.Select(rung => $"{rung.Over.Millimeters:0} to {rung.UpTo.Millimeters:0}: {string.Join(", ", rung.Cards.Select(card => $"{card.SetUp} {card.Framing}"))}").Should().Equal(
            "0 to 36: white rush 60 at 1:1, scene rush 60 at 1:2", "36 to 72: white rush 60 at 1:2, scene rush 60 at 1:2", "72 to 144: white rush 60 at 1:4");
    }

    [Theory]
    [InlineData("fen-edge.yaml")]
    [InlineData("tall-stand.yaml")]
    public void No_other_framing_of_the_set_up_shows_the_animals_of_a_rung_whole_and_larger(string kit)
    {
        var plan = KitText.Demo(kit);
        var usable = plan.Exposures.Where(exposure => exposure.IsUsable).ToList();

        plan.AnimalLadder.Should().NotBeEmpty();
        plan.AnimalLadder[^1].UpTo.Millimeters.Should().BeApproximately(usable.Max(exposure => exposure.Framing.LongestWhole.Millimeters), 0.1);
        foreach (var rung in plan.AnimalLadder)
        {
            foreach (var card in rung.Cards)
            {
                var whole = plan.Framings.Single(framing => framing.Name == card.Framing).LongestWhole;
                whole.Millimeters.Should().BeGreaterThanOrEqualTo(rung.UpTo.Millimeters - 0.1);
                usable.Where(exposure => exposure.SetUp == card.SetUp && exposure.Framing.LongestWhole >= rung.UpTo).Min(exposure => exposure.Framing.LongestWhole.Millimeters)
                    .Should().BeApproximately(whole.Millimeters, 0.1);
            }
        }
    }

    [Fact]
    public void A_framing_is_filled_with_a_tenth_clear_at_either_end_and_shows_no_more_than_its_field() =>
        HandKit.Plan(HandKit.White).Framings.Single().Should().Match<FramingPlan>(framing =>
            Math.Abs(framing.LongestWhole.Millimeters - 72) < 1e-6 && Math.Abs(framing.FillsFrame.Millimeters - 57.6) < 1e-6);
}
