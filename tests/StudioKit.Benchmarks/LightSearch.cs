using System.Diagnostics;
using System.Globalization;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Light;
using StudioKit.Physics.Light.Lobes;
using StudioKit.Physics.Light.Placements;
using UnitsNet;

namespace StudioKit.Benchmarks;

/// <summary>Times a search of 2,000 places for the flash below in a studio on a frame of pipes, eighteen views at once.</summary>
internal static class LightSearch
{
    public static PlacementCase Case { get; } = new()
    {
        Panel = FramedStudio.Panel,
        Framings = [.. from pitch in new[] { 45, 60, 90 } from width in new[] { 24, 36, 50, 70, 90, 110 } select Framing(pitch, width)],
        Flashes = [Flash("35 mm zoom", 4.8), Flash("dome", 1)],
        PanelHeights = [Length.FromMillimeters(450), Length.FromMillimeters(500)],
        Surrounds = [FramedStudio.Surround, FramedStudio.Surround with { SkirtReflectance = null }],
        Distances = [.. Millimetres(200, 300, 350, 400)],
        OffsetsRight = [.. Millimetres(0, 40, 80, 120)],
        OffsetsBack = [.. Millimetres(-80, -40, 0, 40, 80)],
    };

    public static void Print(TextWriter output)
    {
        FlashPlacement.Search(Case);
        var watch = Stopwatch.StartNew();
        var cpu = Environment.CpuUsage.TotalTime;
        var result = FlashPlacement.Search(Case);
        var (seconds, busy) = (watch.Elapsed.TotalSeconds, (Environment.CpuUsage.TotalTime - cpu).TotalSeconds);
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{result.Evaluated} candidates, {Case.Framings.Count} framings: {seconds:0.00} s, of it {busy:0.00} s of processor time; frontier of {result.Frontier.Count}."));
        foreach (var placement in result.Frontier)
        {
            var at = placement.Candidate;
            output.WriteLine(string.Create(
                CultureInfo.InvariantCulture,
                $"  {placement.MeanEnergy.Joules:0.00} J, spread {placement.Spread.Value:0.00} stop: {at.Count} x {at.Flash.Name}, {at.Distance.Millimeters:0} mm under, {at.OffsetRight.Millimeters:0} mm aside, {at.OffsetBack.Millimeters:0} mm back, skirts {at.Surround.SkirtReflectance is not null}, {(at.Target is null ? "straight up" : "aimed")}"));
        }
    }

    private static IEnumerable<Length> Millimetres(params int[] values) => values.Select(value => Length.FromMillimeters(value));

    private static PlacementFlash Flash(string name, double exponent) => new()
    {
        Name = name,
        Lobe = new CosineLobe(exponent, exponent),
        Width = Length.FromMillimeters(70),
        Height = Length.FromMillimeters(40),
        FullPowerIntensityTime = 390 * (exponent + 1),
    };

    private static PlacementFraming Framing(double pitch, double width) => new(
        new CameraView
        {
            Name = string.Create(CultureInfo.InvariantCulture, $"{width:0} mm at {pitch:0} degrees"),
            FieldWidth = Length.FromMillimeters(width),
            FieldHeight = Length.FromMillimeters(width / 1.5),
            PupilDistance = Length.FromMillimeters(350),
            Pitch = Angle.FromDegrees(pitch),
        },
        new CameraCase { Aperture = new FNumber(16), Iso = new IsoSpeed(200) },
        new Stops(1.7));
}
