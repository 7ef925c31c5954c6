namespace StudioKit.Field.Log;

/// <summary>Which change can be taken back, and which can be made again, after a history of changes.</summary>
/// <param name="Undoable">The last change that stands; none where nothing is left to take back.</param>
/// <param name="Redoable">The change taken back last; none where nothing was, or something new was done since.</param>
public sealed record ChangeStack(long? Undoable, long? Redoable)
{
    /// <summary>Goes through a history.</summary>
    /// <param name="history">Number and action of each change, in order.</param>
    public static ChangeStack Of(IEnumerable<(long Number, LogAction Action)> history)
    {
        ArgumentNullException.ThrowIfNull(history);
        var (standing, undone) = (new Stack<long>(), new Stack<long>());
        foreach (var (number, action) in history)
        {
            if (action == LogAction.Rescued)
            {
                // What went before is not all there.
                standing.Clear();
                undone.Clear();
            }
            else if (action == LogAction.Undone)
            {
                Move(standing, undone);
            }
            else if (action == LogAction.Redone)
            {
                Move(undone, standing);
            }
            else
            {
                standing.Push(number);
                undone.Clear();
            }
        }

        return new ChangeStack(Top(standing), Top(undone));
    }

    private static void Move(Stack<long> from, Stack<long> to)
    {
        if (from.TryPop(out var number))
        {
            to.Push(number);
        }
    }

    private static long? Top(Stack<long> stack) => stack.TryPeek(out var number) ? number : null;
}
