using StudioKit.Physics.Structure;

namespace StudioKit.Physics.Tests.Structure;

/// <summary>Wind behind a porous screen.</summary>
public sealed class WindBreakTests
{
    private static readonly Gen<(double Distance, double Porosity)> Any = Gen.Select(Gen.Double[0, 20], Gen.Double[0, 1]);

    /// <summary>
    /// Středová and others (2012), abstract: in full foliage, a tenth of holes, 60 % less wind 50 m and 30 % less 150 m behind belts of 15 to 18 m; without foliage, up to half of holes,
    /// 80 and 90 % of the wind; nothing from 250 m on. The belts' mean height, 16.5 m, makes three and nine heights of it to within a tenth, and its fifteen are 250 m.
    /// </summary>
    [Theory]
    [InlineData(50 / 16.5, 0.1, 0.4)]
    [InlineData(150 / 16.5, 0.1, 0.7)]
    [InlineData(50 / 16.5, 0.5, 0.8)]
    [InlineData(150 / 16.5, 0.5, 0.9)]
    [InlineData(250 / 16.5, 0.1, 1)]
    [InlineData(250 / 16.5, 0.5, 1)]
    public void It_is_what_was_measured_behind_belts_of_trees(double heights, double porosity, double measured) =>
        WindBreak.SpeedLeft(heights, porosity).Should().BeApproximately(measured, 0.01);

    /// <summary>Loeffler, Gordon and Gillespie (1992), abstract: least wind behind nine belts with up to 31 % of holes was 29 to 71 % of the open wind, two to six heights behind them.</summary>
    [Theory]
    [InlineData(0)]
    [InlineData(0.15)]
    [InlineData(0.31)]
    public void Its_least_lies_where_others_measured_it(double porosity) => WindBreak.SpeedLeft(3, porosity).Should().BeInRange(0.29, 0.71);

    /// <summary>An independent formula for barriers, of the wind erosion prediction system, 1 − exp(−m·x²) + n·exp(−0.003·(x + s)^d), promises half as much wind or less: ours errs on the safe side of it.</summary>
    [Fact]
    public void It_never_promises_more_shelter_than_the_formula_for_barriers() => Any.Where(any => any.Porosity <= 0.6).Sample(any =>
    {
        var (x, p) = any;
        var m = 0.008 - (0.17 * p) + (0.17 * Math.Pow(p, 1.05));
        var n = 1.35 * Math.Exp(-0.5 * Math.Pow(p, 0.2));
        var formula = 1 - Math.Exp(-m * x * x) + (n * Math.Exp(-0.003 * Math.Pow(x + (10 * (1 - (0.5 * p))), 3 - p)));
        return x > 12 || WindBreak.SpeedLeft(x, p) >= Math.Min(1, formula) - 0.1;
    });

    [Fact]
    public void More_holes_and_more_distance_leave_no_less_wind() => Any.Sample(any =>
        WindBreak.SpeedLeft(any.Distance, Math.Min(1, any.Porosity + 0.05)) >= WindBreak.SpeedLeft(any.Distance, any.Porosity) - 1e-12
        && WindBreak.SpeedLeft(any.Distance + 0.5, any.Porosity) >= WindBreak.SpeedLeft(any.Distance, any.Porosity) - 1e-12
        && WindBreak.SpeedLeft(any.Distance, 1) == 1);

    [Theory]
    [InlineData(-1, 0.5)]
    [InlineData(1, -0.1)]
    [InlineData(1, 1.1)]
    [InlineData(double.NaN, 0.5)]
    public void What_cannot_be_is_refused(double distance, double porosity) =>
        FluentActions.Invoking(() => WindBreak.SpeedLeft(distance, porosity)).Should().Throw<ArgumentOutOfRangeException>();
}
