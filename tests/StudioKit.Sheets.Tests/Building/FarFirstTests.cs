using StudioKit.Physics.Structure.Frames;
using StudioKit.Sheets.Building;
using StudioKit.Sheets.Building.Solids;
using StudioKit.Sheets.Drawings;

namespace StudioKit.Sheets.Tests.Building;

/// <summary>What hides another part is drawn after it.</summary>
public sealed class FarFirstTests
{
    private static readonly BoxBody Middle = BoxBody.About(default, 1, 1, 1);

    // Seen from the front, the right and above, a box on one of these sides stands before the one in the middle.
    [Theory]
    [InlineData(1.2, 0, 0, true)]
    [InlineData(0, -1.2, 0, true)]
    [InlineData(0, 0, 1.2, true)]
    [InlineData(-1.2, 0, 0, false)]
    [InlineData(0, 1.2, 0, false)]
    [InlineData(0, 0, -1.2, false)]
    public void Of_two_boxes_the_one_that_hides_the_other_is_drawn_last(double right, double back, double up, bool hides)
    {
        var camera = new Camera(FrameView.Isometric, 1);
        var (middle, other) = (Middle.In(camera, Ink.Standing), BoxBody.About(new FramePoint(right, back, up), 1, 1, 1).In(camera, Ink.Added));

        foreach (var pair in new[] { new[] { middle, other }, [other, middle] })
        {
            FarFirst.Order(pair, camera)[^1].Should().Be(hides ? other : middle);
        }
    }

    // A long rail before a short leg: its middle lies further back than the leg does, and still it is drawn last.
    [Fact]
    public void A_long_part_that_passes_before_a_short_one_is_drawn_last()
    {
        var camera = new Camera(FrameView.Isometric, 1);
        var leg = BoxBody.About(new FramePoint(0, 0, 0), 0.1, 0.1, 1).In(camera, Ink.Standing);
        var rail = BoxBody.About(new FramePoint(0.2, 3, 0), 0.1, 8, 0.1).In(camera, Ink.Added);

        FarFirst.Order([rail, leg], camera)[^1].Should().Be(rail);
    }

    /// <summary>ISO 5456-3: in an isometric projection a circle square to an axis is an ellipse whose long axis is 1.22 times and whose short axis is 0.71 times its diameter, axes drawn at full length.</summary>
    [Fact]
    public void A_pipes_end_is_an_ellipse_of_the_isometric_projection()
    {
        var camera = new Camera(FrameView.Isometric, 1);
        var end = (Polygon)new Tube(default, new FramePoint(0, 0, 1), 0.5).End(camera, Ink.Added, 0).Single();

        end.Bounds.Width.Should().BeApproximately(1000 * Math.Sqrt(1.5), 20);
        end.Bounds.Height.Should().BeApproximately(1000 * Math.Sqrt(0.5), 20);
        camera.PerMetre.Should().BeApproximately(1000 * Math.Sqrt(1.5), 1e-6);
    }
}
