using StudioKit.Field.Calibration.Drift;

namespace StudioKit.Field.Tests.Calibration;

public sealed class OutingScatterTests
{
    private static readonly DateOnly First = new(2026, 5, 9);

    // Thirteen trials of a vaccine: ill and well of those treated, ill and well of the others (Colditz and others, JAMA 271, 1994, table 1, as in every textbook of the method; from memory).
    private static readonly (int, int, int, int)[] Trials =
    [
        (4, 119, 11, 128), (6, 300, 29, 274), (3, 228, 11, 209), (62, 13536, 248, 12619), (33, 5036, 47, 5761), (180, 1361, 372, 1079), (8, 2537, 10, 619),
        (505, 87886, 499, 87892), (29, 7470, 45, 7232), (17, 1699, 65, 1600), (186, 50448, 141, 27197), (5, 2493, 3, 2338), (27, 16886, 29, 17825),
    ];

    /// <summary>The published reckoning of these trials' log risk ratios: Q = 152.2330 (tests of the package metafor against metan), τ² = 0.3088 by the method of moments (from memory).</summary>
    [Fact]
    public void Scatter_between_studies_agrees_with_the_published_example()
    {
        var scatter = OutingScatter.Of([.. Trials.Select(trial => RiskRatio(trial.Item1, trial.Item2, trial.Item3, trial.Item4))]);

        scatter.Q.Should().BeApproximately(152.2330, 5e-5);
        (scatter.Stops * scatter.Stops).Should().BeApproximately(0.3088, 5e-5);
        scatter.IsSignificant.Should().BeTrue();
    }

    /// <summary>Of 400 seasons whose outings do not differ, one in twenty is taken for one that does, ±4.5 binomial deviations of 4.4.</summary>
    [Fact]
    public void Outings_that_do_not_differ_are_seldom_said_to()
    {
        var random = new Random(20260509);

        Enumerable.Range(0, 400).Count(_ => OutingScatter.Of(Season(5, 0, random)).IsSignificant).Should().BeInRange(1, 40);
    }

    /// <summary>A fifth of a stop between twelve outings that are read to a tenth: the mean of many seasons is what was put in.</summary>
    [Fact]
    public void What_outings_differ_by_is_found()
    {
        var random = new Random(20260509);
        var seasons = Enumerable.Range(0, 200).Select(_ => OutingScatter.Of(Season(12, 0.2, random))).ToList();

        seasons.Average(scatter => scatter.Stops * scatter.Stops).Should().BeApproximately(0.04, 0.006);
        seasons.Count(scatter => scatter.IsSignificant).Should().BeGreaterThan(180);
    }

    [Fact]
    public void Two_outings_are_too_few() => FluentActions.Invoking(() => OutingScatter.Of(Season(2, 0, new Random(1)))).Should().Throw<ArgumentException>();

    private static OutingEstimate RiskRatio(double ill, double well, double others, double othersWell) => new(
        First, Math.Log(ill / (ill + well) / (others / (others + othersWell))), Math.Sqrt((1 / ill) - (1 / (ill + well)) + (1 / others) - (1 / (others + othersWell))));

    private static List<OutingEstimate> Season(int outings, double between, Random random) =>
        [.. Enumerable.Range(0, outings).Select(i => new OutingEstimate(First.AddDays(20 * i), (between * Gaussian(random)) + (0.1 * Gaussian(random)), 0.1))];

    private static double Gaussian(Random random) => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
}
