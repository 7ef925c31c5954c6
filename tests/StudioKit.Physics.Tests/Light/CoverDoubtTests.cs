using StudioKit.Physics.Light;
using StudioKit.Physics.Light.Covers;
using UnitsNet;

namespace StudioKit.Physics.Tests.Light;

/// <summary>How unsure the loss in a clear wall is.</summary>
public sealed class CoverDoubtTests
{
    /// <summary>Total luminous transmittances of clear sheets of a few millimetres as data sheets give them (from memory): theory leaves absorption out, and its doubt has room for it.</summary>
    [Theory]
    [InlineData(ClearMaterial.Acrylic, 0.92)]
    [InlineData(ClearMaterial.Glass, 0.90)]
    [InlineData(ClearMaterial.Polystyrene, 0.88)]
    [InlineData(ClearMaterial.Polycarbonate, 0.88)]
    [InlineData(ClearMaterial.Polyester, 0.88)]
    public void Published_transmittances_lie_within_the_doubt(ClearMaterial material, double transmittance)
    {
        var index = RefractiveIndex.Of(material);

        Math.Abs(ClearWall.Loss(index).Value + Math.Log2(transmittance)).Should().BeLessThan(CoverDoubt.OfWall(index).Value);
    }

    /// <summary>Head-on a wall passes 2n/(n² + 1), so that its loss grows by (n² − 1)/(n·(n² + 1))/ln 2 for each unit of n.</summary>
    [Theory]
    [InlineData(1.49)]
    [InlineData(1.59)]
    public void It_is_the_spread_of_the_index_and_a_twentieth_of_the_light(double n)
    {
        var slope = ((n * n) - 1) / (n * ((n * n) + 1)) / Math.Log(2);

        CoverDoubt.OfWall(n).Value.Should().BeApproximately(Math.Sqrt(Math.Pow(0.02 * slope, 2) + Math.Pow(Math.Log2(0.95), 2)), 1e-5);
    }

    [Fact]
    public void Two_walls_are_off_together_and_water_not_at_all()
    {
        var tub = new CoverCase { Shape = CoverShape.Tub, Width = Length.FromCentimeters(10), Depth = Length.FromCentimeters(10), Height = Length.FromCentimeters(10), Wall = Length.FromMillimeters(2), RefractiveIndex = 1.59 };
        var tank = tub with { Shape = CoverShape.Tank, Water = Length.FromCentimeters(8) };
        var (inside, above, left, right) = (new Position(0, 0, 0.02), new Position(0, 0, 0.5), new Position(-0.5, 0, 0.02), new Position(0.5, 0, 0.02));

        CoverDoubt.Between(tub, above, inside).Value.Should().Be(CoverDoubt.OfWall(1.59).Value);
        CoverDoubt.Between(tub, left, right).Value.Should().Be(2 * CoverDoubt.OfWall(1.59).Value);
        CoverDoubt.Between(tank, above, inside).Value.Should().Be(0);
    }

    [Theory]
    [InlineData(1.0)]
    [InlineData(double.NaN)]
    public void What_is_no_wall_is_refused(double index) => FluentActions.Invoking(() => CoverDoubt.OfWall(index)).Should().Throw<ArgumentOutOfRangeException>();
}
