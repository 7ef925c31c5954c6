using StudioKit.Kits.SetUps;

namespace StudioKit.Wording;

/// <summary>What the flashes of a set-up do, in words.</summary>
public static class RoleText
{
    /// <summary>What a flash does, in a word, e.g. <c>below</c>.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A role without a word.</exception>
    public static string Word(LightRole role) => role switch
    {
        LightRole.Below => "below",
        LightRole.Above => "above",
        LightRole.Key => "key",
        LightRole.Fill => "fill",
        LightRole.Rim => "rim",
        LightRole.Behind => "behind",
        _ => throw new ArgumentOutOfRangeException(nameof(role), role, "A role without a word."),
    };

    /// <summary>The same at the head of a line, e.g. <c>Below</c>.</summary>
    public static string Title(LightRole role) => Sentence.Begin(Word(role));
}
