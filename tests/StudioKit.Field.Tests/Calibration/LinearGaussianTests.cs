using MathNet.Numerics.LinearAlgebra;
using StudioKit.Field.Calibration.Drift;

namespace StudioKit.Field.Tests.Calibration;

public sealed class LinearGaussianTests
{
    /// <summary>
    /// Box and Tiao, Bayesian Inference in Statistical Analysis (1973), section 1.2.3, two physicists and one constant (from memory): who knows it to 20 is left with 17.9 by an observation of
    /// σ = 40, who knows it to 80 with 35.7 (35.78 unrounded); after a hundred observations with 3.9 either.
    /// </summary>
    [Theory]
    [InlineData(20, 1, 17.9)]
    [InlineData(80, 1, 35.7)]
    [InlineData(20, 100, 3.9)]
    [InlineData(80, 100, 3.9)]
    public void Observations_leave_what_the_textbook_says(double before, int observations, double after)
    {
        var (one, covariance) = (Vector<double>.Build.Dense(1, 1), Matrix<double>.Build.Dense(1, 1, before * before));
        var stepwise = Enumerable.Range(0, observations).Aggregate(covariance, (known, _) => LinearGaussian.After(known, one, 1600));

        Math.Sqrt(stepwise[0, 0]).Should().BeApproximately(after, 0.1);
        LinearGaussian.Left(one, covariance, one, 1600.0 / observations).Should().BeApproximately(stepwise[0, 0], 1e-9, "so many observations weigh as one of their mean");
        LinearGaussian.Repeats(one, covariance, one, 1600, stepwise[0, 0]).Should().Be(observations);
    }

    /// <summary>Cover and Thomas, capacity of the Gaussian channel ½·log₂(1 + P/N): fifteen times the noise carries two bits.</summary>
    [Fact]
    public void Information_is_that_of_the_gaussian_channel()
    {
        var one = Vector<double>.Build.Dense(1, 1);

        LinearGaussian.Bits(15, LinearGaussian.Left(one, Matrix<double>.Build.Dense(1, 1, 15), one, 1)).Should().BeApproximately(2, 1e-12);
    }

    [Fact]
    public void The_order_of_readings_does_not_matter_and_none_makes_anything_less_sure() =>
        Gen.Select(Gen.Double[-2, 2].Array[3], Gen.Double[-2, 2].Array[3], Gen.Double[-2, 2].Array[3], Gen.Double[0.1, 2].Array[3], Gen.Double[0.01, 2].Array[2]).Sample((first, second, sum, prior, variance) =>
        {
            var (a, b, c) = (Vector<double>.Build.Dense(first), Vector<double>.Build.Dense(second), Vector<double>.Build.Dense(sum));
            var before = Matrix<double>.Build.DenseOfDiagonalArray(prior);

            var (ab, ba) = (LinearGaussian.After(LinearGaussian.After(before, a, variance[0]), b, variance[1]), LinearGaussian.After(LinearGaussian.After(before, b, variance[1]), a, variance[0]));

            (ab - ba).L2Norm().Should().BeLessThan(1e-9);
            (c * ab * c).Should().BeLessThanOrEqualTo((c * before * c) + 1e-9);
            LinearGaussian.Left(c, LinearGaussian.After(before, a, variance[0]), b, variance[1]).Should().BeApproximately(c * ab * c, 1e-9);
        });

    [Fact]
    public void Repeats_reach_what_is_asked_for_and_one_fewer_does_not() =>
        Gen.Select(Gen.Double[0.1, 2].Array[2], Gen.Double[0.01, 2], Gen.Double[0.05, 0.95]).Sample((prior, variance, share) =>
        {
            // A sum of two of which only one is read: the other stays.
            var (sum, effect, covariance) = (Vector<double>.Build.Dense([1, 1]), Vector<double>.Build.Dense([1, 0]), Matrix<double>.Build.DenseOfDiagonalArray(prior));
            var asked = prior[1] + (share * prior[0]);

            var times = LinearGaussian.Repeats(sum, covariance, effect, variance, asked)!.Value;

            times.Should().BePositive();
            LinearGaussian.Left(sum, covariance, effect, variance / times).Should().BeLessThanOrEqualTo(asked + 1e-6);
            (times == 1 || LinearGaussian.Left(sum, covariance, effect, variance / (times - 1)) > asked - 1e-6).Should().BeTrue();
            LinearGaussian.Repeats(sum, covariance, effect, variance, prior[1] * 0.99).Should().BeNull("the other part was never read");
        });

    [Fact]
    public void What_is_sure_already_needs_no_reading_and_variances_are_above_nothing()
    {
        var (one, covariance) = (Vector<double>.Build.Dense(1, 1), Matrix<double>.Build.Dense(1, 1, 1));

        LinearGaussian.Repeats(one, covariance, one, 1, 1).Should().Be(0);
        FluentActions.Invoking(() => LinearGaussian.After(covariance, one, 0)).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => LinearGaussian.Left(one, covariance, one, -1)).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => LinearGaussian.Repeats(one, covariance, one, 1, 0)).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => LinearGaussian.Bits(1, 0)).Should().Throw<ArgumentOutOfRangeException>();
    }
}
