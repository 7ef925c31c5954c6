namespace StudioKit.Kits.Tests;

/// <summary>How many flashes a set of cells gives: as the kit says, else by energy, else as usual; and only what is assumed is told as a default.</summary>
public sealed class FlashesPerSetTests
{
    private const string Cells = "cell: {name: cell, chemistry: nickel-metal-hydride, voltage: 1.2 V, capacity: 2 Ah, mass: 27 g}, cell-count: 4";

    // Four cells of 2 Ah at 1.2 V hold 34 560 J; half of it reaches the capacitor (from memory): 227 flashes of 76 J.
    [Theory]
    [InlineData(Cells, 150, true)]
    [InlineData("energy: 76 J", 150, true)]
    [InlineData($"energy: 76 J, {Cells}", 227, false)]
    [InlineData($"energy: 76 J, flashes-per-set: 90, {Cells}", 90, false)]
    [InlineData("flashes-per-set: 150", 150, false)]
    public void What_is_given_goes_before_what_follows_and_that_before_what_is_usual(string keys, int flashes, bool told)
    {
        var read = Read(keys);

        read.Diagnostics.Should().BeEmpty();
        read.Kit!.Flashes.Single().FullPowerFlashes.Should().Be(flashes);
        read.Defaults.Any(used => used is { Path: "flashes[0].flashes-per-set", Value: "150" }).Should().Be(told);
    }

    // 1 mAh at 1.2 V is 4.32 J, four times that 17.28 J, of which half makes no flash of 76 J.
    [Theory]
    [InlineData("76 J", "1 mAh")]
    [InlineData("0.1 J", "200 Ah")]
    public void Cells_that_cannot_belong_to_such_a_flash_are_refused(string energy, string capacity)
    {
        var fault = Read($"energy: {energy}, {Cells.Replace("2 Ah", capacity, StringComparison.Ordinal)}").Diagnostics.Should().ContainSingle().Which;

        fault.Code.Should().Be(DiagnosticCodes.Contradiction);
        fault.Line.Should().Be(6);
        Read($"energy: {energy}, flashes-per-set: 100, {Cells.Replace("2 Ah", capacity, StringComparison.Ordinal)}").Diagnostics.Should().BeEmpty();
    }

    private static KitReadResult Read(string keys) => KitReader.Parse(
        $$"""
        kit: Small
        camera: {name: body, sensor: 36 mm x 24 mm}
        lenses:
          - {name: reed, focal-length: 55 mm}
        flashes:
          - {name: sedge, guide-number: 30 m, {{keys}}}

        """, "kit.yaml", PartsLibrary.Embedded);
}
