namespace StudioKit.Web.Results;

/// <summary>A figure of the plan with its unit, rounded as it is known.</summary>
/// <param name="Name">What it measures.</param>
/// <param name="Value">Figure and unit.</param>
/// <param name="Origin">Where it comes from, in a sentence.</param>
public sealed record Measure(string Name, string Value, string Origin);
