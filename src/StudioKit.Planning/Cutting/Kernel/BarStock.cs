namespace StudioKit.Planning.Cutting.Kernel;

/// <summary>One kind of bar, in the planners' whole numbers.</summary>
/// <param name="Row">Its place in the request.</param>
/// <param name="Capacity">Usable length plus one kerf [tenths of a millimetre].</param>
/// <param name="Cost">Cost of one [ticks].</param>
/// <param name="Available">How many there are, at most as many as there are pieces.</param>
internal sealed record BarStock(int Row, int Capacity, long Cost, int Available);
