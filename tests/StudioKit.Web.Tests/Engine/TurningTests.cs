using StudioKit.Web.Results;

namespace StudioKit.Web.Tests.Engine;

public sealed class TurningTests
{
    private readonly Asked _engine = new();

    [Fact]
    public void A_dial_of_thirds_down_to_a_hundred_and_twenty_eighth_has_twenty_two_marks()
    {
        var dial = Planned().Framing.Dial!;

        dial.Marks.Should().HaveCount((7 * 3) + 1, "a 128th is seven stops under full power");
        dial.Marks[^1].Should().Be("1/128");
        dial.Marks[dial.Set].Should().Be(Planned().Framing.Power);
    }

    [Fact]
    public void Three_clicks_of_a_dial_of_thirds_double_the_light_everywhere()
    {
        var (plan, studio, framing) = Planned();

        var turned = _engine.For(EngineQuestions.Preview, new PreviewRequest(plan.Hash, studio.SetUp, framing.Framing, [], framing.Dial!.Set - 3)).Studio!.Framings[0];

        turned.Map!.Margins.Zip(framing.Map!.Margins).Should().HaveCountGreaterThan(600).And.AllSatisfy(pair => (pair.First - pair.Second).Should().BeApproximately(1, 0.0101, "each margin is rounded to a hundredth"));
        turned.Dial!.Set.Should().Be(framing.Dial.Set - 3);
        turned.Comes.Should().StartWith(turned.Power);
    }

    [Fact]
    public void What_a_power_comes_to_goes_from_the_darkest_visible_point_to_the_brightest()
    {
        var framing = Planned().Framing;

        framing.Darkest.Stops.Should().BeLessThan(framing.Brightest.Stops);
        Plain(framing.Comes).Should().StartWith(Plain($"{framing.Power}: {framing.Darkest.Text[..^" stop".Length]} to {framing.Brightest.Text}, white all over"));

        static string Plain(string text) => text.Replace('\u00A0', ' ');
    }

    [Fact]
    public void The_lowest_power_is_told_to_leave_the_panel_grey()
    {
        var (plan, studio, framing) = Planned();

        var turned = _engine.For(EngineQuestions.Preview, new PreviewRequest(plan.Hash, studio.SetUp, framing.Framing, [], framing.Dial!.Marks.Count - 1)).Studio!.Framings[0];

        turned.Comes.Should().Contain("not white everywhere");
    }

    [Fact]
    public void What_is_to_be_turned_in_darker_light_is_what_the_card_of_a_kit_in_that_light_says()
    {
        var (plan, studio, framing) = Planned();
        var darker = _engine.Plan(Asked.Demo().Replace("ambient: EV 10 ± 0.5 stop", "ambient: EV 8 ± 0.5 stop", StringComparison.Ordinal));

        var steps = _engine.For(EngineQuestions.SceneLight, new CardRequest(plan.Hash, studio.SetUp, framing.Framing)).Steps;

        steps.Select(step => step.Stops).Should().Equal(Enumerable.Range(-4, 9));
        steps[4].Turn.Should().Be("this card");
        steps[4].Words.Should().Contain("EV 10");
        var card = darker.Cards.First(card => card.SetUp == studio.SetUp && card.Framing == framing.Framing);
        var now = plan.Cards.First(card => card.SetUp == studio.SetUp && card.Framing == framing.Framing);
        var turned = card.Lights.Zip(now.Lights).Where(pair => pair.First.Power != pair.Second.Power).Select(pair => pair.First.Power).ToList();
        turned.Should().NotBeEmpty();
        turned.Should().AllSatisfy(power => steps[2].Turn.Should().Contain(power));
    }

    [Fact]
    public void A_camera_in_space_looks_down_at_the_angle_that_the_kit_asks_for()
    {
        var (plan, studio, framing) = Planned();

        var solid = _engine.For(EngineQuestions.Solid, new SolidRequest(plan.Hash, studio.SetUp, framing.Framing));

        solid.Sights.Select(sight => Math.Round(Math.Atan2(sight.Pupil.Up - sight.Aim.Up, sight.Aim.Back - sight.Pupil.Back) * 180 / Math.PI, 1)).Should().Equal(30, 60, 90);
        solid.Bars.Should().NotBeEmpty().And.OnlyContain(bar => bar.Thickness == 25);
        solid.Bars.SelectMany(bar => new[] { bar.From, bar.To }).Should().OnlyContain(place => Math.Abs(place.Right) <= 300 && place.Back >= 0 && place.Back <= 400 && place.Up >= 0 && place.Up <= 500);
        solid.Lights[0].Front.Up.Should().Be(50, "450 mm under a panel 500 mm up");
    }

    private (PlanAnswer Plan, StudioPicture Studio, SeenFraming Framing) Planned()
    {
        var plan = _engine.Plan(Asked.Demo());
        // The flash below has room on its dial either way.
        var (studio, framing) = (plan.Studios[0], plan.Studios[0].Framings.First(framing => framing.Framing == "reed 55 at 1:4"));
        return (plan, studio, framing with { Map = _engine.For(EngineQuestions.Map, new MapRequest(plan.Hash, studio.SetUp, framing.Framing)).Map });
    }
}
