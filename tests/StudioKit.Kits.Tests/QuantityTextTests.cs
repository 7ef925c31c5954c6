using StudioKit.Physics.Exposure;
using UnitsNet;

namespace StudioKit.Kits.Tests;

/// <summary>Values as people write them, against the exact definitions of the units.</summary>
public sealed class QuantityTextTests
{
    // The yard and pound agreement of 1959, as NIST SP 811 (2008), appendix B, states it: 1 in = 25.4 mm, 1 ft = 0.3048 m, 1 yd = 0.9144 m, all exact.
    // Tolerance: what a few roundings in double arithmetic may add, 1e-12.
    [Theory]
    [InlineData("305 mm", 305)]
    [InlineData("30.5cm", 305)]
    [InlineData("1.22 m", 1220)]
    [InlineData("5 µm", 0.005)]
    [InlineData("12 in", 304.8)]
    [InlineData("3/4 in", 19.05)]
    [InlineData("1 1/2 in", 38.1)]
    [InlineData("1½ in", 38.1)]
    [InlineData("¾\"", 19.05)]
    [InlineData("6\"", 152.4)]
    [InlineData("5 ft 3 in", 1600.2)]
    [InlineData("5' 3\"", 1600.2)]
    [InlineData("5'3\"", 1600.2)]
    [InlineData("5ft3in", 1600.2)]
    [InlineData("2 ft 6 1/2 in", 774.7)]
    [InlineData("-1 ft 6 in", -457.2)]
    [InlineData("2 yd", 1828.8)]
    public void Lengths_follow_the_exact_inch(string text, double millimeters)
    {
        QuantityText.TryLength(text, out var length, out var problem).Should().BeTrue(problem);

        length.Millimeters.Should().BeApproximately(millimeters, Math.Abs(millimeters) * 1e-12);
    }

    // NIST SP 811 (2008), appendix B: 1 lb = 0.453 592 37 kg exactly, 16 oz to the pound.
    [Theory]
    [InlineData("850 g", 850)]
    [InlineData("1.25 kg", 1250)]
    [InlineData("1 lb", 453.59237)]
    [InlineData("16 oz", 453.59237)]
    [InlineData("1 lb 4 oz", 566.9904625)]
    public void Masses_follow_the_exact_pound(string text, double grams)
    {
        QuantityText.TryMass(text, out var mass, out var problem).Should().BeTrue(problem);

        mass.Grams.Should().BeApproximately(grams, grams * 1e-12);
    }

    // NIST SP 811 (2008), appendix B: psi 6.894 757 E+03 Pa, printed to seven digits, hence 1e-7.
    [Theory]
    [InlineData("1 psi", 6.894757e3)]
    [InlineData("420000 psi", 420000 * 6.894757e3)]
    [InlineData("3.2 GPa", 3.2e9)]
    [InlineData("51.4 MPa", 51.4e6)]
    [InlineData("5 N/mm²", 5e6)]
    public void Stresses_follow_NIST_SP_811(string text, double pascals)
    {
        QuantityText.TryPressure(text, out var stress, out var problem).Should().BeTrue(problem);

        stress.Pascals.Should().BeApproximately(pascals, pascals * 1e-7);
    }

    // NIST SP 811 (2008), appendix B: mi/h 4.4704 E-01 m/s exact, knot 5.144 444 E-01 m/s (7 digits), km/h 2.777 778 E-01 m/s (7 digits).
    [Theory]
    [InlineData("10 mm/s", 0.01)]
    [InlineData("6 m/s", 6)]
    [InlineData("1 km/h", 0.2777778)]
    [InlineData("1 mph", 0.44704)]
    [InlineData("1 kn", 0.5144444)]
    public void Speeds_follow_NIST_SP_811(string text, double metersPerSecond)
    {
        QuantityText.TrySpeed(text, out var speed, out var problem).Should().BeTrue(problem);

        speed.MetersPerSecond.Should().BeApproximately(metersPerSecond, 1e-7);
    }

