using StudioKit.Physics;
using StudioKit.Physics.Exposure;
using UnitsNet;

namespace StudioKit.Planning.Changes;

/// <summary>What may help against a symptom, the cheapest first; what really does is found by planning it.</summary>
/// <param name="Seen">The symptom.</param>
/// <param name="Ladder">Changes to try, in order.</param>
/// <param name="Mends">Whether the exposure with a change is as much better as it should be.</param>
internal sealed record SymptomRule(Symptom Seen, IEnumerable<ValueList<KitChange>> Ladder, Func<ExposurePlan, bool> Mends)
{
    /// <summary>How far one can go that way before something else goes wrong; none where nothing is in the way.</summary>
    public Stops? Room { get; init; }

    /// <summary>How long to wait between frames; none where waiting is no help.</summary>
    public Duration? Wait { get; init; }

    /// <summary>The same exposure taken with another lens of the set-up, where that is what helps.</summary>
    public ExposurePlan? Instead { get; init; }

    /// <summary>Whether the polariser before the lens is all that need be turned.</summary>
    public bool TurnsPolariser { get; init; }
}
