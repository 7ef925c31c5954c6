using StudioKit.Field.Ladders;
using StudioKit.Field.Tests;
using StudioKit.FieldFiles.Frames;
using StudioKit.Physics.Exposure;

namespace StudioKit.FieldFiles.Tests.Frames;

public sealed class LadderOfJpegsTests : IDisposable
{
    private readonly ScratchFolder _scratch = new();

    public void Dispose() => _scratch.Dispose();

    /// <summary>Margin at full power of an invented panel: uneven, brighter left of the middle.</summary>
    private static double AtFullPower(double u, double v) => 4.2 - (4 * (((u - 0.4) * (u - 0.4)) + ((v - 0.5) * (v - 0.5))));

    [Theory]
    [InlineData(95)]
    [InlineData(80)]
    [InlineData(60)]
    public void Measured_margin_agrees_with_the_map_to_a_tenth_of_a_stop(int quality)
    {
        var map = PowerLadder.Measure([.. new[] { 5, 4, 3, 2 }.Select(stops => Rung(stops, quality))]).Value!;

        var margins = map.MarginsAt(FlashPower.Full);
        for (var cell = 0; cell < margins.Count; cell++)
        {
            var (u, v) = (((cell % map.Columns) + 0.5) / map.Columns, ((cell / map.Columns) + 0.5) / map.Rows);
            margins[cell].Should().BeApproximately(AtFullPower(u, v), 0.1, $"that is the truth in cell {cell}");
        }

        map.ResponseSlope.Should().BeApproximately(1, 0.05);
    }

    private LadderFrame Rung(int stops, int quality)
    {
        var sensor = new SensorModel(480, 320) { Margin = (u, v) => AtFullPower(u, v) - stops, Seed = stops + 1 };
        return new LadderFrame(FlashPower.FromStopsBelowFull(stops), TestFrameFile.AnalyseBarePanel(sensor.Save(_scratch.Path, $"{stops}.jpg", quality)).Value!);
    }
}