    // Upper bounds of the Beaufort bands: meteothes.gr table.
    [Theory]
    [InlineData("Beaufort 0", 0.3)]
    [InlineData("Beaufort 3", 5.4)]
    [InlineData("Beaufort 4", 7.9)]
    [InlineData("4 Bft", 7.9)]
    [InlineData("Beaufort 11", 32.6)]
    [InlineData("6 m/s", 6)]
    public void A_Beaufort_force_is_taken_at_the_upper_bound_of_its_band(string text, double metersPerSecond)
    {
        QuantityText.TryWind(text, out var wind, out var problem).Should().BeTrue(problem);

        wind.MetersPerSecond.Should().BeApproximately(metersPerSecond, 1e-12);
    }

    // NIST SP 811 (2008), appendix B: t/°C = (t/°F - 32)/1.8; T/K - 273.15.
    [Theory]
    [InlineData("25 °C", 25)]
    [InlineData("77 °F", 25)]
    [InlineData("32 °F", 0)]
    [InlineData("-40 °F", -40)]
    [InlineData("300 K", 26.85)]
    public void Temperatures_follow_NIST_SP_811(string text, double celsius)
    {
        QuantityText.TryTemperature(text, out var temperature, out var problem).Should().BeTrue(problem);

        temperature.DegreesCelsius.Should().BeApproximately(celsius, 1e-10);
    }

    // NIST SP 811 (2008), appendix B: lb/ft 1.488 164 kg/m, lb/ft³ 1.601 846 E+01 kg/m³, each to seven digits.
    [Fact]
    public void Densities_follow_NIST_SP_811()
    {
        QuantityText.TryLinearDensity("1 lb/ft", out var pipe, out _).Should().BeTrue();
        QuantityText.TryDensity("1 lb/ft3", out var light, out _).Should().BeTrue();
        QuantityText.TryDensity("1.19 g/cm³", out var acrylic, out _).Should().BeTrue();
        QuantityText.TryAreaDensity("100 g/m²", out var cloth, out _).Should().BeTrue();

        pipe.KilogramsPerMeter.Should().BeApproximately(1.488164, 1e-6);
        light.KilogramsPerCubicMeter.Should().BeApproximately(16.01846, 1e-5);
        acrylic.KilogramsPerCubicMeter.Should().BeApproximately(1190, 1e-9);
        cloth.KilogramsPerSquareMeter.Should().BeApproximately(0.1, 1e-12);
    }

    [Theory]
    [InlineData("60°", 60)]
    [InlineData("60 deg", 60)]
    [InlineData("1 rad", 57.29577951308232)] // 180/π
    public void Angles_are_read_in_degrees_and_radians(string text, double degrees)
    {
        QuantityText.TryAngle(text, out var angle, out var problem).Should().BeTrue(problem);

        angle.Degrees.Should().BeApproximately(degrees, 1e-12);
    }

    [Theory]
    [InlineData("1/300 s", 1.0 / 300)]
    [InlineData("2 s", 2)]
    [InlineData("0.5 s", 0.5)]
    [InlineData("250 ms", 0.25)]
    [InlineData("5 min", 300)]
    [InlineData("1 h 30 min", 5400)]
    public void Times_are_read_exactly(string text, double seconds)
    {
        QuantityText.TryDuration(text, out var time, out var problem).Should().BeTrue(problem);

        time.Seconds.Should().BeApproximately(seconds, seconds * 1e-12);
    }

    // The marks of third-stop scales are roundings of 2^(k/6), 2^(k/3) (common practice, no source); a mark off the scale stays as written.
    [Theory]
    [InlineData("f/16", 16)]
    [InlineData("f/2.8", 2.8284271247461903)]
    [InlineData("F/11", 11.313708498984761)]
    [InlineData("f/22", 22.627416997969522)]
    [InlineData("f/13", 12.699208415745595)]
    [InlineData("f/6.7", 6.7)]
    public void An_f_number_mark_stands_for_its_exact_third_stop(string text, double exact)
    {
        QuantityText.TryFNumber(text, out var aperture, out var problem).Should().BeTrue(problem);

        aperture.Value.Should().BeApproximately(exact, exact * 1e-12);
    }

