using StudioKit.Planning.Studio.Assembling;
using UnitsNet;

namespace StudioKit.Planning.Tests.Frames;

/// <summary>Feet set for the ground that the kit describes.</summary>
public sealed class FeetOnSlopeTests
{
    private static readonly Plan Flat = Planned("");

    [Fact]
    public void Where_nobody_said_which_way_the_ground_falls_the_feet_are_set_by_a_level() => Flat.Frame!.FootSettings.Should().BeEmpty();

    /// <summary>By a right triangle: two feet that stand apart along the fall differ by the distance times the tangent of the slope; those across it are alike.</summary>
    [Theory]
    [InlineData("left", -1, 0)]
    [InlineData("right", 1, 0)]
    [InlineData("away", 0, 1)]
    [InlineData("towards", 0, -1)]
    public void The_feet_downhill_are_turned_out_by_what_the_ground_falls(string downhill, int right, int back)
    {
        var frame = Planned($", downhill: {downhill}").Frame!;
        var places = frame.Geometry.Feet.ToDictionary(foot => foot.Joint, foot => foot.Position, StringComparer.Ordinal);

        frame.FootSettings.Should().HaveCount(frame.Geometry.Feet.Count);
        foreach (var (one, other) in frame.FootSettings.SelectMany(_ => frame.FootSettings, (one, other) => (one, other)))
        {
            var along = (right * (places[one.Joint].Right - places[other.Joint].Right)) + (back * (places[one.Joint].Back - places[other.Joint].Back));
            (one.Extension - other.Extension).Meters.Should().BeApproximately(along * Math.Tan(4 * Math.PI / 180), 1e-9);
        }

        var set = frame.Assembly.OfType<AssemblyStep.SetOnFeet>().Should().ContainSingle().Subject;
        set.Slope.Should().Be(Angle.FromDegrees(4));
        set.Settings.Should().Equal(frame.FootSettings);
    }

    // At 30° the feet of a table half a metre wide would have to differ by 29 cm: no screw is so long.
    [Fact]
    public void A_foot_that_does_not_reach_is_told() =>
        Planned(", downhill: left", slope: "30°").Frame!.FootSettings.Should().Contain(foot => !foot.InReach);

    [Fact]
    public void On_a_gentle_slope_every_foot_reaches() => Planned(", downhill: left", slope: "1°").Frame!.FootSettings.Should().OnlyContain(foot => foot.InReach);

    private static Plan Planned(string site, string slope = "4°") => KitText.Plan(KitText.Bare + $$"""
        flashes: [{name: sedge, guide-number: "30 m @ ISO 100, 35 mm"}]
        panel: {width: 500 mm, depth: 400 mm, underside-reflectance: 0}
        frame: {kind: table, height: 500 mm, pipe: pvc-u-25x1.25, fittings: pvc-u-25}
        site: {ground-reflectance: 0, slope: {{slope}}{{site}}}
        set-ups:
          - name: white
            kind: white-background
            iso: 400
            lights: [{flash: sedge, role: below, distance: 40 cm}]
        """);
}
