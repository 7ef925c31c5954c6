using StudioKit.Kits.Editing;

namespace StudioKit.Kits.Completing;

/// <summary>Something that could stand where somebody types.</summary>
/// <param name="Kind">What it writes.</param>
/// <param name="Label">What to show for it, e.g. a key or a part's name.</param>
/// <param name="Help">What it is for, or what the part is with its main figures; empty where nothing is to be said.</param>
/// <param name="Edit">The change of the text that writes it.</param>
public sealed record KitCandidate(KitCandidateKind Kind, string Label, string Help, TextEdit Edit);
