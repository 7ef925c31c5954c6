using StudioKit.Physics;
using StudioKit.Planning.Changes;

namespace StudioKit.Planning.Advising;

/// <summary>A change, and what it promises: planned, and not guessed.</summary>
/// <param name="Changes">What changes in the kit; none where only another card is taken.</param>
/// <param name="Promise">What a plan of the changed kit has.</param>
public sealed record Advice(ValueList<KitChange> Changes, Promise Promise)
{
    /// <param name="changes">What changes in the kit; none where only another card is taken.</param>
    /// <param name="planned">The exposure that a plan of the changed kit has.</param>
    public Advice(ValueList<KitChange> changes, ExposurePlan planned)
        : this(changes, Promise.Of(planned))
    {
    }
}
