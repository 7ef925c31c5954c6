using StudioKit.Physics.Optics;

namespace StudioKit.Physics.Tests.Optics;

public sealed class ThinLensTests
{
    /// <summary>photonstophotos.net, "How Extension Tubes Affect Magnification": a 300 mm internal-focusing lens on a 68 mm tube.</summary>
    /// <remarks>
    /// Printed to the millimetre and worked from two figures in m, hence 0.2 %. The second distance, 1973 mm, belongs to the
    /// rounded 0.23.
    /// </remarks>
    [Fact]
    public void A_300_mm_lens_on_68_mm_of_tube_agrees_with_the_published_example()
    {
        var focalLength = 242.9e-3;

        ThinLens.SubjectToSensor(focalLength, 0.27 + (68e-3 / focalLength)).Should().BeApproximately(1061e-3, 0.002 * 1061e-3);
        ThinLens.SubjectToSensor(0.3, 0.23).Should().BeApproximately(1973e-3, 0.002 * 1973e-3);
    }

    /// <summary>cambridgeincolour.com thread 61937: a 105 mm zoom at 450 mm and 1:4 works as a 72 mm lens. Whole numbers, so exact.</summary>
    [Fact]
    public void A_zoom_that_shortens_agrees_with_the_published_example()
    {
        var focalLength = ThinLens.FocalLengthAtFocus(0.45, 0.25);

        focalLength.Should().BeApproximately(0.072, 1e-12);
        ThinLens.ObjectDistance(focalLength, 0.25).Should().BeApproximately(0.360, 1e-12);
    }

    /// <summary>Gaussian optics: D = f·(2 + m + 1/m) + i is 4·f + i at life size; 300 mm gives 75 mm, less a quarter of the hiatus.</summary>
    [Theory]
    [InlineData(0, 0.075)]
    [InlineData(0.010, 0.0725)]
    public void A_lens_that_reaches_life_size_at_300_mm_is_a_quarter_as_long(double hiatus, double expected) =>
        ThinLens.FocalLengthAtFocus(0.3, 1, hiatus).Should().BeApproximately(expected, 1e-12);

    [Fact]
    public void Subject_and_sensor_are_closest_at_life_size() =>
        Gen.Select(Gen.Double[0.02, 0.3], Gen.Double[0.05, 20]).Sample((f, m) =>
            ThinLens.SubjectToSensor(f, m) >= ThinLens.SubjectToSensor(f, 1) - 1e-12);

    [Fact]
    public void The_focal_length_at_a_focus_undoes_the_distance_that_it_gives() =>
        Gen.Select(Gen.Double[0.02, 0.3], Gen.Double[0.001, 10], Gen.Double[-0.02, 0.02]).Sample((f, m, i) =>
            Math.Abs(ThinLens.FocalLengthAtFocus(ThinLens.SubjectToSensor(f, m, i), m, i) - f) < 1e-9 * f);

    /// <summary>Gaussian optics: 1/u + 1/v = 1/f with v = m·u.</summary>
    [Fact]
    public void Vergences_of_subject_and_image_add_up_to_the_power() =>
        Gen.Select(Gen.Double[0.02, 0.3], Gen.Double[0.001, 10]).Sample((f, m) =>
        {
            var subject = ThinLens.ObjectDistance(f, m);
            return Math.Abs((1 / subject) + (1 / (m * subject)) - (1 / f)) < 1e-9 / f;
        });

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void A_focal_length_that_no_lens_has_is_refused(double focalLength)
    {
        FluentActions.Invoking(() => ThinLens.ObjectDistance(focalLength, 1)).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => ThinLens.SubjectToSensor(focalLength, 1)).Should().Throw<ArgumentOutOfRangeException>();
    }
}
