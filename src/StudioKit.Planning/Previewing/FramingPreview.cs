using StudioKit.Kits;

namespace StudioKit.Planning.Previewing;

/// <summary>One framing of a set-up while something of the studio is being moved; never to be printed or kept.</summary>
/// <param name="Kit">The kit with what is moved.</param>
/// <param name="Exposure">Its exposure, at the power that it asks for: margins and the rest of its card.</param>
/// <param name="Light">The studio and what the framing sees of the panel, at the power that was turned to where one was.</param>
public sealed record FramingPreview(KitSpec Kit, ExposurePlan Exposure, PanelLightPlan Light);
