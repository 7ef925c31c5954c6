using StudioKit.Field.Calibration.Drift;

namespace StudioKit.Field.Tests.Calibration;

public sealed class WeightedLineTests
{
    private static readonly double[] X =
    [
        0.2, 337.4, 118.2, 884.6, 10.1, 226.5, 666.3, 996.3, 448.6, 777.0, 558.2, 0.4, 0.6, 775.5, 666.9, 338.0, 447.5, 11.6,
        556.0, 228.1, 995.8, 887.6, 120.2, 0.3, 0.3, 556.8, 339.1, 887.2, 999.0, 779.0, 11.1, 118.3, 229.2, 669.1, 448.9, 0.5,
    ];

    private static readonly double[] Y =
    [
        0.1, 338.8, 118.1, 888.0, 9.2, 228.1, 668.5, 998.5, 449.1, 778.9, 559.2, 0.3, 0.1, 778.1, 668.8, 339.3, 448.9, 10.8,
        557.7, 228.3, 998.0, 888.8, 119.6, 0.3, 0.6, 557.6, 339.3, 888.0, 998.5, 778.9, 10.2, 117.6, 228.9, 668.4, 449.2, 0.2,
    ];

    /// <summary>
    /// NIST Statistical Reference Datasets, linear regression, Norris (36 observations, lower difficulty): certified values to fifteen digits.
    /// Doubles with centred sums keep ten of them.
    /// </summary>
    [Fact]
    public void Line_through_the_Norris_data_has_the_certified_values()
    {
        var line = WeightedLine.Through([.. X.Zip(Y, (x, y) => (x, y, 1.0))]);

        line.Intercept.Should().BeApproximately(-0.262323073774029, 1e-10);
        line.Slope.Should().BeApproximately(1.00211681802045, 1e-12);
        line.InterceptError.Should().BeApproximately(0.232818234301152, 1e-10);
        line.SlopeError.Should().BeApproximately(0.429796848199937e-3, 1e-13);
        line.Scatter.Should().BeApproximately(0.884796396144373, 1e-10);
        line.DegreesOfFreedom.Should().Be(34);
    }

    /// <summary>A point of weight three is the same point taken three times (a law of least squares), but for the degrees of freedom.</summary>
    [Fact]
    public void A_weight_counts_as_so_many_points()
    {
        (double, double, double)[] once = [(0, 1, 3), (1, 2.5, 1), (2, 2.9, 1)];
        (double, double, double)[] thrice = [(0, 1, 1), (0, 1, 1), (0, 1, 1), (1, 2.5, 1), (2, 2.9, 1)];

        WeightedLine.Through(once).Slope.Should().BeApproximately(WeightedLine.Through(thrice).Slope, 1e-12);
        WeightedLine.Through(once).Intercept.Should().BeApproximately(WeightedLine.Through(thrice).Intercept, 1e-12);
    }

    /// <summary>Two-sided 95 % values of Student's t: 12.706 for one degree of freedom, 4.303 for two, 2.032 for 34 (NIST/SEMATECH e-Handbook, 1.3.6.7.2, from memory).</summary>
    [Theory]
    [InlineData(3, 12.706)]
    [InlineData(4, 4.303)]
    [InlineData(36, 2.032)]
    public void The_interval_of_the_slope_is_students(int points, double t)
    {
        var line = WeightedLine.Through([.. X.Zip(Y, (x, y) => (x, y, 1.0)).Take(points)]);

        line.SlopeInterval(0.95).Should().BeApproximately(t * line.SlopeError, 0.001 * t * line.SlopeError);
    }

    [Fact]
    public void Two_points_or_one_place_are_no_line()
    {
        FluentActions.Invoking(() => WeightedLine.Through([(0, 1, 1), (1, 2, 1)])).Should().Throw<ArgumentException>();
        FluentActions.Invoking(() => WeightedLine.Through([(1, 1, 1), (1, 2, 1), (1, 3, 1)])).Should().Throw<ArgumentException>();
    }
}
