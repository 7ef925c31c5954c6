using StudioKit.Field.Tests;
using StudioKit.FieldFiles.Frames;

namespace StudioKit.FieldFiles.Tests.Frames;

public sealed class TestFrameFileTests : IDisposable
{
    private readonly ScratchFolder _scratch = new();

    public void Dispose() => _scratch.Dispose();

    /// <summary>The truth is the margin map that the frame was made from; 0.5 % is what the job asks for.</summary>
    /// <remarks>
    /// Gentle falls-off are the hard ones: one code value at the edge of the white is then 1 % of the frame. Under quality 75, coarser than
    /// cameras write, the compression itself moves that edge by as much.
    /// </remarks>
    [Theory]
    [InlineData(0.6, 1.5, 101)]
    [InlineData(0.6, 1.5, 95)]
    [InlineData(0.6, 1.5, 85)]
    [InlineData(0.6, 1.5, 75)]
    [InlineData(0.6, 1.5, 90)]
    [InlineData(0.6, 1.5, 80)]
    [InlineData(0.3, 3.0, 60)]
    [InlineData(0.3, 3.0, 85)]
    [InlineData(1.0, 2.0, 95)]
    [InlineData(-0.2, 1.0, 85)]
    public void Clipped_share_of_a_bare_panel_agrees_with_the_map_it_was_made_from(double centre, double fallOff, int quality)
    {
        var sensor = new SensorModel(720, 480) { Margin = (u, v) => centre - (fallOff * (Square(u - 0.45) + Square(v - 0.55)) * 2) };

        var analysis = TestFrameFile.AnalyseBarePanel(sensor.Save(_scratch.Path, "bare.jpg", quality)).Value!;

        analysis.ClippedShare.Should().BeApproximately(sensor.TrueClippedShare(), 0.005);
    }

    [Theory]
    [InlineData(95)]
    [InlineData(75)]
    public void Clipped_share_around_a_subject_agrees_with_the_map_it_was_made_from(int quality)
    {
        var sensor = Spider(centre: 0.5);

        var analysis = TestFrameFile.Analyse(sensor.Save(_scratch.Path, "spider.jpg", quality)).Value!;

        analysis.ClippedShare.Should().BeApproximately(sensor.TrueClippedShare(), 0.005);
        analysis.SubjectShare.Should().BeInRange(0.03, 0.08, "the body covers π·0.18·0.12, some 7 % of the frame, less its outline");
    }

    private static SensorModel Spider(double centre) => new(900, 600)
    {
        Margin = (u, v) => centre - (3 * (Square(u - 0.5) + Square(v - 0.4))),
        Subject = (u, v) => Square((u - 0.5) / 0.18) + Square((v - 0.5) / 0.12) < 1 ? 0.04 + (0.1 * Square(Math.Sin(40 * u))) : null,
    };

    private static double Square(double x) => x * x;
}
