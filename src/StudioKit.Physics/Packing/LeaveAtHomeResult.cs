using UnitsNet;

namespace StudioKit.Physics.Packing;

/// <summary>What to leave at home.</summary>
/// <param name="Left">Names of the things left.</param>
/// <param name="LostCapabilities">Names of what is no longer possible.</param>
/// <param name="Loss">Loss in all [1].</param>
/// <param name="Mass">Mass left to carry.</param>
/// <param name="Reached">Whether that is within the target; where it is not, all that could be left was.</param>
/// <param name="ProvenOptimal">Whether no other choice loses less.</param>
public sealed record LeaveAtHomeResult(
    IReadOnlyList<string> Left, IReadOnlyList<string> LostCapabilities, double Loss, Mass Mass, bool Reached, bool ProvenOptimal);
