using StudioKit.Planning;
using StudioKit.Sheets.Cards;
using StudioKit.Sheets.Drawings;

namespace StudioKit.Sheets.Tests.Cards;

public sealed class ExposureCardTests
{
    private static readonly ExposurePlan White = SamplePlan.White(SamplePlan.Framing("55 mm at 1:1", 1));

    public static TheoryData<CardFormat> Formats { get; } = [CardFormat.A6, CardFormat.Index3By5, CardFormat.Index4By6];

    [Theory]
    [MemberData(nameof(Formats))]
    public void Settings_powers_and_distances_are_set_at_18_points_or_more(CardFormat format)
    {
        var front = Front(White, format);

        foreach (var setting in new[] { "f/16", "1/125", "500", "1/5", "1/6.4", "45", "40" })
        {
            front.Marks.OfType<Label>().Should().Contain(
                label => label.Text == setting && label.SizePt >= 18 && label.Weight == TextWeight.Bold, setting);
        }
    }

    [Theory]
    [MemberData(nameof(Formats))]
    public void Nothing_is_set_smaller_than_six_and_a_half_points_and_nothing_leaves_the_card(CardFormat format)
    {
        var (card, problems) = ExposureCard.Make(White, format, Pages.Stamp);

        problems.Should().BeEmpty();
        foreach (var side in new[] { card.Front, card.Back }.OfType<Drawing>())
        {
            side.Marks.OfType<Label>().Should().OnlyContain(label => label.SizePt >= 6.5);
            side.Bounds.Left.Should().BeGreaterThanOrEqualTo(0);
            side.Bounds.Top.Should().BeGreaterThanOrEqualTo(0);
            side.Bounds.Right.Should().BeLessThanOrEqualTo(format.WidthMm);
            side.Bounds.Bottom.Should().BeLessThanOrEqualTo(format.HeightMm);
        }
    }

    [Theory]
    [MemberData(nameof(Formats))]
    public void No_two_pieces_of_text_overlap(CardFormat format)
    {
        var (card, _) = ExposureCard.Make(White, format, Pages.Stamp);

        foreach (var side in new[] { card.Front, card.Back }.OfType<Drawing>())
        {
            var inks = side.Marks.OfType<Label>().Select(label => (label.Text, Ink: Ink(label))).ToList();
            var clashes = inks.SelectMany((a, i) => inks.Skip(i + 1).Where(b => Overlap(a.Ink, b.Ink)).Select(b => $"{a.Text} / {b.Text}"));
            clashes.Should().BeEmpty();
        }
    }

    [Fact]
    public void The_settings_come_before_the_check_and_the_check_before_the_remedies()
    {
        var front = Front(White, CardFormat.A6);

        var heights = new[] { "f/16", "1/5", "Check", "Corners do not blink" }.Select(text => Label(front, text).At.Y).ToList();

        heights.Should().BeInAscendingOrder();
    }

    /// <remarks>The rule is a scale in the picture, so its ticks must be a millimetre apart, exactly.</remarks>
    [Fact]
    public void The_rule_is_true_to_size()
    {
        var ticks = MillimetreRule.Marks(148).OfType<Line>().Select(line => line.From.Y).ToList();

        ticks.Should().HaveCount(141);
        ticks.Zip(ticks.Skip(1), (a, b) => b - a).Should().AllSatisfy(step => step.Should().BeApproximately(1, 1e-9));
    }

    [Fact]
    public void What_the_front_has_no_room_for_goes_to_the_back()
    {
        var (card, _) = ExposureCard.Make(White, CardFormat.Index3By5, Pages.Stamp);

        card.Back.Should().NotBeNull();
        Texts(card.Front).Should().Contain("Check").And.NotContain(text => text.Contains("light budget"));
        Texts(card.Back!).Should().Contain("Below: light budget").And.Contain("Above: light budget");
    }

    [Fact]
    public void An_exposure_that_does_not_work_says_so_and_what_would_help_instead_of_settings()
    {
        var impossible = White with { BindingLimit = "The key flash is 1.4 stops short.", Changes = ["ISO 1250"] };

        Texts(Front(impossible, CardFormat.A6)).Should()
            .Contain("The key flash is 1.4 stops short.").And.Contain("ISO 1250").And.NotContain("f/16");
    }

    [Fact]
    public void A_long_kit_name_gives_way_to_date_and_hash()
    {
        var stamp = Pages.Stamp with { KitName = new string('x', 300) };

        Texts(ExposureCard.Make(White, CardFormat.Index3By5, stamp).Card.Front).Should()
            .Contain(text => text.StartsWith('x') && text.EndsWith("…, 2026-05-17, content 4f3a90c1", StringComparison.Ordinal));
    }

    [Fact]
    public void A_card_too_small_for_its_settings_is_reported()
    {
        var (_, problems) = ExposureCard.Make(White, CardFormat.Id1, Pages.Stamp);

        problems.Should().ContainSingle().Which.Should().Contain("Take a larger card.");
    }

    private static Drawing Front(ExposurePlan exposure, CardFormat format) => ExposureCard.Make(exposure, format, Pages.Stamp).Card.Front;

    private static Label Label(Drawing drawing, string text) => drawing.Marks.OfType<Label>().First(label => label.Text == text);

    private static IEnumerable<string> Texts(Drawing drawing) => drawing.Marks.OfType<Label>().Select(label => label.Text);

    // From the top of a capital letter to the baseline: tails and accents of neighbouring lines may share their gap.
    private static Bounds Ink(Label label)
    {
        var start = label.Baseline();
        var width = StudioKit.Sheets.Fonts.TextMeter.Width(label.Text, label.SizePt, label.Weight);
        return new Bounds(start.X, start.Y - StudioKit.Sheets.Fonts.TextMeter.CapHeight(label.SizePt, label.Weight), start.X + width, start.Y);
    }

    private static bool Overlap(Bounds a, Bounds b) => a.Left < b.Right && b.Left < a.Right && a.Top < b.Bottom && b.Top < a.Bottom;
}
