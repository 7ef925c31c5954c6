using StudioKit.Physics.Light.Views;

namespace StudioKit.Planning.Tests.ByHand;

/// <summary>A half ball over the head under the sheet, against closed forms for a small source.</summary>
public sealed class HalfBallTests
{
    private static readonly Plan Front = Planned("");
    private static readonly Plan Ball = Planned(", half-ball: yes");

    // The flux of a Lambertian front is π·I₀, that of a half ball 2π·I₀: the same flux leaves one stop less on the axis.
    [Fact]
    public void A_half_ball_has_a_stop_less_on_its_axis_than_a_front_that_lets_as_much_through() =>
        (Loss(Ball) - Loss(Front)).Should().BeApproximately(1, 1e-9);

    /// <summary>
    /// A small source at a depth d lights a point r aside with I(θ)·cos³θ/d², tan θ = r/d: cos⁴ under a front, (1 + cos θ)/2·cos³ under a half ball.
    /// The head is 5 mm wide and nothing throws light back; 0.02 stop for its width against 300 mm and for the raster of points.
    /// </summary>
    [Fact]
    public void Its_light_falls_off_to_the_sides_as_a_half_balls_does()
    {
        Spread(Front).Should().BeApproximately(Expected(Front, cosine => Math.Pow(cosine, 4)), 0.02);
        Spread(Ball).Should().BeApproximately(Expected(Ball, cosine => (1 + cosine) / 2 * Math.Pow(cosine, 3)), 0.02);
        Spread(Ball).Should().BeLessThan(Spread(Front) - 0.05, "it lights the sheet more evenly");
    }

    private static double Loss(Plan plan) => -plan.Exposures[0].Lights[0].Budget.Lines.Single(line => line.Item.Contains("ball", StringComparison.Ordinal) || line.Detail.Contains("ball", StringComparison.Ordinal)).Stops.Value;

    private static double Spread(Plan plan) => plan.PanelLights[0].Framings[0].Spread.Value;

    private static double Expected(Plan plan, Func<double, double> share)
    {
        var light = plan.PanelLights[0];
        return Math.Log2(share(Cosine(light.Framings[0].Brightest)) / share(Cosine(light.Framings[0].Darkest)));

        double Cosine(MarginPoint point)
        {
            var (right, back) = (point.Place.Across.Meters, point.Place.AlongSheet.Meters - (light.FlatDepth.Meters / 2));
            return 0.3 / Math.Sqrt((0.3 * 0.3) + (right * right) + (back * back));
        }
    }

    private static Plan Planned(string ball) => KitText.Plan($$"""
        kit: Half ball
        camera: {name: body, sensor: 36 mm x 24 mm, iso: 100 to 6400}
        lenses: [{name: reed 60, focal-length: 60 mm, magnifications: [1:10]}]
        flashes: [{name: sedge, guide-number: "40 m @ ISO 100, 35 mm"}]
        modifiers: [{name: ball, kind: dome, size: 5 mm x 5 mm, transmittance: 0.9{{ball}}}]
        panel: {width: 600 mm, depth: 500 mm, skirts: no, underside-reflectance: 0}
        site: {ground-reflectance: 0}
        set-ups:
          - name: white
            kind: white-background
            aperture: f/8
            iso: 400
            camera-pitch: 90°
            lights: [{flash: sedge, role: below, modifier: ball, distance: 300 mm}]
        """);
}
