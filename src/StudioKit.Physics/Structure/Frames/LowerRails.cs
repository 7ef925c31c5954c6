namespace StudioKit.Physics.Structure.Frames;

/// <summary>Heights of the lower stretchers and place of the flash cradle.</summary>
/// <param name="SideUp">Centre line of the stretchers along the camera's view [m]; none where there are none.</param>
/// <param name="AcrossUp">Centre line of those across it [m]; none where there are none.</param>
/// <param name="CradleAt">Tee that carries the flash; none where there is none.</param>
/// <param name="Problems">Why a cradle that was asked for is missing.</param>
internal sealed record LowerRails(double? SideUp, double? AcrossUp, FramePoint? CradleAt, IReadOnlyList<string> Problems)
{
    private const double NudgeNewtons = 10;
    private const double LeanShare = 0.01;

    public static LowerRails For(FrameMeasures measures)
    {
        if (measures.Design.Shape == FrameShape.LowGround)
        {
            return OnGround(measures);
        }

        var problems = new List<string>();
        var cradle = Cradle(measures, problems);
        var stretched = NeedsStretchers(measures) && Highest(measures) - Lowest(measures) >= Pitch(measures);
        var side = cradle?.Up ?? (stretched ? Lowest(measures) : null);

        return new LowerRails(side, stretched ? Across(measures, side!.Value) : null, cradle, problems);
    }

    private static LowerRails OnGround(FrameMeasures measures)
    {
        var tooDeep = measures.Design.Cradle is { } cradle && cradle.BelowPanel.Meters > measures.Height;
        return new LowerRails(null, null, null, tooDeep ? [$"Flash: a window {measures.Design.Cradle!.BelowPanel.Millimeters:0} mm below the panel lies under the ground."] : []);
    }

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

    private static FramePoint? Cradle(FrameMeasures measures, List<string> problems)
    {
        if (measures.Design.Cradle is not { } wanted)
        {
            return null;
        }

        var up = measures.Height - wanted.BelowPanel.Meters - wanted.StandOff.Meters;
        var place = new FramePoint(wanted.OffsetRight.Meters, wanted.OffsetBack.Meters, up);
        var fault = Fault(measures, place);
        if (fault is not null)
        {
            problems.Add(FormattableString.Invariant($"Flash cradle: {fault}; the flash needs a stand of its own."));
        }

        return fault is null ? place : null;
    }

    private static string? Fault(FrameMeasures measures, FramePoint place)
    {
        var room = measures.Closest(FittingKind.Tee, FittingKind.Tee);
        if (place.Up < Lowest(measures))
        {
            return FormattableString.Invariant($"it would lie {1000 * (Lowest(measures) - place.Up):0} mm too low, raise the panel or bring the flash nearer");
        }

        if (place.Up > Highest(measures))
        {
            return FormattableString.Invariant($"it would lie {1000 * (place.Up - Highest(measures)):0} mm too near the rails");
        }

        var inside = Math.Abs(place.Right) <= measures.Right - room
            && place.Back >= measures.Front + room && place.Back <= measures.Back - room;
        return inside ? null : "its rails would be too short between their tees";
    }

    // Across stretchers need a tee of their own on the leg, a nipple's length from the other's.
    private static double? Across(FrameMeasures measures, double side)
    {
        var (below, above) = (side - Pitch(measures), side + Pitch(measures));
        if (below >= Lowest(measures))
        {
            return below;
        }

        return above <= Highest(measures) ? above : null;
    }

    private static double Pitch(FrameMeasures measures) => measures.Closest(FittingKind.Tee, FittingKind.Tee);

    private static double Lowest(FrameMeasures measures) =>
        measures.FootUp + measures.Closest(FittingKind.Cap, FittingKind.Tee);

    private static double Highest(FrameMeasures measures) =>
        measures.RailUp - measures.Closest(FittingKind.Corner, FittingKind.Tee);
}
