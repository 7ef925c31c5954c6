namespace StudioKit.Web.Results;

/// <summary>Asks what a kit leaves open. Reading that takes several steps, so that other questions come in between.</summary>
/// <param name="Text">The kit's text.</param>
/// <param name="FileName">Its file's name.</param>
/// <param name="Step">Which step, from 0.</param>
public sealed record DesignsRequest(string Text, string FileName, int Step);
