using StudioKit.Physics.Light;

namespace StudioKit.Planning.Studio.Lights;

/// <summary>Pieces of pipe joined end to end into the straight runs that they make.</summary>
internal static class StraightRuns
{
    // Ends nearer than this are one joint, and pieces that bend less over their length are straight [m].
    private const double Same = 1e-6;

    /// <summary>The runs, in the order of their first pieces.</summary>
    public static IReadOnlyList<(Position Start, Position End)> Of(IEnumerable<(Position Start, Position End)> pieces)
    {
        List<(Position Start, Position End)> runs = [];
        foreach (var piece in pieces)
        {
            Add(runs, piece);
        }

        return runs;
    }

    // A piece may close the gap between two runs, so what it makes longer is added anew.
    private static void Add(List<(Position Start, Position End)> runs, (Position Start, Position End) piece)
    {
        for (var i = 0; i < runs.Count; i++)
        {
            if (Joined(runs[i], piece) is { } longer)
            {
                runs.RemoveAt(i);
                Add(runs, longer);
                return;
            }
        }

        runs.Add(piece);
    }

    private static (Position Start, Position End)? Joined((Position Start, Position End) run, (Position Start, Position End) piece) =>
        RunsOn(run.Start, run.End, piece.Start, piece.End) ? (run.Start, piece.End)
        : RunsOn(run.Start, run.End, piece.End, piece.Start) ? (run.Start, piece.Start)
        : RunsOn(run.End, run.Start, piece.Start, piece.End) ? (piece.End, run.End)
        : RunsOn(run.End, run.Start, piece.End, piece.Start) ? (piece.Start, run.End)
        : null;

    // Whether the way from one place over a joint to another is straight: as long as the distance of its ends.
    private static bool RunsOn(Position from, Position joint, Position next, Position to) =>
        Distance(joint, next) < Same && Distance(from, joint) + Distance(next, to) - Distance(from, to) < Same * Same;

    private static double Distance(Position one, Position other) => Math.Sqrt(
        ((one.X - other.X) * (one.X - other.X)) + ((one.Y - other.Y) * (one.Y - other.Y)) + ((one.Z - other.Z) * (one.Z - other.Z)));
}
