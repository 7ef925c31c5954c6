using StudioKit.Kits.Cards;

namespace StudioKit.Kits.Tests;

public sealed class CardTemplateReaderTests
{
    private const string Plain =
        """
        template: my card
        size: A6
        front:
          - set-up
          - settings
        back: [check, rule]
        type:
          settings: 40 pt
        """;

    /// <remarks>ISO/IEC 7810 (ID-1 85.60 mm × 53.98 mm), ISO 216 (A7 74 × 105, A6 105 × 148), inches by definition 25.4 mm.</remarks>
    [Theory]
    [InlineData("ID-1", 53.98, 85.60)]
    [InlineData("A7", 74, 105)]
    [InlineData("A6", 105, 148)]
    [InlineData("3x5in", 76.2, 127)]
    [InlineData("4x6in", 101.6, 152.4)]
    [InlineData("90 mm x 13 cm", 90, 130)]
    public void A_size_is_that_of_its_standard_or_as_written(string size, double width, double height)
    {
        var template = Read(Plain.Replace("A6", size, StringComparison.Ordinal)).Template!;

        template.Size.Width.Millimeters.Should().BeApproximately(width, 0.005);
        template.Size.Height.Millimeters.Should().BeApproximately(height, 0.005);
    }

    [Fact]
    public void Blocks_keep_their_order_and_what_is_left_out_has_its_default()
    {
        var template = Read(Plain).Template!;

        template.Front.Should().Equal(CardBlock.SetUp, CardBlock.Settings);
        template.Back.Should().Equal(CardBlock.Check, CardBlock.Rule);
        template.Type.Settings.DtpPoints.Should().BeApproximately(40, 1e-9);
        template.Type.LeastNumerals.DtpPoints.Should().BeApproximately(18, 1e-9);
        template.Hole.Millimeters.Should().Be(6);
        template.Index.Should().BeTrue();
    }

    [Fact]
    public void Templates_that_come_along_read_without_fault_and_may_be_copied()
    {
        foreach (var name in CardTemplates.Names)
        {
            var read = Read(CardTemplates.Text(name));
            read.Diagnostics.Should().BeEmpty();
            read.Template!.Name.Should().Be(name);
            read.Template.Size.Name.Should().Be(name);
        }
    }

    [Fact]
    public void Settings_are_18_points_or_more_on_an_a6_card_as_it_comes() =>
        CardTemplates.Of("A6").Type.LeastNumerals.DtpPoints.Should().BeGreaterThanOrEqualTo(18 - 1e-9);

    [Fact]
    public void A_size_of_ones_own_takes_the_blocks_of_the_next_smaller_standard()
    {
        var template = CardTemplates.For(CardSize.Custom(UnitsNet.Length.FromMillimeters(80), UnitsNet.Length.FromMillimeters(110)));

        template.Name.Should().Be("80x110mm");
        template.Front.Should().Equal(CardTemplates.Of("A7").Front);
    }

    /// <remarks>Place, sentence, source line, caret and nearest name, as a compiler gives them; written by hand.</remarks>
    [Theory]
    [InlineData("size: A6", "size: A66", "card.yaml(2,7): error KIT001: 'A66' is not a size of card.\n    size: A66\n          ^\n    hint: Did you mean 'A6'? Known: ID-1, A7, 3x5in, 4x6in, A6, or two lengths such as '90 mm x 130 mm'.")]
    [InlineData("  - settings", "  - setings", "card.yaml(5,5): error KIT001: 'setings' is not a block of a card.\n      - setings\n        ^\n    hint: Did you mean 'settings'? Known: set-up, framing, settings, flashes, made-for, check, remedies, light-budget, sharpness, bracket, light-places, distance-powers, light-changes, rule, patches, settings-code.")]
    [InlineData("settings: 40 pt", "settings: 40", "card.yaml(8,13): error KIT001: '40' has no unit; a size of type needs one.\n      settings: 40\n                ^\n    hint: Did you mean '40 pt'?")]
    [InlineData("settings: 40 pt", "small: 5 pt", "card.yaml(8,10): error KIT002: '5 pt' is out of range for 'small'.\n      small: 5 pt\n             ^\n    hint: It may be 6.5 pt to 120 pt.")]
    [InlineData("back: [", "bakc: [", "card.yaml(6,1): error KIT003: 'bakc' is not a key of a card template.\n    bakc: [check, rule]\n    ^\n    hint: Did you mean 'back'?")]
    [InlineData("[check, rule]", "[check, check]", "card.yaml(6,7): error KIT009: 'check' stands twice on the back.\n    back: [check, check]\n          ^\n    hint: Keep one of the two.")]
    [InlineData("  - settings\n", "", "card.yaml(4,3): error KIT009: The front does not show the settings.\n      - set-up\n      ^\n    hint: Put 'settings' among its blocks: they must be seen first.")]
    public void A_fault_is_told_with_place_excerpt_and_what_would_be_accepted(string written, string instead, string told)
    {
        var read = Read(Plain.ReplaceLineEndings("\n").Replace(written, instead, StringComparison.Ordinal));

        read.Template.Should().BeNull();
        read.Diagnostics.Select(fault => fault.Format()).Should().Contain(told);
    }

    [Fact]
    public void All_faults_of_a_file_are_told_at_once() =>
        Read("template: x\nsize: B9\nfront: [seting]\nhole: 9\n").Diagnostics.Select(fault => fault.Line).Should().Equal(2, 3, 4);

    private static CardTemplateReadResult Read(string text) => CardTemplateReader.Parse(text, "card.yaml");
}
