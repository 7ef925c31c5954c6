namespace StudioKit.Kits.Tests;

public sealed class KitEqualityTests
{
    // Words that no other can stand for alone: a unit-focusing lens cannot focus so close, a light below belongs to a white background only, and
    // a dark one needs its key, and only radios tell groups apart. All are what other words are changed into, so equality still has to tell them.
    private static readonly string[] Entangled = ["internal", "white-background", "below", "key", "radio-receiver"];

    [Theory]
    [InlineData("fen-edge.yaml")]
    [InlineData("heath-ultralight.yaml")]
    [InlineData("tall-stand.yaml")]
    public void A_kit_read_twice_is_the_same_kit(string file)
    {
        var text = File.ReadAllText(Path.Combine(KitFolder.Path, file));
        var (once, again) = (Read(text), Read(text));

        (once == again).Should().BeTrue();
        (once.Kit == again.Kit).Should().BeTrue();
        again.GetHashCode().Should().Be(once.GetHashCode());
        again.Kit!.GetHashCode().Should().Be(once.Kit!.GetHashCode());
    }

    [Theory]
    [InlineData("fen-edge.yaml")]
    [InlineData("heath-ultralight.yaml")]
    [InlineData("tall-stand.yaml")]
    public void A_kit_differs_from_the_same_kit_with_any_single_value_changed(string file)
    {
        var text = KitVariants.OfDemo(file);
        var kit = Read(File.ReadAllText(Path.Combine(KitFolder.Path, file))).Kit!;

        // A changed value may read as the same mark (1/60 and 1/61 s), so one of its changes must tell, not each.
        var unnoticed = text.Values.Where(value => !Entangled.Contains(value.Text) && !text.Changed(value).Any(changed => Read(changed).Kit is { } other && other != kit)).ToList();

        text.Values.Should().HaveCountGreaterThan(100);
        unnoticed.Select(value => $"line {value.Line}: {value.Text}").Should().BeEmpty();
    }

    [Fact]
    public void However_a_demo_kit_is_changed_two_readings_of_it_are_equal_and_hash_alike()
    {
        var text = KitVariants.OfDemo("fen-edge.yaml");
        var change = from value in Gen.Int[0, text.Values.Count - 1] from which in Gen.Int[0, 7] select (value, which);

        change.Sample(pick =>
        {
            var changed = text.Changed(text.Values[pick.value]).Take(pick.which + 1).Last();
            var (once, again) = (Read(changed), Read(changed));
            return once == again && once.GetHashCode() == again.GetHashCode() && once.Kit == again.Kit;
        }, iter: 50);
    }

    [Fact]
    public void A_comment_makes_another_content_but_the_same_kit()
    {
        var text = File.ReadAllText(Path.Combine(KitFolder.Path, "fen-edge.yaml"));
        var (plain, commented) = (Read(text), Read("# Weighed again in May.\n" + text));

        (plain.Kit == commented.Kit).Should().BeTrue();
        (plain.Uncertainties == commented.Uncertainties).Should().BeTrue();
        (plain == commented).Should().BeFalse();
    }

    [Fact]
    public void Another_uncertainty_is_another_reading()
    {
        var text = File.ReadAllText(Path.Combine(KitFolder.Path, "fen-edge.yaml"));
        var (plain, surer) = (Read(text), Read(text.Replace("± 0.3 stop", "± 0.2 stop", StringComparison.Ordinal)));

        (plain.Kit == surer.Kit).Should().BeTrue();
        (plain.Uncertainties == surer.Uncertainties).Should().BeFalse();
    }

    private static KitReadResult Read(string text) => KitReader.Parse(text, "kit.yaml", PartsLibrary.Embedded);
}
