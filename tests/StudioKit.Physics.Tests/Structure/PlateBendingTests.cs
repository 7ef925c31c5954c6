using StudioKit.Physics.Structure;

namespace StudioKit.Physics.Tests.Structure;

public sealed class PlateBendingTests
{
    /// <summary>Roark's Formulas (Young and Budynas 2002), table 11.4 case 1a: y = α·q·b⁴/(E·t³) at ν = 0.3, so α = 10.92 of ours.</summary>
    /// <remarks>The table was computed by hand: it is off the exact series by up to 0.48 % (at 1.4). Hence 0.5 %.</remarks>
    [Theory]
    [InlineData(1.0, 0.0444)]
    [InlineData(1.2, 0.0616)]
    [InlineData(1.4, 0.0770)]
    [InlineData(1.6, 0.0906)]
    [InlineData(1.8, 0.1017)]
    [InlineData(2.0, 0.1110)]
    [InlineData(3.0, 0.1335)]
    [InlineData(4.0, 0.1400)]
    [InlineData(5.0, 0.1417)]
    [InlineData(1e6, 0.1421)]
    public void Sag_with_free_edges_agrees_with_Young2002_table_11_4(double aspect, double published) =>
        (10.92 * PlateBending.UniformSag(aspect)).Should().BeApproximately(published, 0.005 * published);

    /// <summary>The same table's β: σ = β·q·b²/t², six times our moment factor at ν = 0.3.</summary>
    [Theory]
    [InlineData(1.0, 0.2874)]
    [InlineData(1.2, 0.3762)]
    [InlineData(1.4, 0.4530)]
    [InlineData(1.6, 0.5172)]
    [InlineData(1.8, 0.5688)]
    [InlineData(2.0, 0.6102)]
    [InlineData(3.0, 0.7134)]
    [InlineData(4.0, 0.7410)]
    [InlineData(5.0, 0.7476)]
    [InlineData(1e6, 0.7500)]
    public void Stress_with_free_edges_agrees_with_Young2002_table_11_4(double aspect, double published) =>
        (6 * PlateBending.UniformMoment(aspect, 0.3)).Should().BeApproximately(published, 0.005 * published);

    /// <summary>Timoshenko and Woinowsky-Krieger (1959), table of α for a central load (from memory); 0.5 % for its hand computation.</summary>
    [Theory]
    [InlineData(1.0, 0.01160)]
    [InlineData(1.2, 0.01353)]
    [InlineData(1.4, 0.01484)]
    [InlineData(1.6, 0.01570)]
    [InlineData(1.8, 0.01620)]
    [InlineData(2.0, 0.01651)]
    [InlineData(3.0, 0.01690)]
    [InlineData(1e6, 0.01695)]
    public void Sag_under_a_central_load_agrees_with_Timoshenko1959(double aspect, double published) =>
        PlateBending.CentralSag(aspect).Should().BeApproximately(published, 0.005 * published);

    /// <summary>Timoshenko and Woinowsky-Krieger (1959), clamped plates (from memory): α uniform, α central.</summary>
    /// <remarks>Printed to three figures, so half the last digit is up to 0.4 %; 1 % covers hand computation, as for the free plate.</remarks>
    [Theory]
    [InlineData(1.0, 0.00126, 0.00560)]
    [InlineData(1.2, 0.00172, 0.00647)]
    [InlineData(1.4, 0.00207, 0.00691)]
    [InlineData(1.6, 0.00230, 0.00712)]
    [InlineData(1.8, 0.00245, 0.00720)]
    [InlineData(2.0, 0.00254, 0.00722)]
    public void Held_edges_agree_with_Timoshenko1959(double aspect, double sag, double central)
    {
        ClampedPlate.UniformSag(aspect).Should().BeApproximately(sag, 0.01 * sag);
        ClampedPlate.CentralSag(aspect).Should().BeApproximately(central, 0.01 * central);
    }

    [Fact]
    public void A_long_plate_with_held_edges_is_a_strip_between_walls()
    {
        ClampedPlate.UniformSag(1e3).Should().BeApproximately(1.0 / 384, 0.005 / 384);
    }

    /// <summary>Navier's double series, summed plainly: an independent route to the same sag and moment.</summary>
    [Fact]
    public void Levys_series_agrees_with_Naviers() =>
        Gen.Select(Gen.Double[1, 4], Gen.Double[0, 0.5]).Sample(
            (aspect, nu) =>
            {
                var (sag, moment) = Navier(aspect, nu);
                return Math.Abs(PlateBending.UniformSag(aspect) - sag) < 1e-7
                    && Math.Abs(PlateBending.UniformMoment(aspect, nu) - moment) < 1e-4;
            },
            iter: 20);

    [Fact]
    public void Held_edges_sag_less_than_free_ones() =>
        Gen.Double[1, 10].Sample(
            aspect => ClampedPlate.UniformSag(aspect) < PlateBending.UniformSag(aspect)
                && ClampedPlate.CentralSag(aspect) < PlateBending.CentralSag(aspect),
            iter: 20);

    [Theory]
    [InlineData(0.99)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void An_impossible_aspect_is_refused(double aspect)
    {
        foreach (var act in new Func<double>[]
        {
            () => PlateBending.UniformSag(aspect), () => PlateBending.CentralSag(aspect), () => PlateBending.UniformMoment(aspect, 0.3),
            () => ClampedPlate.UniformSag(aspect), () => ClampedPlate.CentralSag(aspect),
        })
        {
            act.Should().Throw<ArgumentOutOfRangeException>().WithParameterName(nameof(aspect));
        }
    }

    private static (double Sag, double Moment) Navier(double aspect, double nu)
    {
        var (sag, moment) = (0.0, 0.0);
        for (var m = 1; m < 200; m += 2)
        {
            for (var n = 1; n < 200; n += 2)
            {
                var sign = (m + n) % 4 == 2 ? 1 : -1;
                var (x, y) = (m * (double)m, n * (double)n / (aspect * aspect));
                var term = sign / (m * n * Math.Pow(x + y, 2));
                sag += 16 / Math.Pow(Math.PI, 6) * term;
                moment += 16 / Math.Pow(Math.PI, 4) * term * (x + (nu * y));
            }
        }

        return (sag, moment);
    }
}
