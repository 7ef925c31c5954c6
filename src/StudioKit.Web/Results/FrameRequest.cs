namespace StudioKit.Web.Results;

/// <summary>Asks what a picture that was read comes to, and what to turn.</summary>
/// <param name="Text">The kit's text.</param>
/// <param name="FileName">Its file's name.</param>
/// <param name="Picture">The picture's key.</param>
/// <param name="SetUp">Set-up that it was taken with.</param>
/// <param name="Framing">Framing that it was taken with; empty where its file is to tell.</param>
/// <param name="Power">Power that the lower flash was set to, e.g. 1/8; empty for the plan's.</param>
public sealed record FrameRequest(string Text, string FileName, string Picture, string SetUp, string Framing, string Power);
