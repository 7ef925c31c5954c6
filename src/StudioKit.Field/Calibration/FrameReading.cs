using StudioKit.Field.Analysis;
using StudioKit.Physics.Sources;
using StudioKit.Planning.Expected;

namespace StudioKit.Field.Calibration;

/// <summary>Turns a test frame into a reading: the white margin of its background beside what the plan expects in the same places.</summary>
public static class FrameReading
{
    // Further down noise and the tone curve's toe count more, further up part of the pixels clip by noise alone.
    private const double LowestLight = 0.03;
    private const double HighestLight = 0.85;

    /// <summary>Reads one frame.</summary>
    /// <param name="frame">The frame.</param>
    /// <param name="place">Set-up, framing and pitch it was taken at.</param>
    /// <param name="shot">Power and distance of the flash below; f-number and ISO speed are taken from the file where it has them.</param>
    /// <param name="expected">What the plan expects.</param>
    /// <returns>The reading, or why the frame gives none.</returns>
    /// <remarks>
    /// Cells of the background under clipping are compared with the same cells of the plan's margin map, and the mean is the reading. A
    /// camera's own tone curve makes it less sure the further it lies under clipping.
    /// </remarks>
    [Source("CommonPractice", "in-camera tone curves differ by a tenth of a stop and more further down")]
    public static FieldResult<CalibrationReading> Of(FrameAnalysis frame, PlanPlace place, ShotSettings shot, ExpectedLight expected)
    {
        ArgumentNullException.ThrowIfNull(frame);
        ArgumentNullException.ThrowIfNull(place);
        ArgumentNullException.ThrowIfNull(shot);
        ArgumentNullException.ThrowIfNull(expected);
        if (frame.Doubt is { } doubt)
        {
            return new FieldDiagnostic("FLD222", frame.Path, doubt);
        }

        var set = shot with { Aperture = shot.Aperture ?? frame.Settings.MarkedAperture, Iso = shot.Iso ?? frame.Settings.MarkedIso };
        if (expected.OnSensor(place.SetUp, place.Framing, place.Pitch, frame.Height > frame.Width, set) is not { } planned)
        {
            return new FieldDiagnostic("FLD209", frame.Path, "The plan has no light map for this: its geometry is impossible, or the frame misses the panel.") { Help = FieldHelp.Plan };
        }

        var grid = planned.MarginsAt(frame.CellColumns, frame.CellRows);
        var pairs = frame.Cells.Select((cell, i) => (Cell: cell, Planned: grid[i / frame.CellColumns, i % frame.CellColumns]))
            .Where(pair => IsUsable(pair.Cell) && double.IsFinite(pair.Planned)).ToList();
        if (pairs.Count == 0)
        {
            return frame.ClippedShare > 0.5
                ? new FieldDiagnostic("FLD221", frame.Path, "It is white wherever it could be measured, which only says that there is light enough.", "Take one at lower power.")
                : new FieldDiagnostic("FLD221", frame.Path, "It is too dark to be measured.", "Take one at higher power.");
        }

        var measured = pairs.Average(pair => Math.Log2(pair.Cell.Light));
        return new CalibrationReading(
            Path.GetFileName(frame.Path), CalibrationReadingKind.WhiteMargin, place.Light.Flash, pairs.Average(pair => pair.Planned), measured, 0.1 - (0.05 * measured))
        { Modifier = place.Light.Modifier ?? "" };
    }

    private static bool IsUsable(FrameCell cell) => cell.IsMostlyBackground && cell.FollowsLight(LowestLight, HighestLight);
}
