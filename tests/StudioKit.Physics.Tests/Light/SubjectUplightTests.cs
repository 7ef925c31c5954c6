using StudioKit.Physics.Light;

namespace StudioKit.Physics.Tests.Light;

public sealed class SubjectUplightTests
{
    /// <summary>A disc gives π·L·R²/(R² + z²) over its middle (Howell's catalogue, configuration B-12).</summary>
    [Fact]
    public void A_square_lights_more_than_its_inscribed_disc_and_less_than_the_one_round_it() =>
        Gen.Double[0.05, 1].Select(Gen.Double[0.01, 1]).Sample((half, height) =>
        {
            var square = SubjectUplight.FromRectangle(1, 2 * half, 2 * half, height);
            return square > Disc(half) && square < Disc(half * Math.Sqrt(2));

            double Disc(double radius) => Math.PI * radius * radius / ((radius * radius) + (height * height));
        });

    [Fact]
    public void On_the_sheet_itself_the_subject_gets_all_of_the_panels_exitance() =>
        SubjectUplight.FromRectangle(100, 0.2, 0.2, 1e-9).Should().BeApproximately(100 * Math.PI, 1e-5);

    [Fact]
    public void Half_as_much_light_as_the_key_is_one_stop_under_it() =>
        SubjectUplight.AgainstKey(500, 1000).Value.Should().BeApproximately(-1, 1e-12);

    [Fact]
    public void No_key_light_is_refused()
    {
        var ratio = () => SubjectUplight.AgainstKey(1, 0);

        ratio.Should().Throw<ArgumentOutOfRangeException>().WithParameterName("key");
    }
}
