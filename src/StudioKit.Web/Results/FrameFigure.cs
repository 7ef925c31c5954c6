namespace StudioKit.Web.Results;

/// <summary>A figure of a test frame.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Value">Figure and unit.</param>
public sealed record FrameFigure(string Name, string Value);
