using StudioKit.Kits.SetUps;
using StudioKit.Physics.Light.Covers;

namespace StudioKit.Planning.Covers;

/// <summary>A flash that shows in a cover.</summary>
/// <param name="Flash">Its name.</param>
/// <param name="Role">What it does.</param>
/// <param name="Where">Where it shows.</param>
public sealed record ShownFlash(string Flash, LightRole Role, CoverReflection Where);
