using StudioKit.Physics.Sources;
using UnitsNet;

namespace StudioKit.Physics.Structure.Frames;

/// <summary>The pieces to cut, identical ones together, rounded to what a rule shows.</summary>
public static class CutList
{
    // Of a step, so that 571.2499999 and 571.4999999 from floating point are not rounded to the step below.
    private const double Slack = 1e-6;
    private const double StepMm = 0.5;

    /// <summary>Groups a frame's pieces and rounds them to half a millimetre.</summary>
    /// <param name="frame">The frame.</param>
    /// <returns>One entry a length, in the order of their letters.</returns>
    /// <exception cref="ArgumentNullException">There is no frame.</exception>
    /// <remarks>
    /// A piece is rounded to the nearest step; the difference goes into the insertion gaps, half at each end, so the frame keeps
    /// its size. It is rounded down where rounding up would want more gap than there is.
    /// </remarks>
    [Source("CommonPractice", "rounding is taken up in the sockets")]
    public static IReadOnlyList<CutListEntry> Of(FrameResult frame)
    {
        ArgumentNullException.ThrowIfNull(frame);

        return [.. frame.Members.GroupBy(member => member.Group, StringComparer.Ordinal).Select(group => Entry(group.Key, [.. group]))];
    }

    private static CutListEntry Entry(string group, List<FrameMember> pieces)
    {
        var exact = pieces[0].CutLength.Millimeters;
        var rounded = RoundedMm(exact, pieces[0].InsertionGap.Millimeters);

        return new CutListEntry(
            group,
            [.. pieces.Select(piece => piece.Label)],
            pieces[0].CutLength,
            Length.FromMillimeters(rounded),
            Length.FromMillimeters((exact - rounded) / 2));
    }

    private static double RoundedMm(double exact, double gap)
    {
        var nearest = Math.Round((exact / StepMm) + Slack, MidpointRounding.AwayFromZero) * StepMm;

        return nearest - exact > (2 * gap) + 0.001 ? Math.Floor((exact / StepMm) + Slack) * StepMm : nearest;
    }
}
