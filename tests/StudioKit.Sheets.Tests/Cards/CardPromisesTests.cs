using StudioKit.Kits.Cards;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Exposure.SetUps;
using StudioKit.Planning;
using StudioKit.Planning.Advising;
using StudioKit.Planning.Changes;
using StudioKit.Planning.Studio.Uprights;
using StudioKit.Sheets.Cards;
using StudioKit.Sheets.Drawings;
using UnitsNet;

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

    [Theory]
    [MemberData(nameof(Templates))]
    public void The_back_of_a_card_before_an_upright_sheet_says_which_stems_vanish_and_what_the_sheet_does_to_edges(string template)
    {
        var before = White with
        {
            WhereItSits = true,
            EdgeSpill = new EdgeSpillPlan { Limbs = [new LimbSpill(SubjectLimb.Left, new Stops(-2.1), new Stops(-2), 0), new LimbSpill(SubjectLimb.Upper, new Stops(-1.4), new Stops(-1.3), 0)] },
            StrayStems = new StrayStemPlan
            {
                ToSheet = Length.FromCentimeters(30),
                WidestAtSheet = Length.FromMillimeters(1.69),
                WidestHalfWay = Length.FromMillimeters(0.85),
                Stems = [],
                ClearWidth = Length.FromMillimeters(151),
                ClearHeight = Length.FromMillimeters(168),
            },
        };

        var back = ExposureCard.Make(before, SamplePlan.Advice(before), CardTemplates.Of(template), Pages.Stamp, new CardPlace(7, 18)).Card.Back!;
        Text([back]).Should().Contain("A stem up to 0.8 mm wide vanishes half way to the sheet, up to 1.6 mm right before it; the camera looks at 16 × 17 cm of it.")
            .And.Contain("Sheet's light on the upper edge: -1.4 stops against the lights on the subject.");
        var onPanel = before with { WhereItSits = false };
        Text(onPanel, SamplePlan.Advice(onPanel), template).Should().NotContain("A stem").And.NotContain("Sheet's light", "it does not show there");
        var lit = onPanel with { EdgeSpill = new EdgeSpillPlan { Limbs = [new LimbSpill(SubjectLimb.Upper, new Stops(0.4), new Stops(0.5), 0.02)] } };
        Text(lit, SamplePlan.Advice(lit), template).Should().Contain("Sheet's light on the upper edge: +0.4 stops against the lights on the subject, within 1 stop of them over 2 % of a round stem's width.");
        Text(White, SamplePlan.Advice(White), template).Should().NotContain("stem").And.NotContain("edge:");
    }

    private static string Text(ExposurePlan exposure, CardAdvice advice, string template)
    {
        var card = ExposureCard.Make(exposure, advice, CardTemplates.Of(template), Pages.Stamp, new CardPlace(7, 18)).Card;
        return Text([card.Front, card.Back]);
    }

    private static string Text(IEnumerable<Drawing?> sides) => string.Join(' ', sides.OfType<Drawing>().SelectMany(side => side.Marks).OfType<Label>().Select(label => label.Text));
}
