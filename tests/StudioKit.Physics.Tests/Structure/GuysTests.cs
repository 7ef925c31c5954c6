using StudioKit.Physics.Structure;
using UnitsNet;

namespace StudioKit.Physics.Tests.Structure;

public sealed class GuysTests
{
    /// <summary>Worked by hand: 100 N at 45° has the components 100/√2 = 70.711 N.</summary>
    [Fact]
    public void A_cord_at_45_degrees_takes_seven_tenths_of_its_peg_sideways() =>
        Guys.SidewaysHold(100).Should().BeApproximately(70.711, 0.001);

    /// <summary>Independent route: the moment of the peg's force, components taken at the top corner (0, h), about (b, 0).</summary>
    [Fact]
    public void A_cords_hold_is_its_moment_about_the_lee_feet_over_the_base() =>
        Gen.Select(Gen.Double[1, 200], Gen.Double[0.1, 2], Gen.Double[0.1, 2]).Sample((hold, height, baseLength) =>
        {
            // The cord pulls (−1, −1)/√2 at (0, h); moment about (b, 0), positive where it presses the windward feet down.
            var (pullX, pullY) = (-hold / Math.Sqrt(2), -hold / Math.Sqrt(2));
            var moment = ((0 - baseLength) * pullY) - (height * pullX);
            return Math.Abs(Guys.WindwardHold(hold, height, baseLength) - (moment / baseLength)) < 1e-9 * moment;
        });

    [Theory]
    [InlineData(-1)]
    [InlineData(double.NaN)]
    public void An_impossible_hold_is_refused(double hold)
    {
        var act = () => Guys.SidewaysHold(hold);

        act.Should().Throw<ArgumentOutOfRangeException>();
    }

    /// <summary>Worked by hand from moments: 2 kg at 0.2 m hold 3.923 N·m, two pegs of 20 N on the windward feet 0.4 m away add 16 N·m.</summary>
    [Fact]
    public void Windward_pegs_add_their_hold_times_the_base()
    {
        var pegged = WindTipping.Of(new WindTippingCase(
            Speed.FromMetersPerSecond(5),
            [new WindSurface("skirt", 0.3, Wind.PlateDrag, 0.25)],
            Mass.FromKilograms(2),
            Length.FromMeters(0.2),
            Length.FromMeters(0.2),
            0.4,
            1.5)
        { WindwardPegs = Force.FromNewtons(40), AllPegs = Force.FromNewtons(80) });

        pegged.Holding.NewtonMeters.Should().BeApproximately((2 * 9.80665 * 0.2) + (40 * 0.4), 1e-9);

        // Push: 1.225/2·25 Pa on 0.3 m² at 1.28 is 5.88 N; friction 0.4·19.613 N and pegs 80 N hold against it.
        pegged.SlidingSafety.Should().BeApproximately(((0.4 * 2 * 9.80665) + 80) / (0.5 * 1.225 * 25 * 0.3 * 1.28), 1e-9);
    }
}
