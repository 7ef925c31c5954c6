namespace StudioKit.Physics.Light.Solving;

/// <summary>Spreads independent pieces of work over the processors; one after another where there is only one, as in a browser.</summary>
internal static class ParallelWork
{
    public static void For(int count, Action<int> piece, CancellationToken cancellation = default)
    {
        if (OperatingSystem.IsBrowser() || Environment.ProcessorCount == 1)
        {
            for (var i = 0; i < count; i++)
            {
                cancellation.ThrowIfCancellationRequested();
                piece(i);
            }

            return;
        }

        Parallel.For(0, count, new ParallelOptions { CancellationToken = cancellation }, piece);
    }
}
