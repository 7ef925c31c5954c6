namespace StudioKit.Web.Results;

/// <summary>Asks how two states of a kit differ.</summary>
/// <param name="First">Text of the first.</param>
/// <param name="Second">Text of the second.</param>
/// <param name="FileName">The file's name, as errors name it.</param>
public sealed record CompareRequest(string First, string Second, string FileName);