    [Theory]
    [InlineData("1/125 s", 1.0 / 128)]
    [InlineData("1/60 s", 1.0 / 64)]
    [InlineData("1/1000 s", 1.0 / 1024)]
    [InlineData("2 s", 2)]
    [InlineData("30 s", 32)]
    [InlineData("1/90 s", 1.0 / 90)]
    public void A_shutter_mark_stands_for_its_exact_third_stop(string text, double exact)
    {
        QuantityText.TryShutter(text, out var shutter, out var problem).Should().BeTrue(problem);

        shutter.Seconds.Should().BeApproximately(exact, exact * 1e-12);
    }

    // Power in thirds is P = 2^(-k/3) (arithmetic): 1/5 is k = 7, 1/6.4 is k = 8, 1/8 +1/3 is k = 8.
    [Theory]
    [InlineData("1/1", 0)]
    [InlineData("1/5", 7)]
    [InlineData("1/6.4", 8)]
    [InlineData("1/8 +1/3", 8)]
    [InlineData("1/8 + 0.3", 8)]
    [InlineData("1/4 -2/3 stop", 8)]
    [InlineData("1/16 +0.7", 10)]
    [InlineData("1/128", 21)]
    [InlineData("1/6.4 (1/8 + 1/3)", 8)]
    [InlineData("1/8 (1/8)", 9)]
    public void Flash_power_counts_in_exact_thirds(string text, int thirdsBelowFull)
    {
        QuantityText.TryPower(text, out var power, out var problem).Should().BeTrue(problem);

        (power.StopsBelowFull * 3).Should().BeApproximately(thirdsBelowFull, 1e-9);
    }

    // Half-stop dials: 1/11 is the mark of 2^(−7/2), 1/2.8 of 2^(−3/2) (arithmetic; marks by common practice, as those of f-numbers).
    [Theory]
    [InlineData("1/2.8", 3)]
    [InlineData("1/11", 7)]
    [InlineData("1/16 + 1/2", 7)]
    [InlineData("1/11 (1/16 + 1/2)", 7)]
    public void Flash_power_of_a_half_stop_dial_counts_in_exact_halves(string text, int halvesBelowFull)
    {
        QuantityText.TryPower(text, out var power, out var problem).Should().BeTrue(problem);

        (power.StopsBelowFull * 2).Should().BeApproximately(halvesBelowFull, 1e-9);
    }

    [Theory]
    [InlineData("1/6.4 (1/8)")]
    [InlineData("1/6.4 (")]
    [InlineData("1/6.4 1/8")]
    public void Two_powers_in_one_value_are_refused_where_they_differ(string text) => QuantityText.TryPower(text, out _, out _).Should().BeFalse();

    [Theory]
    [InlineData("+1/3", 1.0 / 3)]
    [InlineData("-0.5 stop", -0.5)]
    [InlineData("1 1/3 stops", 4.0 / 3)]
    [InlineData("-1 1/3", -4.0 / 3)]
    public void Stops_are_read_as_fractions(string text, double stops)
    {
        QuantityText.TryStops(text, out var value, out var problem).Should().BeTrue(problem);

        value.Value.Should().BeApproximately(stops, 1e-12);
    }

