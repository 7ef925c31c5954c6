namespace StudioKit.Writing;

/// <summary>A file that a run is going to write.</summary>
/// <param name="Path">Its name, as the user gave it.</param>
/// <param name="From">What it is made of, e.g. the picture that a copy is of, to tell two apart that would have one name; empty where nothing in particular.</param>
public sealed record FileTarget(string Path, string From = "");
