using StudioKit.Web.Results;

namespace StudioKit.Web.Tests.Engine;

/// <summary>Where the lights of a card stand and how its day goes, as the worker tells them.</summary>
public sealed class OutdoorsTests
{
    private static readonly Asked Engine = new();

    [Fact]
    public void The_lights_of_a_card_are_drawn_and_told_with_what_holds_them()
    {
        var told = Of("fen-edge.yaml");

        told.Pages[0].Should().Contain("<svg").And.Contain("from above").And.Contain("from the right");
        told.Lights.Should().ContainSingle("the flash below has its own drawing").Which.Should().StartWith("Above: half past 9, 35° up").And.Contain("on long arm");
    }

    /// <summary>The demo kit's place on 14 June; its sheet of the day follows the drawing.</summary>
    [Fact]
    public void The_day_of_its_place_is_told_and_shown()
    {
        var told = Of("fen-edge.yaml");

        told.Day.Should().StartWith("14 June 2026 at 52.3° N, 5.1° E");
        told.Pages.Should().HaveCountGreaterThan(1);
        told.Pages[1].Should().Contain("14 June 2026");
    }

    [Fact]
    public void A_kit_without_a_date_has_lights_and_no_day()
    {
        var told = Of("heath-ultralight.yaml");

        told.Day.Should().BeEmpty();
        told.Pages.Should().ContainSingle();
    }

    private static OutdoorsAnswer Of(string kit)
    {
        var plan = Engine.Plan(Asked.Demo(kit));
        var card = plan.Cards.First(card => card.SetUp == "white");
        return Engine.For(EngineQuestions.Outdoors, new CardRequest(plan.Hash, card.SetUp, card.Framing));
    }
}
