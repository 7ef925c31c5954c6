using StudioKit.Kits.Lighting;
using StudioKit.Kits.SetUps;

namespace StudioKit.Planning.Studio.Frames;

/// <summary>A flash of the kit in one place under the panel.</summary>
/// <param name="Flash">The flash.</param>
/// <param name="Light">The first light that puts it there.</param>
/// <param name="SetUps">Set-ups that light with it there.</param>
internal sealed record LowerFlash(FlashSpec Flash, LightSpec Light, IReadOnlyList<string> SetUps);
