using StudioKit.Kits.Cards;
using StudioKit.Kits.SetUps;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Exposure.SetUps;
using StudioKit.Planning;
using StudioKit.Sheets.Cards;
using StudioKit.Sheets.Drawings;
using StudioKit.Sheets.Fonts;

namespace StudioKit.Sheets.Tests.Cards;

public sealed class ExposureCardTests
{
    private static readonly ExposurePlan White = SamplePlan.White(SamplePlan.Framing("55 mm at 1:1", 1));

    public static TheoryData<string> Templates { get; } = [.. CardTemplates.Names];

    [Theory]
    [InlineData("A6")]
    [InlineData("4x6in")]
    [InlineData("3x5in")]
    public void Settings_powers_and_distances_are_set_at_18_points_or_more(string template)
    {
        var front = Front(White, template);

        foreach (var setting in new[] { "f/16", "1/125", "500", "1/5", "1/6.4", "45", "40" })
        {
            front.Marks.OfType<Label>().Should().Contain(
                label => label.Text == setting && label.SizePt >= 18 && label.Weight == TextWeight.Figures, setting);
        }
    }

    [Theory]
    [MemberData(nameof(Templates))]
    public void Every_card_holds_the_settings_each_flash_and_its_distance(string template)
    {
        var texts = Texts(Front(White, template));

        texts.Should().Contain(["f/16", "1/125", "500", "Below", "1/5", "45", "Above", "1/6.4", "40", "cm", "s"]);
    }

    [Theory]
    [MemberData(nameof(Templates))]
    public void Nothing_is_set_smaller_than_six_and_a_half_points_and_nothing_leaves_the_card(string template)
    {
        foreach (var (card, size) in Hard.Select(exposure => (Make(exposure, template).Card, CardTemplates.Of(template).Held)))
        {
            foreach (var side in Sides(card))
            {
                side.Marks.OfType<Label>().Should().OnlyContain(label => label.SizePt >= 6.5);
                side.Bounds.Left.Should().BeGreaterThanOrEqualTo(0);
                side.Bounds.Top.Should().BeGreaterThanOrEqualTo(0);
                side.Bounds.Right.Should().BeLessThanOrEqualTo(size.Width.Millimeters);
                side.Bounds.Bottom.Should().BeLessThanOrEqualTo(size.Height.Millimeters);
            }
        }
    }

    [Theory]
    [MemberData(nameof(Templates))]
    public void No_two_pieces_of_text_overlap_nor_text_and_hole(string template)
    {
        foreach (var side in Hard.SelectMany(exposure => Sides(Make(exposure, template).Card)))
        {
            var inks = side.Marks.OfType<Label>().Select(label => (label.Text, Ink: Ink(label))).ToList();
            var holes = side.Marks.OfType<Circle>().Select(hole => ("the hole", Ink: hole.Bounds)).ToList();
            var codes = side.Marks.OfType<Polygon>().Where(mark => mark.Fill == Fill.Black).Select(mark => ("a dark patch", Ink: mark.Bounds)).ToList();
            List<(string Text, Bounds Ink)> all = [.. inks, .. holes, .. codes];
            var clashes = inks.SelectMany((a, i) => all.Skip(i + 1).Where(b => Overlap(a.Ink, b.Ink)).Select(b => $"{a.Text} / {b.Text}"));
            clashes.Should().BeEmpty();
        }
    }

    [Fact]
    public void The_settings_come_before_the_check_and_the_check_before_the_remedies()
    {
        var front = Front(White, "A6");

        var heights = new[] { "f/16", "1/5", "Check", "Corners do not" }.Select(text => Label(front, text).At.Y).ToList();

        heights.Should().BeInAscendingOrder();
    }

    /// <remarks>The rule is a scale in the picture, so its ticks must be a millimetre apart, exactly.</remarks>
    [Fact]
    public void The_rule_is_true_to_size()
    {
        var ticks = MillimetreRule.Marks(105, 148, atRight: false).OfType<Line>().Select(line => line.From.Y).ToList();

        ticks.Should().HaveCount(141);
        ticks.Zip(ticks.Skip(1), (a, b) => b - a).Should().AllSatisfy(step => step.Should().BeApproximately(1, 1e-9));
    }

    [Fact]
    public void Black_grey_and_white_patches_are_ten_millimetres_each()
    {
        var patches = Make(White, "A6").Card.Back!.Marks.OfType<Polygon>().Where(mark => mark.Bounds.Width > 5 && mark.Stroke is null).ToList();

        patches.Select(patch => patch.Fill).Should().Equal(Fill.Black, Fill.Grey, Fill.White);
        patches.Should().OnlyContain(patch => Math.Abs(patch.Bounds.Width - 10) < 0.05 && Math.Abs(patch.Bounds.Height - 10) < 0.05);
    }

    [Fact]
    public void The_back_holds_other_light_other_distances_bracket_detail_and_rule()
    {
        var texts = Texts(Make(White, "A6").Card.Back!);

        texts.Should().Contain(["Meter at f/16, ISO 500", "this card", "Depth of field 1.8 mm. Finest detail 22 µm (two points apart, Rayleigh).", "1/25", "22.5", "mm", "140"]);
        texts.Should().Contain(text => text.StartsWith("Bracket, stops of power: +1/3, −1/3.", StringComparison.Ordinal)).And.NotContain("too far");
    }

    [Fact]
    public void The_hole_goes_through_front_and_back_at_one_place()
    {
        var card = Make(White, "A6").Card;

        var (front, back) = (card.Front.Marks.OfType<Circle>().Single(), card.Back!.Marks.OfType<Circle>().Single());
        back.Centre.X.Should().BeApproximately(105 - front.Centre.X, 1e-9);
        back.Centre.Y.Should().Be(front.Centre.Y);
        front.Radius.Should().Be(3);
    }

