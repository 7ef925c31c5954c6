using System.Collections.Concurrent;
using StudioKit.Kits;
using StudioKit.Physics.Exposure;
using StudioKit.Planning;
using StudioKit.Planning.Expected;

namespace StudioKit.Field.Tests;

/// <summary>A small invented kit with one framing, planned; its figures can be made wrong to stand for the truth.</summary>
internal static class PlannedKit
{
    public const string Framing = "reed 50 at 1:2";

    private const int Columns = 96;
    private const int Rows = 64;

    // The light of a plan is solved once for all pictures taken of it: power shifts it as a whole.
    private static readonly ConcurrentDictionary<(Plan Truth, ShotSettings Shot), double[,]> Truths = new();

    private static readonly ConcurrentDictionary<(double GuideNumber, string Pitch, string More), Plan> Plans = new();

    public static KitReadResult Read(double guideNumber = 30, double transmittance = 0.5, string pitch = "60°", string more = "1:2")
    {
        var read = KitReader.Parse(
            FormattableString.Invariant($$"""
            kit: Reed margin
            camera: {name: body R, sensor: 36 mm x 24 mm, pixels: 6000 x 4000}
            lenses:
              - {name: reed 50, focal-length: 50 mm, focusing: unit, aperture: f/2.8 to f/22, largest-magnification: 1:2, magnifications: [{{more}}]}
            flashes:
              - {name: sedge, guide-number: "{{guideNumber:0.#####}} m @ ISO 100 ± 0.3 stop", head: 70 mm x 40 mm, cell: aa-nimh-2000, mass: 300 g}
              - {name: willow, guide-number: "36 m @ ISO 100", cell: aa-nimh-2000, mass: 300 g}
            panel: {width: 600 mm, depth: 400 mm, skirts: yes, transmittance: {{transmittance:0.#####}} ± 10 %}
            frame: {kind: table, height: 500 mm, pipe: pvc-u-20x1.5, fittings: pvc-u-20}
            subjects: [{name: moth, group: flying-insects, length: 40 mm}]
            set-ups:
              - name: white
                kind: white-background
                aperture: f/16
                iso: 400
                camera-pitch: {{pitch}}
                lights: [{flash: sedge, role: below, distance: 30 cm}, {flash: willow, role: above, distance: 40 cm}]
            """),
            "reed.yaml",
            PartsLibrary.Embedded);
        read.Diagnostics.Select(fault => fault.Format()).Should().BeEmpty();
        return read;
    }

    /// <summary>The plan, made once however often it is asked for.</summary>
    public static Plan Plan(double guideNumber = 30, string pitch = "60°", string more = "1:2") =>
        Plans.GetOrAdd((guideNumber, pitch, more), kit => KitPlanner.Plan(Read(kit.GuideNumber, 0.5, kit.Pitch, kit.More)));

    /// <summary>A camera over the bare panel of a plan.</summary>
    public static SensorModel Camera(Plan truth, ShotSettings shot, double gain = 0, int seed = 1)
    {
        var margins = Truths.GetOrAdd((truth, shot with { Power = FlashPower.Full }), AtFullPower);
        return new SensorModel(480, 320) { Margin = (u, v) => margins[(int)(v * Rows), (int)(u * Columns)] - shot.Power.StopsBelowFull + gain, Seed = seed };
    }

    private static double[,] AtFullPower((Plan Truth, ShotSettings Shot) at)
    {
        var setUp = at.Truth.Kit.SetUps[0];
        return new ExpectedLight(at.Truth).OnSensor(setUp, Framing, setUp.CameraPitches[0], isUpright: false, at.Shot)!.MarginsAt(Columns, Rows);
    }
}
