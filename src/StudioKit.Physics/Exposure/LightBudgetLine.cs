namespace StudioKit.Physics.Exposure;

/// <summary>One gain or loss of a light budget.</summary>
/// <param name="Item">What gains or loses, e.g. <c>Panel transmittance</c>.</param>
/// <param name="Stops">By how much; negative is a loss.</param>
/// <param name="Detail">The value behind it, with its unit, e.g. <c>50 %</c>.</param>
/// <param name="SourceKey">Key of the formula's source in the bibliography.</param>
/// <param name="SourceLocator">Where in the source.</param>
public sealed record LightBudgetLine(string Item, Stops Stops, string Detail, string SourceKey, string SourceLocator)
{
    /// <summary>One standard deviation of the line; 0 or more.</summary>
    public Stops Uncertainty { get; init; }
}
