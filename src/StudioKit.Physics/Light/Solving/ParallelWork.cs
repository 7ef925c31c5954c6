namespace StudioKit.Physics.Light.Solving;

/// <summary>Spreads independent pieces of work over the processors; one after another where there is only one, as in a browser.</summary>
internal static class ParallelWork
{
    public static void For(int count, Action<int> piece, CancellationToken cancellation = default) => For(count, piece, isAlone: false, cancellation);

    /// <summary>The same, one after another too where only one processor is to work.</summary>
    public static void For(int count, Action<int> piece, bool isAlone, CancellationToken cancellation)
    {
        if (isAlone || OperatingSystem.IsBrowser() || Environment.ProcessorCount == 1)
        {
            for (var i = 0; i < count; i++)
            {
                cancellation.ThrowIfCancellationRequested();
                piece(i);
            }

            return;
        }

        OverProcessors(count, piece, cancellation);
    }

    // Apart, as a browser has nothing that it needs and looks for all that a method names before it runs it.
    private static void OverProcessors(int count, Action<int> piece, CancellationToken cancellation) =>
        Parallel.For(0, count, new ParallelOptions { CancellationToken = cancellation }, piece);
}
