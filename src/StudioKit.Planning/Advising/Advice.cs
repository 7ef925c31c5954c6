using StudioKit.Physics;
using StudioKit.Planning.Changes;

namespace StudioKit.Planning.Advising;

/// <summary>A change, and the exposure that it promises: planned, and not guessed.</summary>
/// <param name="Changes">What changes in the kit; none where only another card is taken.</param>
/// <param name="Promise">The exposure that a plan of the changed kit has.</param>
public sealed record Advice(ValueList<KitChange> Changes, ExposurePlan Promise);
