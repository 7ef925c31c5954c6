using StudioKit.Kits;
using StudioKit.Physics;

namespace StudioKit.Planning.Packing;

/// <summary>What a pack follows from.</summary>
/// <param name="Kit">What of the kit counts.</param>
/// <param name="Panel">The panel.</param>
/// <param name="Frame">The frame.</param>
/// <param name="Workshop">What is built, upright sheets and small parts among it; none where nothing is.</param>
/// <param name="Uses">What the exposures need.</param>
internal sealed record PackInputs(KitSpec Kit, PanelPlan Panel, FramePlan? Frame, Workshop? Workshop, ValueList<GearUse> Uses);
