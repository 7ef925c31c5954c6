using StudioKit.Kits.SetUps;
using StudioKit.Physics.Light.Standing;
using StudioKit.Sheets.Documents;
using StudioKit.Sheets.Drawings;
using UnitsNet;

namespace StudioKit.Sheets.Tests.Documents;

/// <summary>Where lights stand, as it is drawn: the camera at the foot of the view from above and at the left of the view from the right.</summary>
public sealed class LightPlaceDrawingTests
{
    private const double Width = 52;
    private const double Height = 24;

    // Each view is half of the room less a gap of 2 mm.
    private const double ViewWidth = (Width - 2) / 2;

    [Theory]
    [InlineData(-90, true)]
    [InlineData(90, false)]
    public void A_light_to_the_cameras_left_is_drawn_left_of_the_subject(double azimuth, bool isLeft)
    {
        var heads = Heads(Draw(At(azimuth, 30)));

        (heads[0].X < ViewWidth / 2).Should().Be(isLeft);
    }

    [Theory]
    [InlineData(180, true)]
    [InlineData(0, false)]
    public void A_light_behind_the_subject_is_drawn_away_from_the_camera_in_both_views(double azimuth, bool isBehind)
    {
        var heads = Heads(Draw(At(azimuth, 30)));

        (heads[0].Y < Height / 2).Should().Be(isBehind);
        (heads[1].X > (1.5 * ViewWidth) + 2).Should().Be(isBehind);
    }

    [Fact]
    public void A_higher_light_is_drawn_higher_in_the_view_from_the_right() =>
        Heads(Draw(At(-30, 60)))[1].Y.Should().BeLessThan(Heads(Draw(At(-30, 20)))[1].Y);

    [Fact]
    public void Nothing_is_drawn_outside_the_room_whatever_the_lights() =>
        Gen.Select(Gen.Double[-180, 180], Gen.Double[-60, 90], Gen.Double[-180, 180], Gen.Double[-60, 90], Gen.Double[5, 300]).Sample((one, up, other, high, distance) =>
        {
            var bounds = LightPlaceDrawing.Of([SampleStand.Of(At(one, up), 40), SampleStand.Of(At(other, high), distance) with { Role = LightRole.Rim }], [Angle.FromDegrees(0), Angle.FromDegrees(90)], true, Width, Height).Bounds;

            bounds.Left.Should().BeGreaterThanOrEqualTo(-0.5);
            bounds.Top.Should().BeGreaterThanOrEqualTo(-0.5);
            bounds.Right.Should().BeLessThanOrEqualTo(Width + 0.5);
            bounds.Bottom.Should().BeLessThanOrEqualTo(Height + 0.5);
        });

    private static Drawing Draw(LightDirection from) => LightPlaceDrawing.Of([SampleStand.Of(from, 40)], [Angle.FromDegrees(30)], false, Width, Height);

    // The heads are the white shapes of four corners with an outline; the first is seen from above, the second from the right.
    private static List<Point> Heads(Drawing drawing) =>
        [.. drawing.Marks.OfType<Polygon>().Where(mark => mark is { Fill: Fill.White, Stroke: not null }).Select(mark => new Point((mark.Bounds.Left + mark.Bounds.Right) / 2, (mark.Bounds.Top + mark.Bounds.Bottom) / 2))];

    private static LightDirection At(double azimuth, double elevation) => new(Angle.FromDegrees(azimuth), Angle.FromDegrees(elevation));
}
