using StudioKit.Physics.Exposure;

namespace StudioKit.Physics.Tests.Exposure;

public sealed class VeilTests
{
    // Veiling glare index 2 %, full field: lift of a mid-tone of 0.127, evaluated by an independent program.
    [Theory]
    [InlineData(0, 0.020, 0.21)]
    [InlineData(1, 0.040, 0.40)]
    [InlineData(2, 0.080, 0.70)]
    [InlineData(3, 0.160, 1.18)]
    public void Veil_doubles_with_every_stop_of_white_margin(double margin, double share, double lift)
    {
        Veil.ShareOfSaturation(new Stops(margin), 0.02).Should().BeApproximately(share, 1e-12);
        Veil.Lift(share, 0.127).Value.Should().BeApproximately(lift, 0.006);
    }

    // The same program: at one stop the black of the picture lies 4.64 stops under clipping and a tone of 0.01 rises by 2.32 stops.
    [Fact]
    public void Veil_of_one_stop_hides_the_shadows()
    {
        Math.Log2(Veil.ShareOfSaturation(new Stops(1), 0.02)).Should().BeApproximately(-4.64, 0.005);
        Veil.Lift(0.04, 0.01).Value.Should().BeApproximately(2.32, 0.005);
    }

    [Fact]
    public void Highest_margin_gives_back_the_limit_it_was_solved_for() =>
        Gen.Select(Gen.Double[0.05, 2], Gen.Double[0.003, 0.1], Gen.Double[0.05, 1]).Sample((limit, glare, share) =>
        {
            var margin = Veil.HighestMargin(new Stops(limit), glare, share, new Stops(2.97));
            var lift = Veil.Lift(Veil.ShareOfSaturation(margin, glare, share), Math.Pow(2, -2.97));
            return Math.Abs(lift.Value - limit) < 1e-9;
        });

    [Fact]
    public void A_lens_without_glare_has_no_bound_and_still_no_infinity() =>
        Veil.HighestMargin(new Stops(0.7), 0, 1, new Stops(2.97)).Value.Should().Be(20);

    /// <summary>The limit is stricter by what the background is brighter: the margin at which it is reached lies lower by just that.</summary>
    [Fact]
    public void A_limit_with_room_is_reached_so_much_earlier() =>
        Gen.Select(Gen.Double[0.05, 2], Gen.Double[0, 4], Gen.Double[0.003, 0.1]).Sample((limit, brighter, glare) =>
        {
            var strict = Veil.LimitWithRoom(new Stops(limit), new Stops(brighter));
            var (with, without) = (Veil.HighestMargin(strict, glare, 1, new Stops(2.97)), Veil.HighestMargin(new Stops(limit), glare, 1, new Stops(2.97)));
            return Math.Abs(without.Value - with.Value - brighter) < 1e-6;
        });

    [Fact]
    public void Impossible_glare_is_refused()
    {
        FluentActions.Invoking(() => Veil.ShareOfSaturation(new Stops(0), 1.5)).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => Veil.HighestMargin(new Stops(0), 0.02, 1, new Stops(3))).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => Veil.LimitWithRoom(new Stops(0.7), new Stops(-1))).Should().Throw<ArgumentOutOfRangeException>();
    }
}
