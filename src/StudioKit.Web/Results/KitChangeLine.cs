namespace StudioKit.Web.Results;

/// <summary>A value to be written into a kit.</summary>
/// <param name="Key">Path of its key.</param>
/// <param name="Value">The value as a person would type it.</param>
public sealed record KitChangeLine(string Key, string Value);
