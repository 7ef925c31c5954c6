namespace StudioKit.Planning.Cutting.Kernel;

/// <summary>One way of cutting one bar.</summary>
/// <param name="Stock">Index into the job's stock.</param>
/// <param name="Counts">How many pieces of each length of the job it yields.</param>
internal sealed record BarPattern(int Stock, int[] Counts)
{
    public bool SameAs(BarPattern other) => Stock == other.Stock && Counts.AsSpan().SequenceEqual(other.Counts);
}
