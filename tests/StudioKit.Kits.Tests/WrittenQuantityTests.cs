namespace StudioKit.Kits.Tests;

/// <summary>Values written in the place of others.</summary>
public sealed class WrittenQuantityTests
{
    private static readonly string[] Units = ["mm", "cm", "m", "in", "\"", "inches", "ft", "yd", "µm"];

    // NIST SP 811 (2008), appendix B: 1 in = 25.4 mm and 1 ft = 0.3048 m, exact; 508 mm are 20 in. π/3 rad are 60°.
    [Theory]
    [InlineData("45 cm", "470 mm", "47 cm")]
    [InlineData("45cm", "470 mm", "47cm")]
    [InlineData("0.45 m", "475.5 mm", "0.4755 m")]
    [InlineData("450 mm", "-20 mm", "-20 mm")]
    [InlineData("450 mm", "-0 mm", "0 mm")]
    [InlineData("18 in", "508 mm", "20 in")]
    [InlineData("17 3/4 in", "508 mm", "20 in")]
    [InlineData("1 ft 6 in", "508 mm", "20 in")]
    [InlineData("1'6\"", "508 mm", "20\"")]
    [InlineData("60°", "47.5°", "47.5°")]
    [InlineData("60 deg", "47.5°", "47.5 deg")]
    [InlineData("1 rad", "60°", "1.0472 rad")]
    public void A_moved_value_is_written_in_the_unit_that_the_kit_has_it_in(string before, string value, string written) =>
        WrittenQuantity.Like(before, value).Should().Be(written);

    [Theory]
    [InlineData("45 cm ± 2 cm", "47 cm ± 2 cm")]
    [InlineData("45 cm±2 cm", "47 cm ± 2 cm")]
    [InlineData("18 in +/- 5 %", "18.5039 in +/- 5 %")]
    public void How_far_off_the_value_before_may_be_stays_behind_it(string before, string written) => WrittenQuantity.Like(before, "470 mm").Should().Be(written);

    [Theory]
    [InlineData("45 cm", "47")]
    [InlineData("45 cm", "60°")]
    [InlineData("fen flash", "470 mm")]
    [InlineData("", "470 mm")]
    [InlineData("45", "470 mm")]
    [InlineData("cm", "470 mm")]
    [InlineData("0.00045 km", "470 mm")]
    public void Where_the_two_are_not_of_one_kind_or_the_unit_is_too_large_the_value_stays_as_it_is(string before, string value) => WrittenQuantity.Like(before, value).Should().Be(value);

    [Fact]
    public void A_length_reads_back_to_a_hundredth_of_a_millimetre_in_whatever_unit_it_is_written() =>
        Gen.Select(Gen.Int[0, Units.Length - 1], Gen.Int[-100_000, 100_000]).Sample((unit, tenths) =>
        {
            var written = WrittenQuantity.Like($"1 {Units[unit]}", FormattableString.Invariant($"{tenths / 10.0} mm"));

            QuantityText.TryLength(written, out var read, out var problem).Should().BeTrue(problem);
            read.Millimeters.Should().BeApproximately(tenths / 10.0, 0.01);
            written.Should().EndWith(" " + Units[unit]);
        });
}
