using StudioKit.Kits.Editing;

namespace StudioKit.Planning.Changes;

/// <summary>One value of a kit's text that a change writes or takes away.</summary>
/// <param name="Path">Path of the key or entry, e.g. <c>set-ups[0].lights[1].distance</c>; an entry one beyond the last of its list is added.</param>
/// <param name="Value">What is to stand there; none to take the key or entry away.</param>
public sealed record KitSetting(string Path, KitValue? Value);
