using StudioKit.Planning.Advising;
using StudioKit.Planning.Changes;
using StudioKit.Planning.Tests.ByHand;

namespace StudioKit.Planning.Tests.Advising;

/// <summary>What a card with its habitat behind says when the light is not as metered, and of the polariser.</summary>
public sealed class HabitatAdviceTests
{
    private const string Polariser = "accessories: {filters: [{name: polariser, kind: polariser, loss: 1.5 stops}, {name: grey, kind: neutral-density, loss: 3 stops}]}\n";

    // The flash is over long before the shutter closes: a shorter time darkens the habitat and leaves the fill alone, as long as it is no shorter than sync.
    [Fact]
    public void A_habitat_too_bright_takes_the_shutter_before_ISO_and_aperture()
    {
        var (card, advice) = Day("shutter: 1/60 s, iso: 500, ambient: EV 11,");
        card.Shutter.Seconds.Should().BeGreaterThan(1.0 / 101, "there is a stop to go to the sync speed of 1/200 s");

        var then = Of(advice, Symptom.SceneBright).Advice!.Promise;

        (then.Iso, then.Aperture).Should().Be((card.Iso, card.Aperture));
        Math.Log2(card.Shutter.Seconds / then.Shutter.Seconds).Should().BeApproximately(1, 1e-6);
    }

    [Fact]
    public void At_the_sync_speed_the_ISO_gives_way_and_the_fill_is_set_anew()
    {
        var (card, advice) = Day("shutter: 1/200 s, ambient: EV 12,");

        var then = Of(advice, Symptom.SceneBright).Advice!.Promise;

        then.Shutter.Should().Be(card.Shutter);
        Math.Log2(card.Iso.Value / then.Iso.Value).Should().BeApproximately(1, 0.34, "a stop, in clicks of the dial");
        Math.Log2(then.Lights[0].Power.Fraction / card.Lights[0].Power.Fraction).Should().BeApproximately(1, 0.34, "half the speed asks twice as much of the fill");
    }

    [Theory]
    [InlineData("daylight-fill")]
    [InlineData("low-light-fill")]
    public void A_habitat_too_dark_has_its_line_too(string kind)
    {
        var (card, advice) = Day("shutter: 1/60 s, ambient: EV 11,", kind: kind);

        var then = Of(advice, Symptom.SceneDark).Advice!.Promise;

        (then.Iso.Value * then.Shutter.Seconds / card.Iso.Value / card.Shutter.Seconds).Should().BeApproximately(2, 0.5);
    }

    [Theory]
    [InlineData(Symptom.FlashShows, -1)]
    [InlineData(Symptom.SubjectDark, 1)]
    public void A_fill_that_shows_is_turned_down_and_one_that_does_not_lift_the_subject_up(Symptom seen, int clicks)
    {
        var (card, advice) = Day("ambient: EV 12,");

        var then = Of(advice, seen).Advice!.Promise;

        Math.Log2(then.Lights[0].Power.Fraction / card.Lights[0].Power.Fraction).Should().BeApproximately(clicks / 3.0, 1e-6);
    }

    // The ambient light gets through a stop more than planned for: ISO or shutter keep it out.
    [Fact]
    public void A_black_background_that_shows_without_flash_has_daylight_kept_out()
    {
        var plan = HandKit.Plan("set-ups: [{name: black, kind: dark-background, ambient: EV 8, aperture: f/8, shutter: 1/200 s, iso: 400, background-distance: 9 m, lights: [{flash: one, role: key, distance: 1 m}]}]\n");
        var card = plan.Exposures.Single();

        var then = Of(plan.Advice.Of(card), Symptom.BackgroundShowsUnlit).Advice!.Promise;

        (then.Iso.Value * then.Shutter.Seconds).Should().BeLessThan(card.Iso.Value * card.Shutter.Seconds * 0.85);
    }

    [Fact]
    public void A_polariser_is_turned_where_there_is_one()
    {
        var (card, advice) = Day("ambient: EV 12, filter: polariser,", Polariser);

        Of(advice, Symptom.Shine).Should().Match<SymptomAdvice>(shine => shine.TurnsPolariser && shine.Advice == null);
        card.TestSteps.Should().Contain(TestStep.TurnPolariser, "it is turned on a wet leaf before the animal is fetched");
    }

    [Fact]
    public void A_polariser_in_the_bag_is_put_before_the_lens()
    {
        var (card, advice) = Day("ambient: EV 12,", Polariser);

        Of(advice, Symptom.Shine).Advice!.Promise.Filter.Should().Be("polariser");
        card.TestSteps.Should().NotContain(TestStep.TurnPolariser);
    }

    [Theory]
    [InlineData("", "")]
    [InlineData("filter: grey,", "accessories: {filters: [{name: grey, kind: neutral-density, loss: 3 stops}]}\n")]
    public void Where_the_bag_holds_no_polariser_none_is_spoken_of(string filter, string accessories)
    {
        var (card, advice) = Day($"ambient: EV 12, {filter}", accessories);

        advice.Symptoms.Should().NotContain(symptom => symptom.Seen == Symptom.Shine);
        card.TestSteps.Should().NotContain(TestStep.TurnPolariser);
    }

    private static (ExposurePlan Card, CardAdvice Advice) Day(string more, string accessories = "", string kind = "daylight-fill")
    {
        var plan = KitText.Plan(HandKit.Of(
            $$"""
            {{accessories}}set-ups:
              - {name: day, kind: {{kind}}, aperture: f/8, background-distance: 3 m, {{more}} lights: [{flash: one, role: fill, distance: 2 m}]}

            """));
        var card = plan.Exposures.Single();
        card.IsUsable.Should().BeTrue();
        return (card, plan.Advice.Of(card));
    }

    private static SymptomAdvice Of(CardAdvice advice, Symptom seen) => advice.Symptoms.Single(symptom => symptom.Seen == seen);
}
