using StudioKit.Kits.SetUps;
using StudioKit.Planning.Changes;

namespace StudioKit.Planning.Tests.ByHand;

/// <summary>The power below is rounded up to a click, because a point that is a little too dark is grey and one that is a little too bright is white.</summary>
public sealed class PowerBelowTests
{
    // A panel that lets through 2^(−i/15) of the light moves the power asked for by fifteenths of a stop through all places between two clicks.
    public static TheoryData<double> Transmittances => [.. Enumerable.Range(0, 15).Select(i => 0.7 * Math.Pow(2, -i / 15.0))];

    [Theory]
    [MemberData(nameof(Transmittances))]
    public void The_darkest_visible_point_is_white_by_the_target_and_less_than_a_click_more(double transmittance)
    {
        var plan = KitText.Plan(HandKit.Of(HandKit.White, panel: "width: 400 mm, depth: 400 mm")
            .Replace("transmittance: 0.5", FormattableString.Invariant($"transmittance: {transmittance:0.0000}"), StringComparison.Ordinal));
        var exposure = plan.Exposures.Single();

        exposure.Verdict.Missed.Should().BeEmpty();
        exposure.WhiteMargin!.Value.Value.Should().BeInRange((1.0 / 3) - 1e-6, (2.0 / 3) - 1e-6);
        plan.PanelLights.Single().Framings.Single().Darkest.Margin.Value.Should().BeInRange((1.0 / 3) - 1e-6, (2.0 / 3) - 1e-6);
    }

    // By hand: 250/100·GN² = 2560 cd·s at full power (ISO 1230 with C = 250 of ISO 2720); 45 cm to the sheet: 12,642 lx·s straight above. Half comes
    // through and 1/π of it towards the camera: 2012 cd·s/m². At f/16 and half life size N_e = 24: H = 0.65·2012/576 = 2.270 lx·s against
    // 78/S = 0.195 at ISO 400 (ISO 12232): 3.54 stops over clipping at full power. In the corner, 36 mm and 24 mm aside, cosⁿ⁺³ with n = 5.9 across
    // and 12.5 up (half as bright at the edge of a 35 mm lens's field), 7.9 in between: 0.07 stop less. The target of ⅓ stop leaves 3.14 stops to
    // turn down, which is 9 whole clicks: 1/8.
    [Fact]
    public void A_flash_of_GN_32_below_takes_an_eighth()
    {
        var exposure = HandKit.Plan(HandKit.White, panel: "width: 400 mm, depth: 400 mm").Exposures.Single();

        exposure.Lights.Single(light => light.Role == LightRole.Below).Power.Nominal.Should().Be("1/8");
        exposure.Iso.Nominal.Should().Be("ISO 400");
    }

    // With 3.14 stops to turn down (above), a dial of halves stops at 3 (1/8), one of whole stops as well; with ISO 320, 2.82 stops are left, where thirds
    // give 2 2/3, halves 2 1/2 and whole stops 2.
    [Theory]
    [InlineData("third", "1/6.4 (1/8 + 1/3)")]
    [InlineData("half", "1/5.6 (1/8 + 1/2)")]
    [InlineData("whole", "1/4")]
    public void The_dial_of_the_flash_decides_which_power_is_printed(string step, string power)
    {
        var plan = HandKit.Plan(
            HandKit.White.Replace("iso: 400", "iso: 320", StringComparison.Ordinal), one: $"power-step: {step}", panel: "width: 400 mm, depth: 400 mm");
        var exposure = plan.Exposures.Single();

        exposure.Iso.Nominal.Should().Be("ISO 320");
        exposure.Lights.Single(light => light.Role == LightRole.Below).PowerText.Should().Be(power);
        var brighter = plan.Advice.Of(exposure).Symptoms.Single(symptom => symptom.Seen == Symptom.GreyCorners).Advice?.Promise.Lights[0].Mark;
        var veils = (exposure.BrightestMargin + exposure.Lights[0].DialStep)!.Value.Value > exposure.HighestMargin!.Value.Value;
        brighter.Should().Be(veils ? null : exposure.Lights[0].Mark.Brighter, "one click of its own dial is the next step up, unless it veils");
        exposure.Bracket[0].Value.Should().BeApproximately(step switch { "third" => 2.0 / 3, "half" => 0.5, _ => 1 }, 1e-9);
    }
}
