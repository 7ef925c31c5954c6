namespace StudioKit.FieldFiles.Pictures;

/// <summary>How many pictures are worked on at a time.</summary>
internal static class RowsAtOnce
{
    // A picture read and copied by rows takes up to 100 MB besides the program itself (measured at 500 megapixels), and a run is to stay under 600 MB.
    private const int Most = 4;

    /// <summary>Who reads a picture that is in memory as a whole has this turn until it is let go: of large ones there is one at a time.</summary>
    public static SemaphoreSlim Large { get; } = new(1);

    /// <summary>As many as there are processors, but no more than memory is to be taken for.</summary>
    public static int Pictures => Math.Min(Most, Environment.ProcessorCount);
}
