namespace StudioKit.Sheets.Json;

/// <summary>Names of enumeration members as kit files spell them.</summary>
public static class KebabText
{
    /// <summary>Turns <c>WhiteBackground</c> into <c>white-background</c>.</summary>
    public static string Of(Enum value) => string.Concat(
        value.ToString().Select((letter, index) =>
            char.IsUpper(letter) && index > 0 ? "-" + char.ToLowerInvariant(letter) : char.ToLowerInvariant(letter).ToString()));
}
