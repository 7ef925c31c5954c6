namespace StudioKit.Web.Results;

/// <summary>A value that something of the studio is moved to.</summary>
/// <param name="Key">Path of the value in the kit.</param>
/// <param name="Value">The value, in millimetres or degrees.</param>
public sealed record HandleMove(string Key, double Value);