    // GN at another speed is GN₁₀₀·√(S/100): a camera manual's table gives 51 m at ISO 200, so 36.06 m at ISO 100 (ISO multiplier 0.7071);
    // GN 37 m and 120 ft stand for the same flash in an encyclopedia article, both rounded, hence 1.5 %.
    [Theory]
    [InlineData("38 m @ ISO 100, 35 mm", 38, 35)]
    [InlineData("GN 38 m", 38, null)]
    [InlineData("51 m @ ISO 200", 36.0624, null)]
    [InlineData("38 m @ 35 mm", 38, 35)]
    [InlineData("60 (ISO 100, m, 200 mm)", 60, 200)]
    [InlineData("60 m (ISO 100, 200 mm)", 60, 200)]
    [InlineData("60 m at ISO 100 and 200 mm", 60, 200)]
    [InlineData("GN 60", 60, null)]
    [InlineData("GN60", 60, null)]
    [InlineData("GN: 58 m (ISO 100/21°, zoom 105 mm)", 58, 105)]
    [InlineData("GN 197 ft at ISO 100", 60.0456, null)]
    [InlineData("197 (ISO 100, ft, 200 mm)", 60.0456, 200)]
    [InlineData("60 m / 197 ft (ISO 100, 200 mm)", 60, 200)]
    [InlineData("60/197 (ISO 100, m/ft, 200 mm)", 60, 200)]
    [InlineData("85 m (ISO 200, 105 mm, full power)", 60.1041, 105)]
    public void A_guide_number_is_brought_to_ISO_100(string text, double meters, int? zoom)
    {
        QuantityText.TryGuideNumber(text, out var number, out var problem).Should().BeTrue(problem);

        number.AtIso100.Meters.Should().BeApproximately(meters, 1e-4);
        number.Zoom?.Millimeters.Should().Be(zoom);
        (number.Zoom is null).Should().Be(zoom is null);
    }

    [Theory]
    [InlineData("60", "has no unit")]
    [InlineData("60 (ISO 100, 200 mm)", "has no unit")]
    [InlineData("GN 197", "may be in feet")]
    [InlineData("60 (ISO 100, m, 200 mm", "does not close it")]
    [InlineData("60 m @ 35 mm, 105 mm", "second zoom")]
    [InlineData("60 m @ ISO", "ISO")]
    [InlineData("60 m @ bright", "bright")]
    [InlineData("60 m / 60 ft", "differ")]
    [InlineData("0 m", "above zero")]
    [InlineData("60 m @ 0 mm", "above zero")]
    public void A_guide_number_that_cannot_be_read_is_refused_with_the_reason(string text, string reason)
    {
        QuantityText.TryGuideNumber(text, out _, out var problem).Should().BeFalse();

        problem.Should().Contain(reason);
    }

    [Fact]
    public void A_guide_number_in_feet_is_the_same_flash()
    {
        QuantityText.TryGuideNumber("120 ft", out var number, out _).Should().BeTrue();

        number.AtIso100.Meters.Should().BeApproximately(37, 37 * 0.015);
    }

    // EV 0 is 2.5 lx, EV 12 is 10 240 lx, EV 14 is 40 960 lx at C = 250 (Wikipedia "Exposure value").
    [Theory]
    [InlineData("EV 12", 12)]
    [InlineData("12 EV", 12)]
    [InlineData("EV -1", -1)]
    [InlineData("10240 lx", 12)]
    [InlineData("40.96 klx", 14)]
    [InlineData("2.5 lx", 0)]
    public void Brightness_is_an_exposure_value_or_illuminance(string text, double exposureValue)
    {
        QuantityText.TryExposureValue(text, out var value, out var problem).Should().BeTrue(problem);

        value.AtIso100.Should().BeApproximately(exposureValue, 1e-12);
    }

    [Theory]
    [InlineData("1:2", 0.5)]
    [InlineData("2:1", 2)]
    [InlineData("0.5", 0.5)]
    [InlineData("0.5x", 0.5)]
    [InlineData("1/4", 0.25)]
    public void Magnification_is_a_ratio_or_a_number(string text, double magnification)
    {
        QuantityText.TryMagnification(text, out var value, out var problem).Should().BeTrue(problem);

        value.Value.Should().Be(magnification);
    }

    [Fact]
    public void Electrical_thermal_and_optical_values_are_read()
    {
        QuantityText.TryVoltage("1.2 V", out var voltage, out _).Should().BeTrue();
        QuantityText.TryCharge("2.5 Ah", out var charge, out _).Should().BeTrue();
        QuantityText.TryExpansion("7.2e-5 /K", out var expansion, out _).Should().BeTrue();
        QuantityText.TryExpansion("4e-5 /°F", out var perFahrenheit, out _).Should().BeTrue();
        QuantityText.TryOpticalPower("+3 dpt", out var power, out _).Should().BeTrue();
        QuantityText.TryRatio("50 %", out var ratio, out _).Should().BeTrue();
        QuantityText.TryIso("ISO 400", out var iso, out _).Should().BeTrue();
        QuantityText.TrySize("36 x 24 mm", out var wide, out var high, out _).Should().BeTrue();

        voltage.Volts.Should().Be(1.2);
        charge.MilliampereHours.Should().Be(2500);
        expansion.PerKelvin.Should().Be(7.2e-5);
        perFahrenheit.PerKelvin.Should().BeApproximately(7.2e-5, 1e-18); // 1 K is 1.8 °F; the published pair for PMMA is 4.0e-5 /°F and 7.2e-5 /K
        power.InverseMeters.Should().Be(3);
        ratio.Should().BeApproximately(0.5, 1e-15);
        iso.Value.Should().Be(400);
        (wide.Millimeters, high.Millimeters).Should().Be((36, 24));
    }

