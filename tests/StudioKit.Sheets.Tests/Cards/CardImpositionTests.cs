using StudioKit.Kits.Cards;
using StudioKit.Sheets.Cards;
using StudioKit.Sheets.Drawings;

namespace StudioKit.Sheets.Tests.Cards;

public sealed class CardImpositionTests
{
    private static readonly Gen<CardTemplate> Templates = Gen.OneOf(
        [.. CardTemplates.Names.Select(name => Gen.Const(CardTemplates.Of(name))), Gen.Const(CardTemplates.For(CardSize.Custom(UnitsNet.Length.FromMillimeters(60), UnitsNet.Length.FromMillimeters(90))))]);

    private static readonly Gen<Paper> Papers = Gen.OneOf(Gen.Const(Paper.A4), Gen.Const(Paper.Letter));

    /// <remarks>ISO 216 (A6 105 × 148, A7 74 × 105), ISO/IEC 7810 (ID-1 85.60 × 53.98), inches by definition 25.4 mm.</remarks>
    [Theory]
    [InlineData("A6", 105, 148)]
    [InlineData("A7", 74, 105)]
    [InlineData("ID-1", 53.98, 85.60)]
    [InlineData("3x5in", 76.2, 127)]
    [InlineData("4x6in", 101.6, 152.4)]
    public void A_card_has_its_standard_size_between_its_crop_marks(string name, double width, double height)
    {
        var laid = CardImposition.Lay("Cards", [Sided("one")], CardTemplates.Of(name), Paper.A4, Pages.Stamp).Alone(Pages.Stamp);
        using var document = Pages.Read(laid.Document);

        // Upright marks give the card's left and right edges, level ones its upper and lower.
        var lines = document.GetPage(1).Paths.Select(path => path.GetBoundingRectangle()!.Value).ToList();
        var across = lines.Where(line => line.Width < 0.01 && line.Height < 6).Select(line => line.Left / Pages.PointsPerMillimetre).ToList();
        var along = lines.Where(line => line.Height < 0.01 && line.Width < 6).Select(line => line.Bottom / Pages.PointsPerMillimetre).ToList();
        double[] sides = [across.Max() - across.Min(), along.Max() - along.Min()];

        sides.Order().Should().SatisfyRespectively(
            side => side.Should().BeApproximately(Math.Min(width, height), 0.1),
            side => side.Should().BeApproximately(Math.Max(width, height), 0.1));
    }

    [Fact]
    public void A_back_lands_on_its_front_when_the_sheet_is_turned_over_its_long_edge() =>
        Gen.Select(Templates, Papers).Sample((template, paper) =>
        {
            var grid = CardGrid.For(paper, template.Held, template.LaminationMargin.Millimeters);
            for (var i = 0; i < grid.PerPage; i++)
            {
                // Through the paper, x on the back is the width less x on the front.
                var front = grid.Front(i).Apply(new Point(0, 0));
                var back = grid.Back(i).Apply(new Point(template.Held.Width.Millimeters, 0));
                back.X.Should().BeApproximately(grid.Page.Width - front.X, 1e-9);
                back.Y.Should().BeApproximately(front.Y, 1e-9);
            }
        });

    /// <remarks>The same spot of a card's two faces: so far from the left on the front is so far from the right on the back. Through the paper,
    /// x on the page's back is its width less x on its front.</remarks>
    [Fact]
    public void What_is_printed_on_a_back_lies_behind_the_same_spot_of_its_front() =>
        Gen.Select(Templates, Papers).Sample((template, paper) =>
        {
            var (count, width) = (CardGrid.For(paper, template.Held, template.LaminationMargin.Millimeters).PerPage, template.Held.Width.Millimeters);
            var cards = Enumerable.Range(0, count).Select(i => new Card(Labelled($"card {i}", 12), Labelled($"card {i}", width - 12))).ToList();

            var pages = CardImposition.Lay("Cards", cards, template, paper, Pages.Stamp).Alone(Pages.Stamp).Document.Pages;

            pages.Should().HaveCount(2);
            var (fronts, backs) = (Spots(pages[0]), Spots(pages[1]));
            backs.Keys.Should().BeEquivalentTo(fronts.Keys).And.HaveCount(count);
            foreach (var (card, front) in fronts)
            {
                backs[card].X.Should().BeApproximately(pages[0].WidthMm - front.X, 1e-9, $"{card} on {template.Name}");
                backs[card].Y.Should().BeApproximately(front.Y, 1e-9, $"{card} on {template.Name}");
            }
        },
        print: pair => $"{pair.Item1.Name} on {pair.Item2}");

    [Fact]
    public void Cards_neither_touch_each_other_nor_the_edge_of_the_paper() =>
        Gen.Select(Templates, Papers).Sample((template, paper) =>
        {
            var grid = CardGrid.For(paper, template.Held, template.LaminationMargin.Millimeters);
            grid.PerPage.Should().BeGreaterThan(0);
            var slots = Enumerable.Range(0, grid.PerPage).Select(grid.Slot).ToList();
            slots.Should().OnlyContain(slot => slot.Left > 5 && slot.Top > 5 && slot.Right < grid.Page.Width - 5 && slot.Bottom < grid.Page.Height - 5);
            slots.SelectMany((a, i) => slots.Skip(i + 1).Select(b => (a, b))).Should().OnlyContain(pair =>
                pair.a.Right + 7.9 < pair.b.Left || pair.b.Right + 7.9 < pair.a.Left
                || pair.a.Bottom + 7.9 < pair.b.Top || pair.b.Bottom + 7.9 < pair.a.Top);
        });

    [Fact]
    public void Every_card_is_printed_once_and_backs_follow_their_fronts()
    {
        var cards = Enumerable.Range(0, 5).Select(i => Sided($"c{i}", $"b{i}")).ToList();

        var pages = CardImposition.Lay("Cards", cards, CardTemplates.Of("A6"), Paper.A4, Pages.Stamp).Alone(Pages.Stamp).Document.Pages;

        pages.Select(page => string.Join(' ', Spots(page).Keys)).Should().Equal("c0 c1", "b0 b1", "c2 c3", "b2 b3", "c4", "b4");
    }

    [Fact]
    public void A_card_larger_than_the_paper_is_reported() =>
        CardImposition.Lay("Cards", [Sided("one")], CardTemplates.Of("A6") with { Size = CardSize.Custom(UnitsNet.Length.FromMillimeters(300), UnitsNet.Length.FromMillimeters(300)) }, Paper.A4, Pages.Stamp).Problems
            .Should().Equal("A card of 300 × 300 mm does not fit on A4 paper with room to cut.");

    private static Card Sided(string front, string? back = null) =>
        new(Labelled(front), back is null ? null : Labelled(back));

    private static Drawing Labelled(string text, double x = 20) => new(text, text, [new Label(new Point(x, 20), text, 12)]);

    // The foot of the page is the only other text.
    private static Dictionary<string, Point> Spots(StudioKit.Sheets.Layout.Page page) => page.Marks.OfType<Label>()
        .Where(label => !label.Text.StartsWith("Print", StringComparison.Ordinal)).ToDictionary(label => label.Text, label => label.At);
}
