using StudioKit.Physics.Sources;
using UnitsNet;

namespace StudioKit.Physics.Structure.Frames;

/// <summary>The pieces to cut, identical ones together, rounded to what a tape shows.</summary>
public static class CutList
{
    // Of a step, so that 571.2499999 and 571.4999999 from floating point are not rounded to the step below.
    private const double Slack = 1e-6;
    private const double SixteenthInchMm = 25.4 / 16;

    /// <summary>Groups a frame's pieces and rounds them.</summary>
    /// <param name="frame">The frame.</param>
    /// <param name="rounding">What to round to.</param>
    /// <returns>One entry a length, in the order of their letters.</returns>
    /// <exception cref="ArgumentNullException">There is no frame.</exception>
    /// <remarks>
    /// A piece is rounded to the nearest step; the difference goes into the insertion gaps, half at each end, so the frame keeps
    /// its size. It is rounded down where rounding up would want more gap than there is.
    /// </remarks>
    [Source("CommonPractice", "rounding is taken up in the sockets")]
    public static IReadOnlyList<CutListEntry> Of(FrameResult frame, CutRounding rounding)
    {
        ArgumentNullException.ThrowIfNull(frame);
        var step = rounding == CutRounding.SixteenthInch ? SixteenthInchMm : 0.5;

        return [.. frame.Members.GroupBy(member => member.Group, StringComparer.Ordinal).Select(group => Entry(group.Key, [.. group], step))];
    }

    private static CutListEntry Entry(string group, List<FrameMember> pieces, double step)
    {
        var exact = pieces[0].CutLength.Millimeters;
        var rounded = RoundedMm(exact, pieces[0].InsertionGap.Millimeters, step);

        return new CutListEntry(
            group,
            [.. pieces.Select(piece => piece.Label)],
            pieces[0].CutLength,
            Length.FromMillimeters(rounded),
            Length.FromMillimeters((exact - rounded) / 2));
    }

    private static double RoundedMm(double exact, double gap, double step)
    {
        var nearest = Math.Round((exact / step) + Slack, MidpointRounding.AwayFromZero) * step;

        return nearest - exact > (2 * gap) + 0.001 ? Math.Floor((exact / step) + Slack) * step : nearest;
    }
}
