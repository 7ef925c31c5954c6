namespace StudioKit.Web.Results;

/// <summary>Asks for a plan of a kit.</summary>
/// <param name="Text">The kit's text.</param>
/// <param name="FileName">Its file's name, as errors name it.</param>
public sealed record PlanRequest(string Text, string FileName);
