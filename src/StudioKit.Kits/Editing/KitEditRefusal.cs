namespace StudioKit.Kits.Editing;

/// <summary>Says why a kit's text was left as it is.</summary>
/// <param name="Kind">Why.</param>
/// <param name="Path">Path of the key that was to be changed.</param>
/// <param name="Message">The same in a sentence.</param>
/// <param name="Hint">How it can be done instead; none where the sentence says it all.</param>
public sealed record KitEditRefusal(KitEditRefusalKind Kind, string Path, string Message, string? Hint);
