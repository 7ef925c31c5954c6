namespace StudioKit.Kits.Quantities;

/// <summary>The sign between a value and how far off it may be.</summary>
internal static class PlusMinus
{
    private static readonly string[] Signs = ["±", "+/-"];

    /// <summary>Parts a text at the sign.</summary>
    /// <returns>The value; the sign as it is written, and what follows it, both none where there is no sign.</returns>
    public static (string Value, string? Sign, string? Spread) Split(string text)
    {
        foreach (var sign in Signs)
        {
            var at = text.IndexOf(sign, StringComparison.Ordinal);
            if (at >= 0)
            {
                return (text[..at].Trim(), sign, text[(at + sign.Length)..].Trim());
            }
        }

        return (text.Trim(), null, null);
    }
}
