namespace StudioKit.Kits.Tests;

/// <summary>What people write who have never seen a kit file: it is read, or answered with the form that works.</summary>
public sealed class EverydayWordsTests
{
    private static readonly string Kit = StarterBlocks.AllInUse;

    [Theory]
    [InlineData("sensor: 36 mm x 24 mm", "sensor: full frame")]
    [InlineData("sensor: 36 mm x 24 mm", "sensor: Full-frame")]
    [InlineData("sensor: 36 mm x 24 mm", "sensor: 36x24mm")]
    [InlineData("guide-number: 30 m @ ISO 100, 35 mm", "guide-number: 60 (ISO 100, m, 200 mm)")]
    [InlineData("guide-number: 30 m @ ISO 100, 35 mm", "guide-number: GN60 (ISO 100)")]
    [InlineData("guide-number: 30 m @ ISO 100, 35 mm", "guide-number: 60 m at 200mm ISO 100")]
    [InlineData("guide-number: 30 m @ ISO 100, 35 mm", "guide-number: 60 meters")]
    [InlineData("aperture: f/16", "aperture: f8")]
    [InlineData("flash-sync: 1/200 s", "flash-sync: 1/200s")]
    [InlineData("iso: 400", "iso: iso 100")]
    [InlineData("iso: 400", "iso: 400 ISO")]
    [InlineData("iso: 100 to 3200", "iso: 100-3200")]
    [InlineData("iso: 100 to 3200", "iso: ISO 100 – ISO 3200")]
    [InlineData("aperture: f/2.8 to f/32", "aperture: f2.8-f32")]
    [InlineData("aperture: f/2.8 to f/32", "aperture: f/2.8..f/32")]
    [InlineData("magnifications: [1:2, 1:1]", "magnifications: [0.5x, 1x]")]
    public void Usage_of_the_trade_that_has_one_meaning_is_read(string usual, string written)
    {
        Read(usual, written).Diagnostics.Should().BeEmpty();
        KitSchemaTests.Faults(With(usual, written)).Should().BeEmpty("an editor takes what the reader takes");
    }

    [Theory]
    [InlineData("sensor: 36 mm x 24 mm", "sensor: APS-C", "sensor: 23.5 mm x 15.6 mm")]
    [InlineData("sensor: 36 mm x 24 mm", "sensor: aps-c (1.5x)", "sensor: 23.5 mm x 15.6 mm")]
    [InlineData("sensor: 36 mm x 24 mm", "sensor: 1 inch", "sensor: 13.2 mm x 8.8 mm")]
    [InlineData("sensor: 36 mm x 24 mm", "sensor: crop", "sensor: 24 mm x 16 mm")]
    [InlineData("sensor: 36 mm x 24 mm", "sensor: 35mm", "sensor: full frame")]
    [InlineData("pixels: 6000 x 4000", "pixels: 24 MP", "6000 x 4000")]
    [InlineData("aperture: f/16", "aperture: 8", "f/8")]
    [InlineData("aperture: f/16", "aperture: 1:8", "f/8")]
    [InlineData("aperture: f/16", "aperture: auto", "best")]
    [InlineData("flash-sync: 1/200 s", "flash-sync: 200", "1/200 s")]
    [InlineData("flash-sync: 1/200 s", "flash-sync: 1/200", "1/200 s")]
    [InlineData("flash-sync: 1/200 s", "flash-sync: 1/200th", "1/200 s")]
    [InlineData("guide-number: 30 m @ ISO 100, 35 mm", "guide-number: 60", "60 m @ ISO 100")]
    [InlineData("guide-number: 30 m @ ISO 100, 35 mm", "guide-number: 38 m @ ISO 100, 35 m", "35 mm")]
    [InlineData("guide-number: 30 m @ ISO 100, 35 mm", "guide-number: 38 m @ ISO 100, 0.035 mm", "35 mm")]
    [InlineData("magnifications: [1:2, 1:1]", "magnifications: 1:2, 1:1", "[1:2, 1:1]")]
    [InlineData("magnifications: [1:2, 1:1]", "magnifications: [1:2, 1,5:1]", "1.5:1")]
    [InlineData("length: 25 mm, mass: 80 g}", "length: 2,5 cm, mass: 80 g}", "2.5 cm")]
    [InlineData("mass: 700 g", "mass: 0,7 kg", "0.7 kg")]
    [InlineData("ambient: EV 12", "ambient: cloudy", "EV 12")]
    [InlineData("wind: Beaufort 3", "wind: light breeze", "Beaufort 3")]
    [InlineData("kind: white-background", "kind: white", "white-background")]
    [InlineData("camera-pitch: [45°, 90°]", "camera-pitch: [45, 90]", "45°")]
    public void What_has_no_one_meaning_is_answered_with_a_form_that_works(string usual, string written, string works)
    {
        var read = Read(usual, written);

        read.HasErrors.Should().BeTrue();
        read.Diagnostics.Should().Contain(fault => fault.Hint!.Contains(works));
    }

