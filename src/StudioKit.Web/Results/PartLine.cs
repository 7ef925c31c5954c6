namespace StudioKit.Web.Results;

/// <summary>A part of the library.</summary>
/// <param name="Name">Name to write into the kit.</param>
/// <param name="Title">What it is.</param>
/// <param name="Figures">Its figures in a line.</param>
/// <param name="Source">Where they come from.</param>
public sealed record PartLine(string Name, string Title, string Figures, string Source);
