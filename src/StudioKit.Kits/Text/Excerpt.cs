namespace StudioKit.Kits.Text;

/// <summary>Keeps what a stranger's file says short inside a message.</summary>
internal static class Excerpt
{
    private const int Longest = 60;

    public static string Short(string text) => text.Length <= Longest ? text : string.Concat(text.AsSpan(0, Longest), "…");
}
