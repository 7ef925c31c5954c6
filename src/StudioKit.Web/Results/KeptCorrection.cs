namespace StudioKit.Web.Results;

/// <summary>A correction kept beside a kit.</summary>
/// <param name="KitName">The kit's name.</param>
/// <param name="Said">What it holds, in words.</param>
/// <param name="Text">Text of its file.</param>
public sealed record KeptCorrection(string KitName, string Said, string Text);
