using StudioKit.Physics.Sources;
using UnitsNet;

namespace StudioKit.Physics.Structure.Fasteners;

/// <summary>A hexagon screw threaded to its head, with the nut and washer that go with it.</summary>
/// <param name="Thread">The thread.</param>
/// <param name="Diameter">Diameter of the thread.</param>
/// <param name="Pitch">Turn to turn.</param>
/// <param name="AcrossFlats">Width of head and nut across their flats, and of the spanner.</param>
/// <param name="HeadHeight">Height of the head.</param>
/// <param name="NutHeight">Height of the nut.</param>
/// <param name="WasherDiameter">Outside diameter of the washer.</param>
/// <param name="WasherThickness">Thickness of the washer.</param>
/// <param name="Hole">Drill for a hole that it passes freely, a whole or half millimetre.</param>
public sealed record HexagonScrew(
    MetricThread Thread, Length Diameter, Length Pitch, Length AcrossFlats, Length HeadHeight, Length NutHeight, Length WasherDiameter, Length WasherThickness, Length Hole)
{
    /// <summary>Width of head and nut across their corners, sharp.</summary>
    public Length AcrossCorners => AcrossFlats / Math.Cos(Math.PI / 6);

    /// <summary>The screw of a thread.</summary>
    /// <param name="thread">The thread.</param>
    /// <exception cref="ArgumentOutOfRangeException">The thread is unknown.</exception>
    /// <remarks>The hole is the medium series; of M6, whose medium hole is 6.6 mm, the half millimetre between fine and medium, as drills are sold.</remarks>
    [Source("Iso4017", "head: k nominal and s; pitch")]
    [Source("Iso4032", "nut: m largest")]
    [Source("Iso7089", "washer: outside diameter and thickness, nominal")]
    [Source("Iso273", "clearance holes, medium series")]
    public static HexagonScrew Of(MetricThread thread) => thread switch
    {
        MetricThread.M5 => Sized(thread, 5, 0.8, 8, 3.5, 4.7, 10, 1, 5.5),
        MetricThread.M6 => Sized(thread, 6, 1, 10, 4, 5.2, 12, 1.6, 6.5),
        MetricThread.M8 => Sized(thread, 8, 1.25, 13, 5.3, 6.8, 16, 1.6, 9),
        _ => throw new ArgumentOutOfRangeException(nameof(thread), thread, "Unknown thread."),
    };

    /// <summary>The thickest screw whose nut has room in a bore; the thinnest of all where none has.</summary>
    /// <param name="bore">Inside diameter of a pipe; ≥ 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The bore is below zero, or not finite.</exception>
    [Source("Derived", "nut across its corners within the bore")]
    public static HexagonScrew WithNutIn(Length bore)
    {
        var room = Guard.NonNegative(bore.Meters, nameof(bore));
        var all = Enum.GetValues<MetricThread>().Select(Of).ToList();
        return all.LastOrDefault(screw => screw.AcrossCorners.Meters <= room) ?? all[0];
    }

    private static HexagonScrew Sized(
        MetricThread thread, double diameter, double pitch, double flats, double head, double nut, double washer, double washerThickness, double hole) => new(
        thread, Millimetres(diameter), Millimetres(pitch), Millimetres(flats), Millimetres(head), Millimetres(nut), Millimetres(washer), Millimetres(washerThickness), Millimetres(hole));

    private static Length Millimetres(double value) => Length.FromMillimeters(value);
}
