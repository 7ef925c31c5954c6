namespace StudioKit.Physics.Exposure;

/// <summary>One gain or loss on the way from a flash to the sensor.</summary>
/// <param name="Item">What changes the light, e.g. "power 1/5".</param>
/// <param name="Stops">By how much, positive for a gain.</param>
/// <param name="Detail">How the number came about, with its units.</param>
/// <param name="SourceKey">Key of the source in the bibliography.</param>
/// <param name="SourceLocator">Where in the source.</param>
public sealed record LightBudgetLine(string Item, Stops Stops, string Detail, string SourceKey, string SourceLocator);
