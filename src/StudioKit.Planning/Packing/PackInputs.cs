using StudioKit.Kits;
using StudioKit.Physics;

namespace StudioKit.Planning.Packing;

/// <summary>What a pack follows from.</summary>
/// <param name="Kit">What of the kit counts.</param>
/// <param name="Panel">The panel.</param>
/// <param name="Frame">The frame.</param>
/// <param name="Uprights">What holds the upright sheets.</param>
/// <param name="Uses">What the exposures need.</param>
internal sealed record PackInputs(KitSpec Kit, PanelPlan Panel, FramePlan? Frame, ValueList<UprightStandPlan> Uprights, ValueList<GearUse> Uses);
