using StudioKit.Kits.Cards;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Exposure.SetUps;
using StudioKit.Planning;
using StudioKit.Planning.Advising;
using StudioKit.Planning.Changes;
using StudioKit.Sheets.Cards;
using StudioKit.Sheets.Drawings;

namespace StudioKit.Sheets.Tests.Cards;

/// <summary>What a card must own up to, or whoever follows it elsewhere gets a grey subject and no reason.</summary>
public sealed class CardPromisesTests
{
    private static readonly ExposurePlan White = SamplePlan.White(SamplePlan.Framing("55 mm at 1:1", 1));

    private static readonly ExposurePlan Glowing = White with { Uplight = new Stops(1.9), Warnings = [new ExposureWarning.EatsLegs(new Stops(1.9), new Stops(1))] };

    public static TheoryData<string> Templates { get; } = [.. CardTemplates.Names];

    [Theory]
    [MemberData(nameof(Templates))]
    public void Every_card_states_the_light_it_is_made_for(string template) =>
        Text(White with { Ambient = new ExposureValue(9.5) }, SamplePlan.Advice(White), template).Should().Contain("For EV 9.5");

    [Theory]
    [MemberData(nameof(Templates))]
    public void Every_card_states_the_zoom_of_a_head_where_one_is_known(string template)
    {
        Text(White, SamplePlan.Advice(White), template).Should().Contain("zoom 35 mm");
        var other = White with { Lights = [White.Lights[0] with { Zoom = UnitsNet.Length.FromMillimeters(50) }, White.Lights[1]] };
        Text(other, SamplePlan.Advice(other), template).Should().Contain("zoom 50 mm");
    }

    [Theory]
    [MemberData(nameof(Templates))]
    public void A_card_at_the_edge_says_what_it_costs(string template)
    {
        var edge = White with
        {
            Verdict = new ExposureVerdict
            {
                Verdict = Verdict.AtTheEdge,
                Missed = [new MissedLimit.FlashTooStrong("sedge", new DialMark(new FlashPower(1 / 128.0), PowerStep.Third), new Stops(0.7))],
                FirstFrame = 0.31,
                GreyCorner = 0.12,
            },
        };

        Text(edge, SamplePlan.Advice(edge), template).Should().Contain("At the edge").And.Contain("0.7 stops too much").And.Contain("First frame right 31 %").And.Contain("a grey corner 12 %");
    }

    [Theory]
    [MemberData(nameof(Templates))]
    public void A_card_whose_light_eats_legs_says_so_and_what_to_turn(string template)
    {
        var advice = SamplePlan.Advice(White);
        var less = new Advice([], White with { Lights = [White.Lights[0] with { Power = new FlashPower(1 / 8.0) }, White.Lights[1]], Uplight = new Stops(1.6) });

        Text(Glowing, advice with { Symptoms = [.. advice.Symptoms, new SymptomAdvice(Symptom.EatenLegs, less)] }, template).Should()
            .Contain("Light from below is +1.9 stops against that from above; from +1 it eats legs and hairs: flash below to 1/8");
        Text(White, advice, template).Should().NotContain("legs");
    }

    private static string Text(ExposurePlan exposure, CardAdvice advice, string template)
    {
        var card = ExposureCard.Make(exposure, advice, CardTemplates.Of(template), Pages.Stamp, new CardPlace(7, 18)).Card;
        return string.Join(' ', new[] { card.Front, card.Back }.OfType<Drawing>().SelectMany(side => side.Marks).OfType<Label>().Select(label => label.Text));
    }
}