    [Theory]
    [InlineData("55", "'55' has no unit; a length needs one. Did you mean '55 mm'?")]
    [InlineData("1,5 mm", "'1,5 mm' has a comma in its number. Decimals take a point, and thousands no mark: '1.5 mm'.")]
    [InlineData("NaN mm", "'NaN mm' is not a length. Every value must be a finite number.")]
    [InlineData("5 in 3 ft", "'5 in 3 ft' is not a length: 'ft' cannot follow 'in'. Write for example '305 mm'.")]
    [InlineData("1/0 m", "'/0' is not a unit of length. Units known here: mm, cm, m, km, µm, nm, in, ft, yd.")]
    [InlineData("3 s", "'3 s' is a time; a length is needed. Write for example '305 mm'.")]
    [InlineData("", "There is no value here; a length is needed. Write for example '305 mm'.")]
    [InlineData("1e300 m", "'1e300 m' is too large a number. No value in a kit is anywhere near it.")]
    public void What_is_no_length_is_refused_with_a_hint(string text, string expected)
    {
        QuantityText.TryLength(text, out _, out var problem).Should().BeFalse();

        problem.Should().Be(expected);
    }

    [Fact]
    public void Any_length_survives_being_written_and_read() =>
        Gen.Double[0.001, 1e6].Sample(millimeters =>
        {
            var written = millimeters.ToString("R", System.Globalization.CultureInfo.InvariantCulture) + " mm";
            return QuantityText.TryLength(written, out var length, out _) && length.Equals(Length.FromMillimeters(millimeters), Length.Zero);
        });

    [Fact]
    public void An_inch_and_its_millimetres_are_one_length() =>
        Gen.Int[1, 64].Select(Gen.Int[1, 64]).Sample((sixtyFourths, whole) =>
        {
            var inches = QuantityText.TryLength($"{whole} {sixtyFourths}/64 in", out var a, out _);
            var millimeters = QuantityText.TryLength(
                ((whole + (sixtyFourths / 64.0)) * 25.4).ToString("R", System.Globalization.CultureInfo.InvariantCulture) + " mm", out var b, out _);
            return inches && millimeters && Math.Abs(a.Millimeters - b.Millimeters) <= 1e-12 * a.Millimeters;
        });

    [Fact]
    public void No_text_makes_a_reader_throw() =>
        Gen.String[Gen.Char["0123456789 ./:+-−±@,eEfFxXmcinft'\"°%½¾NaISOEVKpstloblgkhBr\u0000\t\u20AC"], 0, 24].Sample(text =>
        {
            _ = QuantityText.TryLength(text, out _, out _);
            _ = QuantityText.TryMass(text, out _, out _);
            _ = QuantityText.TryGuideNumber(text, out _, out _);
            _ = QuantityText.TryPower(text, out _, out _);
            _ = QuantityText.TryFNumber(text, out _, out _);
            _ = QuantityText.TryShutter(text, out _, out _);
            _ = QuantityText.TryMagnification(text, out _, out _);
            _ = QuantityText.TryExposureValue(text, out _, out _);
            _ = QuantityText.TryWind(text, out _, out _);
            _ = QuantityText.TryStops(text, out Stops _, out _);
            _ = QuantityText.TryRatio(text, out _, out _);
            _ = QuantityText.TrySize(text, out _, out _, out _);
        });
}
