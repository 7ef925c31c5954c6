using StudioKit.Physics.Exposure;
using StudioKit.Physics.Exposure.Flashes;
using UnitsNet;

namespace StudioKit.Physics.Tests.Exposure;

public sealed class GuideNumberTableTests
{
    // Real heads go from about 28 m at 24 mm to 58 m at 105 mm (common practice, from memory).
    private static readonly GuideNumber[] Head = [Row(58, 105), Row(28, 24), Row(36, 35)];

    [Fact]
    public void A_listed_zoom_gives_the_listed_number()
    {
        GuideNumberTable.At(Head, Length.FromMillimeters(35)).GuideNumber.AtIso100.Meters.Should().BeApproximately(36, 1e-9);
        GuideNumberTable.At(Head, Length.FromMillimeters(24)).MadeFrom.Should().BeNull();
    }

    [Fact]
    public void Between_two_rows_the_number_lies_between() =>
        Gen.Double[24.01, 104.9].Sample(zoom =>
        {
            var here = GuideNumberTable.At(Head, Length.FromMillimeters(zoom));
            var further = GuideNumberTable.At(Head, Length.FromMillimeters(zoom + 0.05));
            return here.Doubt.Value == 0 && here.GuideNumber.AtIso100 < further.GuideNumber.AtIso100
                && here.GuideNumber.AtIso100.Meters is > 28 and < 58;
        });

    /// <summary>
    /// The ideal law spreads one flux over the solid angle covered: ×3.7 from 24 mm to 105 mm, where real heads reach about ×2 (common practice). The light
    /// lies between no change and that law; what is taken reaches to both.
    /// </summary>
    [Fact]
    public void Beyond_the_table_the_number_reaches_from_no_change_to_the_ideal_law()
    {
        var made = GuideNumberTable.At([Row(28, 24)], Length.FromMillimeters(105));
        double GuideNumber(double stops) => made.GuideNumber.AtIso100.Meters * Math.Pow(2, stops / 2);

        GuideNumber(-made.Doubt.Value).Should().BeApproximately(28, 1e-9);
        (GuideNumber(made.Doubt.Value) / 28).Should().BeApproximately(3.7, 0.1, "half the last digit and the rounding of 3.76");
        GuideNumber(0).Should().BeApproximately(58, 58 * 0.1, "real heads reach about ×2");
        made.MadeFrom!.Value.Zoom!.Value.Millimeters.Should().Be(24);
    }

    [Theory]
    [InlineData(24)]
    [InlineData(35)]
    [InlineData(50)]
    [InlineData(105)]
    public void A_listed_number_is_in_no_doubt_for_its_zoom_and_the_more_the_further_it_is_used_from_there(double zoom)
    {
        GuideNumberTable.At(Head, Length.FromMillimeters(zoom)).Doubt.Value.Should().Be(0);
        var near = GuideNumberTable.At(Head, Length.FromMillimeters(130)).Doubt.Value;
        var far = GuideNumberTable.At(Head, Length.FromMillimeters(200)).Doubt.Value;
        near.Should().BePositive();
        far.Should().BeGreaterThan(near);
    }

    /// <summary>A shorter zoom than listed spreads the light and a longer one gathers it.</summary>
    [Theory]
    [InlineData(200, 58, 80)]
    [InlineData(14, 17, 28)]
    public void Beyond_the_table_the_number_goes_on_the_way_it_went(double zoom, double least, double most) =>
        GuideNumberTable.At(Head, Length.FromMillimeters(zoom)).GuideNumber.AtIso100.Meters.Should().BeInRange(least, most);

    /// <summary>A number that may be for any zoom of a head is in doubt by more than one for 35 mm that is used at 50 mm.</summary>
    [Fact]
    public void A_number_without_a_zoom_stands_but_is_in_doubt()
    {
        var unplaced = GuideNumberTable.Unplaced(new GuideNumber(Length.FromMeters(30)), Length.FromMillimeters(50));

        unplaced.GuideNumber.AtIso100.Meters.Should().Be(30);
        unplaced.Doubt.Value.Should().BeGreaterThan(GuideNumberTable.At([Row(30, 35)], Length.FromMillimeters(50)).Doubt.Value);
    }

    /// <summary>Closed form against the sum over the picture of cos³θ/f² (a plane element seen from the lens), and 36 mm × 24 mm/f² from afar.</summary>
    [Theory]
    [InlineData(14)]
    [InlineData(24)]
    [InlineData(105)]
    public void The_solid_angle_covered_is_that_of_the_picture_seen_from_the_lens(double zoom)
    {
        const int Steps = 600;
        var sum = 0.0;
        for (var i = 0; i < Steps; i++)
        {
            for (var j = 0; j < Steps; j++)
            {
                var (x, y) = (36 * (((i + 0.5) / Steps) - 0.5), 24 * (((j + 0.5) / Steps) - 0.5));
                sum += zoom / Math.Pow((x * x) + (y * y) + (zoom * zoom), 1.5);
            }
        }

        BeamCoverage.SolidAngle(Length.FromMillimeters(zoom)).Should().BeApproximately(sum * 36 * 24 / (Steps * Steps), 1e-5);
        BeamCoverage.SolidAngle(Length.FromMeters(10)).Should().BeApproximately(0.036 * 0.024 / 100, 1e-10);
    }

    [Fact]
    public void A_table_that_cannot_be_read_is_refused()
    {
        FluentActions.Invoking(() => GuideNumberTable.At([], Length.FromMillimeters(35))).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => GuideNumberTable.At([new GuideNumber(Length.FromMeters(30))], Length.FromMillimeters(35)))
            .Should().Throw<ArgumentOutOfRangeException>();
    }

    private static GuideNumber Row(double metres, double zoom) => new(Length.FromMeters(metres), Length.FromMillimeters(zoom));
}
