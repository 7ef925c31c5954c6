using StudioKit.Kits.SetUps;

namespace StudioKit.Planning.Session;

/// <summary>A flash and how it is to be fired from a step of a session on.</summary>
/// <param name="Flash">Its name.</param>
/// <param name="Role">What it does.</param>
/// <param name="FiredBy">How it is fired.</param>
public sealed record FlashFiring(string Flash, LightRole Role, FiringPlan FiredBy);
