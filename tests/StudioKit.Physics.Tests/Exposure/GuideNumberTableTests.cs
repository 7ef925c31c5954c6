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
        GuideNumberTable.At(Head, Length.FromMillimeters(24)).Caveats.Should().BeEmpty();
    }

    [Fact]
    public void Between_two_rows_the_number_lies_between() =>
        Gen.Double[24.01, 104.9].Sample(zoom =>
        {
            var here = GuideNumberTable.At(Head, Length.FromMillimeters(zoom));
            var further = GuideNumberTable.At(Head, Length.FromMillimeters(zoom + 0.05));
            return here.Caveats.Count == 0 && here.GuideNumber.AtIso100 < further.GuideNumber.AtIso100
                && here.GuideNumber.AtIso100.Meters is > 28 and < 58;
        });

    [Theory]
    [InlineData(200, 58, "longer")]
    [InlineData(14, 28, "shorter")]
    public void Beyond_the_table_its_end_stands_with_a_caveat(double zoom, double metres, string word)
    {
        var found = GuideNumberTable.At(Head, Length.FromMillimeters(zoom));
        found.GuideNumber.AtIso100.Meters.Should().Be(metres);
        found.Caveats.Should().ContainSingle().Which.Should().Contain(word);
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
