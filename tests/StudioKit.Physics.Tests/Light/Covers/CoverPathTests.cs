using StudioKit.Physics.Light;
using StudioKit.Physics.Light.Covers;

namespace StudioKit.Physics.Tests.Light.Covers;

public sealed class CoverPathTests
{
    private static readonly Position Subject = new(0, 0, 0.005);

    /// <summary>Straight up through the top of a tub: 0.9254 of acrylic head-on.</summary>
    [Fact]
    public void Light_from_straight_above_passes_the_top_alone()
    {
        var lamp = new Position(0, 0, 0.4);

        CoverPath.Crossings(SampleCovers.Tub, lamp, Subject).Should().ContainSingle().Which.Face.Should().Be(CoverFace.Top);
        CoverPath.Transmittance(SampleCovers.Tub, lamp, Subject).Should().BeApproximately(0.9254, 5e-5);
    }

    /// <summary>From low in front it comes in by the front wall, and what goes on leaves by the back one.</summary>
    [Fact]
    public void A_line_right_through_a_tub_passes_two_walls() =>
        CoverPath.Crossings(SampleCovers.Tub, new(0, -0.5, 0.02), new(0, 0.5, 0.02)).Select(crossing => crossing.Face).Should().Equal(CoverFace.Front, CoverFace.Back);

    /// <summary>A line through the middle of a ball meets its wall square, wherever it comes from.</summary>
    [Fact]
    public void A_half_ball_is_met_square_from_everywhere() => Gen.Double[0, 6.28].Select(Gen.Double[0.05, 1.5]).Sample((azimuth, elevation) =>
    {
        var high = (0.05 + 0.002) * 1.0;
        var round = SampleCovers.Dome with { Height = UnitsNet.Length.FromMeters(high - 0.002) };
        var from = new Position(Math.Cos(azimuth) * Math.Cos(elevation), Math.Sin(azimuth) * Math.Cos(elevation), Math.Sin(elevation));
        return CoverPath.Crossings(round, from, new Position(0, 0, 0)) is [{ Incidence: < 1e-6 }];
    });

    /// <summary>
    /// Photons are sent from the subject into a small cone about the lens and traced by the law of refraction through both faces of a real wall, each turned back or let
    /// through by chance. Of 40,000 the standard error is at most 0.0025, four of it are allowed; the wall's shift of the ray changes nothing in a flat wall.
    /// </summary>
    [Theory]
    [InlineData(0.0, 0.30, 0.30)]
    [InlineData(0.1, 0.35, 0.20)]
    [InlineData(0.0, 0.40, 0.05)]
    public void A_tub_passes_as_much_as_photons_played_through_its_walls(double right, double front, double up)
    {
        const int Photons = 40_000;
        var lens = new Position(right, -front, up);
        var passed = TubOfPhotons.Passed(SampleCovers.Tub, Subject, lens, Photons, 11);

        CoverPath.Transmittance(SampleCovers.Tub, Subject, lens).Should().BeApproximately(passed, 4 * 0.5 / Math.Sqrt(Photons));
    }

    [Fact]
    public void Nothing_stands_in_the_way_beside_a_cover() => CoverPath.Transmittance(SampleCovers.RoundTub, new(1, -1, 0.5), new(1, 1, 0)).Should().Be(1);

    /// <summary>What a wall takes does not ask which way the light goes.</summary>
    [Fact]
    public void A_cover_passes_as_much_either_way() => Gen.Double[-1, 1].Select(Gen.Double[-1, -0.1], Gen.Double[0.05, 1]).Sample((x, y, z) =>
    {
        var lamp = new Position(x, y, z);
        return new[] { SampleCovers.Tub, SampleCovers.RoundTub, SampleCovers.Dome }.All(cover =>
            Math.Abs(CoverPath.Transmittance(cover, lamp, Subject) - CoverPath.Transmittance(cover, Subject, lamp)) < 1e-9);
    });

    [Fact]
    public void A_cover_of_no_width_is_refused()
    {
        var path = () => CoverPath.Transmittance(SampleCovers.Tub with { Width = UnitsNet.Length.Zero }, new(0, 0, 1), Subject);

        path.Should().Throw<ArgumentOutOfRangeException>().WithParameterName("Width");
    }
}
