namespace StudioKit.Web.Results;

/// <summary>A design in a picture.</summary>
/// <param name="Number">Its number; 0 for the kit as it is written.</param>
/// <param name="X">Where it stands across.</param>
/// <param name="Y">Where it stands downwards.</param>
/// <param name="IsNumbered">Whether there is room for its number.</param>
public sealed record DesignPoint(int Number, double X, double Y, bool IsNumbered);
