namespace StudioKit.Planning.Checks;

/// <summary>A key of the kit and what stands under it.</summary>
/// <param name="Path">Path of sections to the key, e.g. <c>set-ups[0].lights[1].distance</c>.</param>
/// <param name="Value">What the kit says there, as written; none where it says nothing, or where a whole section stands there.</param>
/// <param name="Standing">What is taken because the kit says nothing; none where it says something, or where nothing stands in.</param>
public sealed record KitKey(string Path, string? Value, string? Standing = null);
