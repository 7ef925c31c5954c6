namespace StudioKit.Web.Results;

/// <summary>The bright window of a flash below in space.</summary>
/// <param name="Flash">Its name.</param>
/// <param name="Front">Middle of its front edge.</param>
/// <param name="Back">Middle of its back edge.</param>
/// <param name="Width">Its width across in millimetres.</param>
public sealed record SolidLight(string Flash, Place Front, Place Back, double Width);
