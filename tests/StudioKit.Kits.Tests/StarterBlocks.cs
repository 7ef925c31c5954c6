namespace StudioKit.Kits.Tests;

/// <summary>The starter kit with what is commented out in it put to use.</summary>
internal static class StarterBlocks
{
    private static readonly string[] Lines = StarterKit.Text.Split('\n');

    /// <summary>The kit with every block in use.</summary>
    public static string AllInUse { get; } = string.Join('\n', Lines.Select(InUse));

    /// <summary>The kit with one block in use, for each of its blocks.</summary>
    public static IReadOnlyList<string> OneInUse { get; } = [.. Blocks().Select(block => string.Join('\n', Lines.Select((line, at) => at >= block.First && at <= block.Last ? InUse(line) : line)))];

    // As an editor's "uncomment" does it: the mark and one blank go.
    private static string InUse(string line) => line.StartsWith("# ", StringComparison.Ordinal) ? line[2..] : line;

    private static IEnumerable<(int First, int Last)> Blocks()
    {
        for (var at = 0; at < Lines.Length; at++)
        {
            var first = at;
            while (at < Lines.Length && Lines[at].StartsWith("# ", StringComparison.Ordinal))
            {
                at++;
            }

            if (at > first)
            {
                yield return (first, at - 1);
            }
        }
    }
}