    [Fact]
    public void What_the_front_has_no_room_for_goes_to_the_back()
    {
        var card = ExposureCard.Make(White, SamplePlan.Advice(White, symptoms: 14), CardTemplates.Of("A6"), Pages.Stamp, new CardPlace(7, 18)).Card;

        Texts(card.Front).Should().Contain("Check").And.NotContain("Corners do not blink");
        Texts(card.Back!).Should().Contain("Corners do not blink");
    }

    [Fact]
    public void An_exposure_that_does_not_work_says_so_and_what_would_help_instead_of_settings()
    {
        var impossible = White with { Lights = [], Verdict = Short };

        Texts(Front(impossible, "A6")).Should()
            .Contain("Full power of the key flash is 1.4 stops short.").And.Contain("ISO 1250").And.NotContain("f/16");
    }

    [Fact]
    public void A_long_kit_name_gives_way_to_date_and_hash()
    {
        var stamp = Pages.Stamp with { KitName = new string('x', 300) };

        Texts(ExposureCard.Make(White, SamplePlan.Advice(White), CardTemplates.Of("3x5in"), stamp, new CardPlace(1, 1)).Card.Front).Should()
            .Contain(text => text.StartsWith('x') && text.EndsWith("…, 2026-05-17, content 4f3a90c1", StringComparison.Ordinal));
    }

    [Fact]
    public void A_card_too_small_for_its_settings_is_reported_and_shows_none_of_them()
    {
        var tiny = CardTemplates.Of("ID-1") with { Size = CardSize.Custom(UnitsNet.Length.FromMillimeters(40), UnitsNet.Length.FromMillimeters(45)) };

        var (card, _, problems) = ExposureCard.Make(White, SamplePlan.Advice(White), tiny, Pages.Stamp, new CardPlace(1, 1));

        problems.Should().ContainSingle().Which.Should().Contain("Take a larger card.");
        Texts(card.Front).Should().NotContain("f/16");
    }

    [Fact]
    public void A_template_says_which_blocks_come_and_in_which_order()
    {
        var template = CardTemplates.Of("A6") with { Front = [CardBlock.Settings, CardBlock.SetUp], Back = [CardBlock.Check] };

        var (card, _, _) = ExposureCard.Make(White, SamplePlan.Advice(White), template, Pages.Stamp, new CardPlace(1, 1));

        Label(card.Front, "f/16").At.Y.Should().BeLessThan(Label(card.Front, "White background").At.Y);
        Texts(card.Front).Should().NotContain("Check");
        Texts(card.Back!).Should().Contain("Check").And.NotContain(text => text.Contains("light budget"));
    }

    // Cases that strain a layout: long names, other alphabets, many flashes, the slowest and longest figures, an impossible one with much to say.
    private static IEnumerable<ExposurePlan> Hard =>
    [
        White,
        White with { SetUp = "Белый фон на болоте с очень длинным названием, которое никто не прочтёт", Framing = SamplePlan.Framing("Μακρὺς φακός 100 mm mit Zwischenring 12 + 20 + 36 at 2.5:1", 2.5) },
        White with { Iso = new IsoSpeed(12800), Shutter = new ShutterSpeed(1 / 8000.0), Aperture = new FNumber(22) },
        White with { Lights = [.. White.Lights, SamplePlan.Light("a flash with a very long name indeed", LightRole.Rim, "grid of drinking straws, folded twice", 1250, 1 / 128.0)] },
        White with { Lights = [], Bracket = [] },
        White with { Lights = [], Verdict = Short with { Missed = [.. Enumerable.Range(1, 9).Select(i => new MissedLimit.FlashTooWeak($"flash {i} with a very long name", new DialMark(FlashPower.Full, PowerStep.Third), new Stops(i)))] } },
        White with { Verdict = Short with { Verdict = Verdict.AtTheEdge, FirstFrame = 0.005 } },
    ];

    private static ExposureVerdict Short => new() { Verdict = Verdict.DoesNotWork, Missed = [new MissedLimit.FlashTooWeak("key flash", new DialMark(FlashPower.Full, PowerStep.Third), new Stops(1.4))] };

    private static IEnumerable<Drawing> Sides(Card card) => new[] { card.Front, card.Back }.OfType<Drawing>();

    private static (Card Card, IReadOnlyList<Card> More, IReadOnlyList<string> Problems) Make(ExposurePlan exposure, string template) =>
        ExposureCard.Make(exposure, SamplePlan.Advice(exposure), CardTemplates.Of(template), Pages.Stamp, new CardPlace(7, 18));

    private static Drawing Front(ExposurePlan exposure, string template) => Make(exposure, template).Card.Front;

    private static Label Label(Drawing drawing, string text) => drawing.Marks.OfType<Label>().First(label => label.Text == text || (text.Length > 8 && label.Text.StartsWith(text, StringComparison.Ordinal)));

    private static IEnumerable<string> Texts(Drawing drawing) => drawing.Marks.OfType<Label>().Select(label => label.Text);

    // From the top of a capital letter to the baseline: tails and accents of neighbouring lines may share their gap.
    private static Bounds Ink(Label label)
    {
        var start = label.Baseline();
        var width = TextMeter.Width(label.Text, label.SizePt, label.Weight);
        return new Bounds(start.X, start.Y - TextMeter.CapHeight(label.SizePt, label.Weight), start.X + width, start.Y);
    }

    private static bool Overlap(Bounds a, Bounds b) => a.Left < b.Right && b.Left < a.Right && a.Top < b.Bottom && b.Top < a.Bottom;
}
