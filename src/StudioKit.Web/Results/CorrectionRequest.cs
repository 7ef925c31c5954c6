namespace StudioKit.Web.Results;

/// <summary>Asks what a correction file holds.</summary>
/// <param name="FileName">Its name.</param>
/// <param name="Text">Its text.</param>
public sealed record CorrectionRequest(string FileName, string Text);
