using StudioKit.Kits;
using StudioKit.Kits.SetUps;
using StudioKit.Physics.Exposure;
using StudioKit.Planning.Expected;
using UnitsNet;

namespace StudioKit.Planning.Tests.Expected;

public sealed class ExpectedLightTests
{
    private const string Framing = "reed 50 at 1:2";
    private static readonly Plan Matt = PlanOf(0);

    /// <summary>
    /// ISO 1230: N = GN/d at ISO 100; ISO 2720: Q = C·N²/S with C = 250. Outdoors half a stop less. Close by the head is no point: its light is
    /// summed here over its area, cos² over r² for every piece of it.
    /// </summary>
    [Theory]
    [InlineData(0.1, 0)]
    [InlineData(0.25, 3)]
    [InlineData(1, 0)]
    [InlineData(4, 7)]
    public void A_meter_in_the_beam_reads_what_the_guide_number_promises_at_that_distance(double distance, double stopsBelowFull)
    {
        var shot = new ShotSettings(FlashPower.FromStopsBelowFull(stopsBelowFull), Length.FromMeters(distance));

        var promised = 2.5 * 30 * 30 / (distance * distance) * Math.Pow(2, -stopsBelowFull - 0.5) * OfRectangle(0.07, 0.04, distance);
        (new ExpectedLight(Matt).InBeam(Below(Matt), shot) / promised).Should().BeApproximately(1, 0.001);
    }

    /// <summary>
    /// However a sheet spreads what comes through, all of it reaches a flat receptor that lies on it (conservation of energy): only what is seen
    /// from one side changes with the lobe. Within 1 %, since what skirts and floor throw back comes slantwise and its lobes lean from the vertical.
    /// </summary>
    [Theory]
    [InlineData(1)]
    [InlineData(4)]
    public void A_meter_lying_on_the_sheet_reads_the_same_however_the_sheet_scatters(double exponent)
    {
        var (shot, poor) = (new ShotSettings(FlashPower.Full), PlanOf(exponent));

        var (matt, lobed) = (OnPanel(Matt, shot), OnPanel(poor, shot));

        (lobed / matt).Should().BeApproximately(1, 0.01);
        (Darkest(poor, shot) - Darkest(Matt, shot)).Should().NotBe(0, "a camera looks from one side");
    }

    /// <summary>
    /// The share that the sheet lets through of what a meter reads in its place, and what skirts and floor throw back besides, which is not as much
    /// again. A head that beams loses a little more close by than a matt one, by (n + 3)/2 of the mean square of its places over the
    /// distance squared: 9 % at 20 cm for an n of 10.
    /// </summary>
    [Fact]
    public void A_meter_lying_on_the_sheet_reads_what_comes_through_it()
    {
        var shot = new ShotSettings(FlashPower.FromStopsBelowFull(2));

        var share = OnPanel(Matt, shot) / new ExpectedLight(Matt).InBeam(Below(Matt), shot);

        share.Should().BeInRange(0.455, 1);
    }

    /// <summary>Image-plane exposure against saturation (ISO 12232): proportional to the light, to 1/N² and to S.</summary>
    [Theory]
    [InlineData(4, 16, 400, 1)]
    [InlineData(5, 8, 400, 2)]
    [InlineData(5, 16, 200, -1)]
    public void A_frames_margins_follow_power_f_number_and_speed_stop_for_stop(double stopsBelowFull, double aperture, double iso, double gain)
    {
        var before = new ShotSettings(FlashPower.FromStopsBelowFull(5), null, new FNumber(16), new IsoSpeed(400));
        var after = new ShotSettings(FlashPower.FromStopsBelowFull(stopsBelowFull), null, new FNumber(aperture), new IsoSpeed(iso));

        (Darkest(Matt, after) - Darkest(Matt, before)).Should().BeApproximately(gain, 1e-9);
    }

    /// <summary>The smallest of a grid laid over the frame, and not its largest; middles of cells stay a little short of the frame's corners.</summary>
    [Fact]
    public void The_darkest_place_is_the_darkest_of_the_whole_frame()
    {
        var shot = new ShotSettings(FlashPower.FromStopsBelowFull(5));
        var setUp = Matt.Kit.SetUps[0];
        var frame = new ExpectedLight(Matt).OnSensor(setUp, Framing, setUp.CameraPitches[0], isUpright: false, shot)!;
        var margins = frame.MarginsAt(96, 64).Cast<double>().Where(double.IsFinite).ToList();

        frame.Darkest.Value.Should().BeApproximately(margins.Min(), 0.03);
        frame.Brightest.Value.Should().BeApproximately(margins.Max(), 0.03);
        Darkest(Matt, shot).Should().Be(frame.Darkest.Value);
        (margins.Max() - margins.Min()).Should().BeGreaterThan(0.1, "the two must not be taken for one another");
    }

    private static double OnPanel(Plan plan, ShotSettings shot) => new ExpectedLight(plan).OnPanel(plan.Kit.SetUps[0], shot)!.Value;

    private static double Darkest(Plan plan, ShotSettings shot) => new ExpectedLight(plan).Darkest(plan.Kit.SetUps[0], Framing, shot)!.Value.Value;

    private static LightSpec Below(Plan plan) => plan.Kit.SetUps[0].Lights[0];

    // Light of a matt rectangle on its axis over that of a point: the mean of d⁴/r⁴, by the midpoint rule.
    private static double OfRectangle(double width, double height, double distance)
    {
        const int Pieces = 100;
        var places = Enumerable.Range(0, Pieces).Select(i => ((i + 0.5) / Pieces) - 0.5).ToList();
        return places.Average(u => places.Average(v =>
            Math.Pow(distance * distance / ((distance * distance) + (u * width * u * width) + (v * height * v * height)), 2)));
    }

    private static Plan PlanOf(double scatter)
    {
        var read = KitReader.Parse(
            FormattableString.Invariant($$"""
            kit: Reed margin
            camera: {name: body R, sensor: 36 mm x 24 mm, pixels: 6000 x 4000}
            lenses:
              - {name: reed 50, focal-length: 50 mm, focusing: unit, aperture: f/2.8 to f/22, largest-magnification: 1:2, magnifications: [1:2]}
            flashes:
              - {name: sedge, guide-number: 30 m @ ISO 100, head: 70 mm x 40 mm, cell: aa-nimh-2000, mass: 300 g}
              - {name: willow, guide-number: 36 m @ ISO 100, cell: aa-nimh-2000, mass: 300 g}
            panel: {width: 600 mm, depth: 400 mm, skirts: yes, transmittance: 0.5, scatter-exponent: {{scatter}}}
            frame: {kind: table, height: 500 mm, pipe: pvc-u-20x1.5, fittings: pvc-u-20}
            subjects: [{name: moth, group: flying-insects, length: 40 mm}]
            set-ups:
              - name: white
                kind: white-background
                aperture: f/16
                iso: 400
                camera-pitch: 60°
                lights: [{flash: sedge, role: below, distance: 20 cm}, {flash: willow, role: above, distance: 40 cm}]
            """),
            "reed.yaml",
            PartsLibrary.Embedded);
        read.Diagnostics.Select(fault => fault.Format()).Should().BeEmpty();
        return KitPlanner.Plan(read);
    }
}
