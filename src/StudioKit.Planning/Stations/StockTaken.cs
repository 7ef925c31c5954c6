namespace StudioKit.Planning.Stations;

/// <summary>Stock that a cut plan takes.</summary>
/// <param name="Count">Bars or sheets [1].</param>
/// <param name="Cost">What they cost; none where a piece has no stock to be cut from.</param>
public sealed record StockTaken(int Count, decimal? Cost);
