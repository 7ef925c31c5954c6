using UnitsNet;

namespace StudioKit.Physics.Structure.Frames.Layout;

/// <summary>Heights of the lower stretchers and places of the flash cradles.</summary>
/// <param name="Levels">Stretchers along the camera's view, the first flash's first; none where there are none.</param>
/// <param name="AcrossUp">Centre line of those across it [m]; none where there are none.</param>
/// <param name="Cradles">Every cradle that was asked for, in that order.</param>
internal sealed record LowerRails(IReadOnlyList<LowerLevel> Levels, double? AcrossUp, IReadOnlyList<PlacedCradle> Cradles)
{
    private const double NudgeNewtons = 10;
    private const double LeanShare = 0.01;

    public static LowerRails For(FrameMeasures measures)
    {
        if (measures.Design.Shape == FrameShape.LowGround)
        {
            return new LowerRails([], null, [.. measures.Design.Cradles.Select(asked => OnGround(measures, asked))]);
        }

        var cradles = new CradlePlaces(measures).Place(measures.Design.Cradles);
        var stretched = NeedsStretchers(measures) && measures.HighestTee - measures.LowestTee >= Pitch(measures);
        IReadOnlyList<LowerLevel> levels = cradles.Any(cradle => cradle.Fault is null)
            ? LevelsOf(cradles)
            : stretched ? [new LowerLevel(measures.LowestTee, [])] : [];

        return new LowerRails(levels, stretched ? Across(measures, levels) : null, cradles);
    }

    private static PlacedCradle OnGround(FrameMeasures measures, FlashCradleCase asked)
    {
        var up = measures.Height - asked.BelowPanel.Meters;
        var at = new FramePoint(asked.OffsetRight.Meters, asked.OffsetBack.Meters, up - asked.StandOff.Meters);
        return new PlacedCradle(asked, at, up < 0
            ? new CradleFault(CradleFaultKind.UnderGround, asked.BelowPanel)
            : new CradleFault(CradleFaultKind.LowFrame, Length.FromMeters(up)));
    }

    private static IReadOnlyList<LowerLevel> LevelsOf(IReadOnlyList<PlacedCradle> cradles) =>
        [.. cradles.Where(cradle => cradle.Fault is null).Select(cradle => cradle.At).Distinct()
            .GroupBy(at => at.Up)
            .Select(level => new LowerLevel(
                level.Key, [.. level.GroupBy(at => at.Back).Select(row => (IReadOnlyList<FramePoint>)[.. row.OrderBy(at => at.Right)])]))];

    private static bool NeedsStretchers(FrameMeasures measures)
    {
        var design = measures.Design;
        if (design.Stretchers != FrameStretchers.WhereNeeded)
        {
            return design.Stretchers == FrameStretchers.Always;
        }

        var height = measures.RailUp - measures.FootUp;
        var pipe = design.Pipe;
        var stiffness = pipe.YoungsModulus.Pascals * PipeSection.SecondMoment(pipe.OutsideDiameter.Meters, pipe.Wall.Meters);
        var lean = FrameSway.Lean(NudgeNewtons, 4, height, stiffness, design.JointStiffness.NewtonMetersPerRadian, 1);

        return lean > LeanShare * height;
    }

    // Across stretchers need a tee of their own on the leg, a nipple's length from the others', rather under one of them than over it.
    private static double? Across(FrameMeasures measures, IReadOnlyList<LowerLevel> levels)
    {
        var pitch = Pitch(measures);
        return levels.Select(level => level.Up - pitch).Concat(levels.Select(level => level.Up + pitch))
            .Where(up => up >= measures.LowestTee && up <= measures.HighestTee && levels.All(level => Math.Abs(level.Up - up) >= pitch - 1e-9))
            .Select(up => (double?)up)
            .FirstOrDefault();
    }

    private static double Pitch(FrameMeasures measures) => measures.Closest(FittingKind.Tee, FittingKind.Tee);
}
