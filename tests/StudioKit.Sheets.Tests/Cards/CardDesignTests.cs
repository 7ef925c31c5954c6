using StudioKit.Kits.Cards;
using StudioKit.Planning;
using StudioKit.Sheets.Cards;
using StudioKit.Sheets.Drawings;
using StudioKit.Sheets.Fonts;

namespace StudioKit.Sheets.Tests.Cards;

public sealed class CardDesignTests
{
    private static readonly ExposurePlan White = SamplePlan.Plan.Exposures[0];

    // At an arm's length of 60 cm a letter of 9 pt has an x-height of about 1.6 mm, nine minutes of arc: twice what a keen eye parts (5' for the whole letter, ISO 8596).
    [Theory]
    [InlineData("A6")]
    [InlineData("4x6in")]
    [InlineData("3x5in")]
    [InlineData("A7")]
    public void What_is_mounted_and_where_it_stands_is_read_at_arms_length(string template)
    {
        var labels = Make(template).Card.Front.Marks.OfType<Label>().ToList();
        foreach (var word in new[] { "tube", "glass", "bare", "dome", "zoom" })
        {
            labels.Where(label => label.Text.Contains(word, StringComparison.Ordinal)).Should().NotBeEmpty().And.OnlyContain(label => label.SizePt >= 9, word);
        }
    }

    [Theory]
    [InlineData("A6")]
    [InlineData("4x6in")]
    [InlineData("3x5in")]
    [InlineData("A7")]
    [InlineData("ID-1")]
    public void Every_side_says_which_card_it_belongs_to(string template)
    {
        var (card, more, problems) = Make(template);
        problems.Should().BeEmpty();
        foreach (var side in more.Prepend(card).SelectMany(one => new[] { one.Front, one.Back }).OfType<Drawing>())
        {
            var text = string.Join(' ', side.Marks.OfType<Label>().Select(label => label.Text));
            text.Should().Contain("7 of 18").And.Contain(White.SetUp).And.Contain(White.Framing.Name);
        }
    }

    [Fact]
    public void Tabs_of_two_set_ups_stand_at_one_edge_and_do_not_overlap_and_on_the_back_at_the_same_edge_of_the_card()
    {
        var (first, second) = (Black(Tabbed(0).Card.Front), Black(Tabbed(1).Card.Front));
        first.Right.Should().Be(second.Right).And.BeGreaterThan(105, "a cut beside the mark leaves no white line");
        first.Left.Should().BeGreaterThan(105 - 4, "what is printed ends 4 mm from the edge");
        second.Top.Should().BeGreaterThanOrEqualTo(first.Bottom);
        var back = Black(Tabbed(1).Card.Back!);
        (back.Left, back.Top, back.Bottom).Should().Be((105 - second.Right, second.Top, second.Bottom), "the back is seen from the other side");
    }

    [Fact]
    public void Large_figures_have_a_plain_zero_and_the_set_up_is_bold()
    {
        var labels = Make("A6").Card.Front.Marks.OfType<Label>().ToList();
        labels.Where(label => label.SizePt >= 18 && label.Text.Any(char.IsAsciiDigit)).Should().NotBeEmpty().And.OnlyContain(
            label => TextMeter.Runs(label.Text, label.Weight).All(run => run.Face == FontFace.FallbackBold) || label.Text == White.Framing.Name);
        labels.First(label => label.Text == White.SetUp && label.Turn == 0).Weight.Should().Be(TextWeight.Bold);
    }

    [Fact]
    public void The_code_stands_at_one_place_however_much_stands_over_it()
    {
        var bare = White with { Bracket = [] };
        Code(Make("A6").Card.Back!).Should().Be(Code(Make("A6", bare).Card.Back!));
    }

    [Fact]
    public void What_two_sides_cannot_hold_goes_onto_more_cards_and_is_not_left_out()
    {
        var (card, more, problems) = Make("ID-1");
        problems.Should().BeEmpty();
        more.Should().NotBeEmpty();
        var text = string.Join(' ', more.Prepend(card).SelectMany(one => new[] { one.Front, one.Back }).OfType<Drawing>().SelectMany(side => side.Marks.OfType<Label>()).Select(label => label.Text));
        text.Should().Contain("Check").And.Contain("Light, EV").And.Contain("this card").And.Contain("10 mm each").And.Contain("7 of 18, more");
    }

    private static Bounds Black(Drawing side) => side.Marks.OfType<Polygon>().First(polygon => polygon.Fill == Fill.Black && polygon.Bounds.Height > 10).Bounds;

    private static Bounds Code(Drawing side)
    {
        var modules = side.Marks.OfType<Polygon>().Where(polygon => polygon.Fill == Fill.Black && Math.Abs(polygon.Bounds.Height - SettingsCode.Module) < 1e-9).Select(polygon => polygon.Bounds).ToList();
        return new Bounds(modules.Min(box => box.Left), modules.Min(box => box.Top), modules.Max(box => box.Right), modules.Max(box => box.Bottom));
    }

    private static (Card Card, IReadOnlyList<Card> More, IReadOnlyList<string> Problems) Tabbed(int place) =>
        ExposureCard.Make(White, SamplePlan.Advice(White), CardTemplates.Of("A6"), Pages.Stamp, new CardPlace(7, 18), new CardTab($"set-up {place}", place, 4));

    private static (Card Card, IReadOnlyList<Card> More, IReadOnlyList<string> Problems) Make(string template, ExposurePlan? exposure = null) =>
        ExposureCard.Make(exposure ?? White, SamplePlan.Advice(exposure ?? White), CardTemplates.Of(template), Pages.Stamp, new CardPlace(7, 18));
}
