using StudioKit.Physics;
using StudioKit.Physics.Structure.Frames;
using UnitsNet;

namespace StudioKit.Planning.Studio.Frames;

/// <summary>Cut lists of the same frame with fittings of other take-offs, each from a frame that is laid out anew.</summary>
internal static class TakeOffTables
{
    private const double Same = 0.01;
    private static readonly int[] Changes = [-3, -2, -1, 1, 2, 3];

    /// <summary>One table for each kind of fitting that pipes are cut short by, but caps: a foot takes up what they differ by.</summary>
    /// <param name="design">The frame as it was generated.</param>
    /// <param name="frame">The frame.</param>
    /// <param name="fittings">Its fittings.</param>
    public static ValueList<TakeOffTable> Of(FrameCase design, FrameResult frame, IReadOnlyList<FittingCount> fittings) =>
        [.. fittings.Where(fitting => fitting.Kind != FittingKind.Cap).Select(fitting => Of(design, frame, fitting)).Where(table => table.Pieces.Count > 0)];

    private static TakeOffTable Of(FrameCase design, FrameResult frame, FittingCount fitting)
    {
        var takeOffs = Changes.Select(change => fitting.TakeOff + Length.FromMillimeters(change)).Where(takeOff => takeOff >= Length.Zero).ToList();
        var planned = Cuts(frame)!;
        var others = takeOffs.Select(takeOff => Again(design with { Fittings = With(design.Fittings, fitting.Kind, takeOff) }, frame)).ToList();
        var rows = frame.Members.Select((member, i) => (Member: member, Planned: planned[i], Cuts: (ValueList<Length?>)[.. others.Select(other => other?[i])]));
        return new TakeOffTable(
            fitting.Kind, fitting.Name, fitting.TakeOff, [.. takeOffs],
            [.. rows.GroupBy(row => (row.Member.Group, row.Planned, row.Cuts)).Where(alike => alike.Key.Cuts.Any(cut => cut is not null && Math.Abs((cut.Value - alike.Key.Planned).Millimeters) > Same))
                .Select(alike => new TakeOffPiece(Named(frame, [.. alike.Select(row => row.Member)]), alike.Key.Planned, alike.Key.Cuts))]);
    }

    private static string Named(FrameResult frame, List<FrameMember> alike) =>
        alike.Count == frame.Members.Count(member => member.Group == alike[0].Group) ? alike[0].Group : string.Join(", ", alike.Select(member => member.Label));

    // A frame that comes out with other joints has no piece to set beside the planned one.
    private static List<Length>? Again(FrameCase design, FrameResult frame)
    {
        if (PipeFrame.Obstacle(design) is not null)
        {
            return null;
        }

        var again = PipeFrame.Generate(design);
        return again.Problems.Count <= frame.Problems.Count && again.Members.Select(Place).SequenceEqual(frame.Members.Select(Place)) ? Cuts(again) : null;
    }

    private static (string From, string To, int Part, int Parts) Place(FrameMember member) => (member.From, member.To, member.Part, member.Parts);

    // Each piece under a name of its own, as pieces that shared a letter may part.
    private static List<Length> Cuts(FrameResult frame) =>
        [.. CutList.Of(frame with { Members = [.. frame.Members.Select((member, i) => member with { Group = FormattableString.Invariant($"{i}") })] }).Select(entry => entry.Rounded)];

    private static FittingSet With(FittingSet fittings, FittingKind kind, Length takeOff)
    {
        var changed = fittings.Of(kind) with { TakeOff = takeOff };
        return kind switch
        {
            FittingKind.Elbow => fittings with { Elbow = changed },
            FittingKind.Tee => fittings with { Tee = changed },
            FittingKind.Cross => fittings with { Cross = changed },
            FittingKind.Corner => fittings with { Corner = changed },
            FittingKind.Coupling => fittings with { Coupling = changed },
            _ => fittings with { Cap = changed },
        };
    }
}
