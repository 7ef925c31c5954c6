namespace StudioKit.Web.Results;

/// <summary>A value as somebody typed it.</summary>
/// <param name="Key">Its key within a new entry; empty where it is the value itself.</param>
/// <param name="Text">The value.</param>
public sealed record FormValue(string Key, string Text);
