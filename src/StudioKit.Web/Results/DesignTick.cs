namespace StudioKit.Web.Results;

/// <summary>A mark on an axis.</summary>
/// <param name="At">Where it stands.</param>
/// <param name="Text">Its amount.</param>
public sealed record DesignTick(double At, string Text);
