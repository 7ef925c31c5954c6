using StudioKit.Planning.Advising;
using StudioKit.Planning.Changes;

namespace StudioKit.Planning.Tests.ByHand;

/// <summary>A glowing sheet lights the underside too: from about a stop over the light from above legs and hairs are eaten (common practice, no source).</summary>
public sealed class UplightTests
{
    // A flash of GN 32 gives 2560 cd·s (ISO 1230 with C = 250). From 45 cm through half a sheet 6321 lx·s leave it, all of which an underside
    // close over it gets. Right exposure from above takes 250·24²/400 = 360 lx·s at f/24 and ISO 400, give or take half a click of the dial. A margin of ⅔ stop
    // takes 1/6.4 below (PowerBelowTests: 3.14 stops to turn down for ⅓): 995 lx·s, log₂(995/360) = 1.47. No margin at all takes 1/10: 627 lx·s, 0.80.
    [Theory]
    [InlineData("2/3 stop", true, 1.47)]
    [InlineData("0 stops", false, 0.80)]
    public void Glow_of_a_stop_over_the_light_from_above_is_warned_of(string margin, bool warned, double glow)
    {
        var exposure = Only(margin);

        exposure.IsUsable.Should().BeTrue("a warning is no limit");
        exposure.Uplight!.Value.Value.Should().BeApproximately(glow, (1.0 / 6) + 0.03, "half a click, and what the edges of the sheet lack");
        exposure.Warnings.Select(warning => warning.Seen).Should().Equal(warned ? [Symptom.EatenLegs] : []);
    }

    [Fact]
    public void What_is_turned_against_eaten_legs_leaves_the_background_white()
    {
        var plan = Plan("2/3 stop");

        var (card, promise) = (plan.Exposures.Single(), plan.Advice.Against(plan.Exposures.Single(), Symptom.EatenLegs)!.Advice!.Promise);

        (card.Uplight - promise.Uplight)!.Value.Value.Should().BeApproximately(1.0 / 3, 1e-6, "a click of the dial");
        promise.WhiteMargin!.Value.Value.Should().BeGreaterThanOrEqualTo(-1e-6);
        promise.Lights[0].Power.Nominal.Should().Be("1/8");
    }

    // What a plan is asked for one symptom at a time it says of all together as well.
    [Fact]
    public void Advice_against_one_symptom_is_that_of_the_card()
    {
        var (alone, card) = (KitPlanner.Plan(Read("2/3 stop")), KitPlanner.Plan(Read("2/3 stop")));
        var symptoms = card.Advice.Of(card.Exposures.Single()).Symptoms;

        symptoms.Should().NotBeEmpty();
        symptoms.Select(symptom => symptom.Seen).Should().OnlyContain(seen => Same(alone.Advice.Against(alone.Exposures.Single(), seen)!, symptoms.Single(symptom => symptom.Seen == seen)));
        card.Advice.Against(card.Exposures.Single(), symptoms[0].Seen).Should().BeSameAs(symptoms[0]);
    }

    // Nothing from above to compare with: only a silhouette is left, and no legs to eat.
    [Fact]
    public void Without_light_from_above_there_is_nothing_to_warn_of() =>
        HandKit.Plan(HandKit.White.Replace("      - {flash: two, role: above, distance: 40 cm}\n", "", StringComparison.Ordinal), panel: "width: 400 mm, depth: 400 mm")
            .Exposures.Single().Warnings.Should().BeEmpty();

    private static bool Same(SymptomAdvice one, SymptomAdvice other) =>
        one.Room == other.Room && one.TurnsPolariser == other.TurnsPolariser && (one.Advice?.Changes ?? []).SequenceEqual(other.Advice?.Changes ?? []);

    private static ExposurePlan Only(string margin) => Plan(margin).Exposures.Single();

    private static Plan Plan(string margin) => KitText.Plan(Text(margin));

    private static Kits.KitReadResult Read(string margin) => KitText.Read(Text(margin));

    private static string Text(string margin) => HandKit.Of(HandKit.White + $"    target-white-margin: {margin}\n", panel: "width: 400 mm, depth: 400 mm");
}
