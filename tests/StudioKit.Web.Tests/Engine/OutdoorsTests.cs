using System.Text.RegularExpressions;
using StudioKit.Web.Results;

namespace StudioKit.Web.Tests.Engine;

/// <summary>Where the lights of a card stand and how its day goes, as the worker tells them.</summary>
public sealed class OutdoorsTests
{
    private static readonly Asked Engine = new();
    private static readonly PlanAnswer Plan = Engine.Plan(Asked.Demo());

    [Fact]
    public void The_lights_of_a_card_are_drawn_and_told_with_what_holds_them()
    {
        var told = Of("white");

        told.Drawing.Should().StartWith("<svg").And.Contain("from above").And.Contain("from the right");
        told.Lights.Should().ContainSingle("the flash below has its own drawing").Which.Should().StartWith("Above: half past 9, 35° up").And.Contain("on long arm");
    }

    /// <summary>On 14 June the sun culminates at 90° − 52.3° + 23.3° = 61°; an hour of the clock is at most half an hour off that.</summary>
    [Fact]
    public void The_day_has_its_hours_with_the_sun_as_high_as_it_gets_there()
    {
        var told = Of("white");

        told.Day.Should().Contain("2026-06-14");
        told.Hours.Max(hour => int.Parse(Regex.Match(hour.Sun, @"(\d+)° high").Groups[1].Value, System.Globalization.CultureInfo.InvariantCulture)).Should().BeInRange(60, 61);
        told.Hours.Should().Contain(hour => hour.SetUps.Contains("white", StringComparison.Ordinal));
        told.Notes.Should().NotBeEmpty();
    }

    [Fact]
    public void A_kit_without_a_date_has_lights_and_no_day()
    {
        var plan = Engine.Plan(Asked.Demo("heath-ultralight.yaml"));
        var card = plan.Cards[0];

        var told = Engine.For(EngineQuestions.Outdoors, new OutdoorsRequest(plan.Hash, card.SetUp, card.Framing));

        (told.Day, told.Hours.Count).Should().Be(("", 0));
        told.Drawing.Should().NotBeEmpty();
    }

    private static OutdoorsAnswer Of(string setUp) =>
        Engine.For(EngineQuestions.Outdoors, new OutdoorsRequest(Plan.Hash, setUp, Plan.Cards.First(card => card.SetUp == setUp).Framing));
}
