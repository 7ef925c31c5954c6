using StudioKit.Physics.Light;
using StudioKit.Physics.Light.Obstacles;
using UnitsNet;

namespace StudioKit.Planning.Studio.Lights;

/// <summary>Where the sheet lies right over pipes of the frame.</summary>
internal static class CoveredStrips
{
    private static readonly Length Level = Length.FromMillimeters(1);

    /// <summary>One for each level pipe that lies no further under the flat part of the sheet than it is thick, as far as it lies under the sheet.</summary>
    public static IReadOnlyList<CoveredStrip> Of(LightScene scene) => scene.Panel.SweptLength >= scene.Panel.Depth
        ? []
        : [.. scene.Surround.Frame.OfType<PipeObstacle>().Where(pipe => IsRightUnder(scene.Panel, pipe)).Select(pipe => Strip(scene.Panel, pipe)).OfType<CoveredStrip>()];

    private static bool IsRightUnder(LightPanel sheet, PipeObstacle pipe)
    {
        var gap = sheet.Height - Length.FromMeters(Math.Max(pipe.Start.Z, pipe.End.Z)) - (pipe.Diameter / 2);
        return Math.Abs(pipe.Start.Z - pipe.End.Z) < Level.Meters && gap >= -Level && gap <= pipe.Diameter;
    }

    // The pipe's round end reaches half its diameter further, to the sheet's edge where two rails meet.
    private static CoveredStrip? Strip(LightPanel sheet, PipeObstacle pipe)
    {
        var (x, y) = (pipe.End.X - pipe.Start.X, pipe.End.Y - pipe.Start.Y);
        var run = Math.Sqrt((x * x) + (y * y));
        if (run < Level.Meters)
        {
            return null;
        }

        var (outX, outY) = (pipe.Diameter / 2 * (x / run), pipe.Diameter / 2 * (y / run));
        var from = Held(sheet, Length.FromMeters(pipe.Start.X) - outX, Length.FromMeters(pipe.Start.Y) - outY);
        var to = Held(sheet, Length.FromMeters(pipe.End.X) + outX, Length.FromMeters(pipe.End.Y) + outY);
        return from == to ? null : new CoveredStrip(from, to, pipe.Diameter);
    }

    // The light calculation counts from half the sheet's length behind its front edge; a level pipe lies along an edge, so what is over one end is over the strip.
    private static PanelPlace Held(LightPanel sheet, Length x, Length y) => new(
        UnitMath.Clamp(x, -sheet.Width / 2, sheet.Width / 2),
        UnitMath.Clamp(y + (sheet.Depth / 2), Length.Zero, sheet.Depth - sheet.SweptLength));
}