    [Fact]
    public void A_comma_inside_a_number_between_brackets_is_one_fault_and_no_two_values()
    {
        Read("magnifications: [1:2, 1:1]", "magnifications: [1:2, 1,5:1]").Diagnostics.Should().ContainSingle()
            .Which.Message.Should().Be("'1,5:1' has a comma in its number.");
        Read("length: 25 mm, mass: 80 g}", "length: 2,5 cm, mass: 80 g}").Diagnostics.Should().ContainSingle()
            .Which.Message.Should().Be("'2,5 cm' has a comma in its number.");
    }

    [Theory]
    [InlineData("± 500000000 stop")]
    [InlineData("± 300 %")]
    [InlineData("± 11 stops")]
    public void An_uncertainty_larger_than_the_value_could_be_off_is_refused(string uncertainty) =>
        Read("guide-number: 30 m @ ISO 100, 35 mm ", $"guide-number: 30 m @ ISO 100, 35 mm {uncertainty} ").Diagnostics.Should().ContainSingle()
            .Which.Message.Should().Contain("more than the value itself could be off");

    [Fact]
    public void An_uncertainty_wider_than_everything_its_key_allows_is_refused() =>
        Read("focal-length: 55 mm", "focal-length: 55 mm ± 3 km").HasErrors.Should().BeTrue();

    [Theory]
    [InlineData("guide-number: 30 m @ ISO 100, 35 mm ", "guide-number: 30 m @ ISO 100, 35 mm ± 1/2 stop ")]
    [InlineData("guide-number: 30 m @ ISO 100, 35 mm ", "guide-number: 30 m @ ISO 100, 35 mm ± 20 % ")]
    [InlineData("focal-length: 55 mm", "focal-length: 55 mm ± 2 mm")]
    public void An_uncertainty_that_can_be_is_kept(string usual, string written) => Read(usual, written).HasErrors.Should().BeFalse();

    [Theory]
    [InlineData("0 mm x 0 mm")]
    [InlineData("10 km x 10 km")]
    [InlineData("-90 mm x 130 mm")]
    [InlineData("39 mm x 90 mm")]
    [InlineData("90 mm x 301 mm")]
    public void A_card_has_a_size_that_a_hand_can_hold_and_a_printer_print(string size)
    {
        QuantityText.TryCardSize(size, out _, out var problem).Should().BeFalse();

        problem.Should().Contain("40 mm to 300 mm");
    }

    private static string With(string usual, string written)
    {
        Kit.Should().Contain(usual);
        var at = Kit.IndexOf(usual, StringComparison.Ordinal);
        return Kit[..at] + written + Kit[(at + usual.Length)..];
    }

    private static KitReadResult Read(string usual, string written) => KitReader.Parse(With(usual, written), "kit.yaml", PartsLibrary.Embedded);
}
