using StudioKit.Field.Pictures;
using StudioKit.Field.Scale;

namespace StudioKit.Field.Tests.Scale;

public sealed class ScaleBarPlaceTests
{
    [Theory]
    [InlineData(ScaleBarCorner.BottomRight, true, true)]
    [InlineData(ScaleBarCorner.BottomLeft, false, true)]
    [InlineData(ScaleBarCorner.TopRight, true, false)]
    [InlineData(ScaleBarCorner.TopLeft, false, false)]
    public void A_bar_stands_in_its_corner_and_inside_the_picture(ScaleBarCorner corner, bool right, bool bottom)
    {
        var place = ScaleBarPlace.For(new SeenPicture(PictureOrientation.TurnClockwise, 600, 400), 1e-5, corner, _ => 2.5)!;

        // Stored 600 by 400 and turned a quarter: 400 wide and 600 high as seen.
        (place.Box.Middle > 200).Should().Be(right);
        (place.Box.Top > 300).Should().Be(bottom);
        new[] { place.Box.Left, place.Box.Top, 400 - place.Box.Right, 600 - place.Box.Bottom }.Should().OnlyContain(margin => margin > 0);
        (place.Line.Right - place.Line.Left).Should().BeApproximately(place.Bar.Pixels, 1e-9);
    }

    /// <summary>Contrast ratios (L + 0.05)/0.05 to black and 1.05/(L + 0.05) to white are the same at 18 % of light, sRGB code 118 (IEC 61966-2-1).</summary>
    [Theory]
    [InlineData(116, true)]
    [InlineData(120, false)]
    public void White_stands_out_below_eighteen_per_cent_of_light_and_black_above(byte code, bool white)
    {
        ScaleBarPlace.IsWhiteOn(code).Should().Be(white);
    }

    [Fact]
    public void A_picture_too_small_for_letters_that_can_be_read_has_no_place_for_a_bar()
    {
        ScaleBarPlace.For(new SeenPicture(PictureOrientation.Upright, 20, 12), 1e-5, ScaleBarCorner.TopLeft, _ => 2.5).Should().BeNull();
        ScaleBarPlace.For(new SeenPicture(PictureOrientation.Upright, 60, 40), 1e-5, ScaleBarCorner.TopLeft, _ => 2.5).Should().NotBeNull();
    }
}
