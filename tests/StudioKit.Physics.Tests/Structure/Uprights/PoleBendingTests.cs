using StudioKit.Physics.Structure.Uprights;

namespace StudioKit.Physics.Tests.Structure.Uprights;

public sealed class PoleBendingTests
{
    /// <summary>Gere and Goodno (2009), cantilever beams: w·L⁴/(8EI).</summary>
    [Fact]
    public void An_even_load_over_the_whole_pole_bends_it_as_the_tables_say() => PoleBending.UniformToTop(30, 0, 0.7, 44.7).Should().BeApproximately(30 * Math.Pow(0.7, 4) / (8 * 44.7), 1e-12);

    /// <summary>The same tables give P·x²·(3L − x)/(6EI) at the top for a force at x; summed over the loaded stretch: 0.01 %.</summary>
    [Fact]
    public void A_load_on_the_upper_stretch_is_the_sum_of_its_forces() =>
        Gen.Select(Gen.Double[0, 0.9], Gen.Double[0.2, 2], Gen.Double[1, 100]).Sample((part, length, load) =>
        {
            const int Count = 2000;
            var from = part * length;
            var step = (length - from) / Count;
            var sum = Enumerable.Range(0, Count).Select(i => from + ((i + 0.5) * step)).Sum(x => load * step * x * x * ((3 * length) - x) / (6 * 50.0));
            return Math.Abs(PoleBending.UniformToTop(load, from, length, 50) - sum) <= 1e-4 * sum;
        });

    /// <summary>Table of cantilever beams: P·L³/(3EI), turned round.</summary>
    [Fact]
    public void The_pull_at_the_top_undoes_its_deflection() => PoleBending.PullOfTop(5 * Math.Pow(0.8, 3) / (3 * 44.7), 0.8, 44.7).Should().BeApproximately(5, 1e-12);

    /// <summary>Table of simple beams: M·L/(3EI) at the end where the moment acts.</summary>
    [Fact]
    public void A_moment_turns_the_end_of_a_beam_as_the_tables_say() => PoleBending.EndTurn(6, 0.3, 44.7).Should().BeApproximately(6 * 0.3 / (3 * 44.7), 1e-12);

    [Theory]
    [InlineData(-1, 0, 1, 1)]
    [InlineData(1, 1.1, 1, 1)]
    [InlineData(1, 0, 0, 1)]
    [InlineData(1, 0, 1, 0)]
    public void What_is_no_pole_is_refused(double load, double from, double to, double stiffness) =>
        FluentActions.Invoking(() => PoleBending.UniformToTop(load, from, to, stiffness)).Should().Throw<ArgumentOutOfRangeException>();
}
