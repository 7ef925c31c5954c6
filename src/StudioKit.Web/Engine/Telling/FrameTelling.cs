using StudioKit.Field.Advice;
using StudioKit.Field.Analysis;
using StudioKit.Web.Results;
using StudioKit.Wording;

namespace StudioKit.Web.Engine.Telling;

/// <summary>What a test frame comes to and what to turn, in the words of the command line.</summary>
internal static class FrameTelling
{
    private const double Third = 1.0 / 3;

    public static FrameAnswer Of(FrameReport report)
    {
        var sound = report.Finding.Verdict != FrameVerdict.Doubtful;
        return new FrameAnswer(StandingOf(report.Finding.Verdict), TestFrameText.Verdict(report), TestFrameText.Turns(report, ""), [])
        {
            // Figures that mean nothing are not shown.
            Figures = sound ? [.. TestFrameFigures.Of(report.Frame, "a power ladder learns the camera's").Select(figure => new FrameFigure(figure.Label.Trim(), figure.Value))] : [],
            Caveats = report.Frame.Caveats,
            Bands = sound ? Bands(report.Frame) : [],
            Map = Map(report),
            Darkest = sound && report.Frame.StopsMissing > 0 ? Darkest(report.Frame) : null,
        };
    }

    private static Standing StandingOf(FrameVerdict verdict) => verdict switch
    {
        FrameVerdict.Right => Standing.Stands,
        FrameVerdict.WhiteUnbounded or FrameVerdict.TooBright => Standing.AtTheEdge,
        FrameVerdict.NotWhite => Standing.Fails,
        _ => Standing.Unread,
    };

    private static string Map(FrameReport report) => report.Finding.Verdict == FrameVerdict.Doubtful
        ? "The picture made small; what is background cannot be told for sure."
        : $"The picture made small: {Rounded.Percent(report.Frame.ClippedShare)} of the background is white; what is not is hatched, and the ring is round its darkest place.";

    // By cells of the coarse grid: white itself is counted pixel by pixel, the rest by the mean of its cell.
    private static IReadOnlyList<FrameFigure> Bands(FrameAnalysis frame)
    {
        var background = frame.Cells.Sum(cell => cell.BackgroundShare);
        if (background == 0)
        {
            return [];
        }

        double Share(double least, double most) => frame.Cells
            .Where(cell => cell.BackgroundShare > 0 && Under(cell) >= least && Under(cell) < most).Sum(cell => cell.BackgroundShare * (1 - cell.ClippedShare)) / background;
        return
        [
            new("white", Rounded.Percent(frame.ClippedShare)),
            new("less than 1/3 stop under", Rounded.Percent(Share(0, Third))),
            new("1/3 to 1 stop under", Rounded.Percent(Share(Third, 1))),
            new("more than 1 stop under", Rounded.Percent(Share(1, double.PositiveInfinity))),
        ];
    }

    private static double Under(FrameCell cell) => Math.Max(0, -Math.Log2(Math.Max(cell.Light, 1.0 / 65535)));

    // In the region that the verdict names, where several are as dark.
    private static Spot Darkest(FrameAnalysis frame)
    {
        var named = frame.Regions.ToList().IndexOf(frame.Regions.MaxBy(region => region.StopsMissing)!);
        var at = Enumerable.Range(0, frame.Cells.Count)
            .Where(i => frame.Cells[i].BackgroundShare > 0 && RegionOf(i % frame.CellColumns, i / frame.CellColumns, frame) == named)
            .DefaultIfEmpty(0).MinBy(i => frame.Cells[i].Light);
        return new Spot(((at % frame.CellColumns) + 0.5) / frame.CellColumns, ((at / frame.CellColumns) + 0.5) / frame.CellRows);
    }

    private static int RegionOf(int column, int row, FrameAnalysis frame) => (row * 3 / frame.CellRows * 3) + (column * 3 / frame.CellColumns);
}
