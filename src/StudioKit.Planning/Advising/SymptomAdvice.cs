using StudioKit.Physics.Exposure;
using StudioKit.Planning.Changes;
using UnitsNet;

namespace StudioKit.Planning.Advising;

/// <summary>If this is seen on the camera's display, turn that.</summary>
/// <param name="Seen">What is seen.</param>
/// <param name="Advice">What to change; none where nothing that the kit has will help.</param>
public sealed record SymptomAdvice(Symptom Seen, Advice? Advice)
{
    /// <summary>How far one can go that way before something else goes wrong; none where nothing is in the way.</summary>
    public Stops? Room { get; init; }

    /// <summary>How long to wait between frames until the slowest flash is ready; none where waiting is no help.</summary>
    public Duration? Wait { get; init; }

    /// <summary>Whether the polariser before the lens is all that need be turned.</summary>
    public bool TurnsPolariser { get; init; }
}
