using UnitsNet;

namespace StudioKit.Planning.Tests;

public sealed class InchTextTests
{
    /// <summary>Decimal equivalents of fractions of an inch and their millimetres, as tables on drill gauges and in handbooks have them (the inch is 25.4 mm exactly, NIST SP 811, appendix B).</summary>
    [Theory]
    [InlineData(12.7, "1/2 in")]
    [InlineData(19.05, "3/4 in")]
    [InlineData(21.43, "27/32 in")]
    [InlineData(25.4, "1 in")]
    [InlineData(44.45, "1 3/4 in")]
    [InlineData(609.6, "24 in")]
    [InlineData(3.175, "1/8 in")]
    [InlineData(6.35, "1/4 in")]
    [InlineData(1, "0.039 in")]
    [InlineData(3, "0.12 in")]
    [InlineData(10, "0.39 in")]
    public void Lengths_read_as_a_rule_in_inches_has_them(double millimetres, string text) => InchText.Length(millimetres).Should().Be(text);

    [Fact]
    public void An_inch_fraction_is_never_further_off_than_half_a_thirty_second() => Gen.Double[0, 3000].Sample(millimetres =>
        Math.Abs(Inches(InchText.ByRule(millimetres)) - (millimetres / 25.4)).Should().BeLessThanOrEqualTo((1.0 / 64) + 1e-9));

    [Fact]
    public void A_short_length_is_said_in_decimals_so_that_it_is_off_by_little() => Gen.Double[0.5, 12].Sample(millimetres =>
        Math.Abs((Inches(InchText.Length(millimetres)) * 25.4) - millimetres).Should().BeLessThanOrEqualTo(0.15));

    [Fact]
    public void An_animal_that_is_shown_whole_is_never_said_to_be_longer() => Gen.Double[1, 500].Sample(millimetres =>
    {
        var inches = Inches(InchText.AtMostFigure(millimetres) + " in");
        (inches * 25.4).Should().BeLessThanOrEqualTo(millimetres + 1e-4);
        ((millimetres / 25.4) - inches).Should().BeLessThan(0.126);
    });

    /// <summary>NIST SP 811, appendix B: 1 oz = 28.34952 g, 1 lb = 453.5924 g, 1 lbf = 4.448222 N, 1 mile an hour = 0.44704 m/s.</summary>
    [Fact]
    public void Masses_forces_winds_and_warmth_convert_as_the_published_factors_have_it()
    {
        InchText.Mass(28.34952).Should().Be("1.0 oz");
        InchText.Mass(453.5924).Should().Be("1 lb");
        InchText.Mass(1120).Should().Be("2 lb 8 oz", "1,120 g are 39.5 oz");
        InchText.Force(44.48222).Should().Be("10 lbf");
        InchText.Speed(8.9408).Should().Be("20 mph");
        InchText.Temperature(37).Should().Be("99 °F", "98.6 °F");
        InchText.Paced(2400).Should().Be("7 ft 10 in", "94.49 in");
        InchText.Paced(3048).Should().Be("10 ft");
    }

    private static double Inches(string text)
    {
        text.Should().EndWith(" in");
        return text[..^3].Split(' ').Sum(part => part.Split('/') is [var over, var under]
            ? double.Parse(over, System.Globalization.CultureInfo.InvariantCulture) / double.Parse(under, System.Globalization.CultureInfo.InvariantCulture)
            : double.Parse(part, System.Globalization.CultureInfo.InvariantCulture));
    }
}
