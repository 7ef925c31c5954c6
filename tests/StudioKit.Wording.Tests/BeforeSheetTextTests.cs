using StudioKit.Physics.Exposure;
using StudioKit.Planning;
using StudioKit.Planning.Studio.Uprights;
using UnitsNet;

namespace StudioKit.Wording.Tests;

/// <summary>What is said of stems before a sheet, and of the sheet's light on edges: never a stem wider, or a distance shorter, than the plan has.</summary>
public sealed class BeforeSheetTextTests
{
    private static readonly StrayStemPlan Stems = new()
    {
        ToSheet = Length.FromCentimeters(30),
        WidestAtSheet = Length.FromMillimeters(1.69),
        WidestHalfWay = Length.FromMillimeters(0.849),
        Stems = [],
    };

    [Fact]
    public void A_stem_that_vanishes_is_rounded_down() => StrayStemText.OfCard(Stems).Should().Be("A stem up to 0.8 mm wide vanishes half way to the sheet, up to 1.6 mm right before it.");

    [Fact]
    public void Room_that_is_looked_through_is_rounded_up() => StrayStemText.OfCard(Stems with { ClearWidth = Length.FromMillimeters(151), ClearHeight = Length.FromMillimeters(160) })
        .Should().EndWith("right before it; the camera looks at 16 × 16 cm of it.");

    [Fact]
    public void Before_a_sheet_that_does_not_clip_no_stem_vanishes() =>
        StrayStemText.OfCard(Stems with { WidestAtSheet = Length.Zero, WidestHalfWay = Length.Zero }).Should().Be("The sheet does not clip, and every stem before it shows.");

    [Theory]
    [InlineData(17.7, "18 cm")]
    [InlineData(17.4, "17.5 cm")]
    [InlineData(17.5, "17.5 cm")]
    public void A_distance_from_which_on_a_stem_vanishes_is_rounded_up(double centimetres, string text) =>
        StrayStemText.From(new VanishingStem(Length.FromMillimeters(1), Length.FromCentimeters(centimetres))).Should().Be(text);

    [Fact]
    public void A_stem_that_shows_right_to_the_sheet_vanishes_nowhere() => StrayStemText.From(new VanishingStem(Length.FromMillimeters(2), null)).Should().Be("nowhere");

    [Theory]
    [InlineData(-3.6, 0, "Sheet's light on the upper edge: -3.6 stops against the lights on the subject, -3.5 against correct exposure; nowhere within 1 stop of them.")]
    [InlineData(0.4, 0.021, "Sheet's light on the upper edge: +0.4 stops against the lights on the subject, +0.5 against correct exposure; within 1 stop of them over 2.1 % of a round stem's width.")]
    public void The_edge_that_gets_most_is_told_with_its_rim(double level, double rim, string text) => EdgeSpillText.Of(Spill(level, rim)).Should().Be(text);

    [Fact]
    public void A_card_tells_of_a_rim_only_where_there_is_one()
    {
        EdgeSpillText.OfCard(Spill(-3.6, 0)).Should().EndWith("-3.6 stops against the lights on the subject.");
        EdgeSpillText.OfCard(Spill(0.4, 0.021)).Should().EndWith("within 1 stop of them over 2.1 % of a round stem's width.");
    }

    [Fact]
    public void An_edge_that_the_sheet_does_not_reach_gets_none() => EdgeSpillText.Against(null).Should().Be("none");

    private static EdgeSpillPlan Spill(double level, double rim) => new()
    {
        Limbs = [new LimbSpill(SubjectLimb.Left, new Stops(level - 1), new Stops(level - 0.9), 0), new LimbSpill(SubjectLimb.Upper, new Stops(level), new Stops(level + 0.1), rim)],
    };
}
