using System.Text.RegularExpressions;

namespace StudioKit.Cli.Tests.Written;

/// <summary>What a page for people gives to type, to write down or to name in passing, in its order.</summary>
internal static class WrittenPage
{
    private const string Fence = "```";
    private static readonly string[] Callers = ["studiokit ", "dotnet run --project src/StudioKit.Cli -- "];

    /// <summary>Blocks between fences: the word behind the first fence, and the text.</summary>
    public static IEnumerable<(string Kind, string Text)> Blocks(string page)
    {
        var lines = page.ReplaceLineEndings("\n").Split('\n');
        for (var i = 0; i < lines.Length; i++)
        {
            if (lines[i].StartsWith(Fence, StringComparison.Ordinal))
            {
                var block = lines.Skip(i + 1).TakeWhile(line => line != Fence).ToList();
                yield return (lines[i][Fence.Length..], string.Concat(block.Select(line => line + "\n")));
                i += block.Count + 1;
            }
        }
    }

    /// <summary>The arguments of every line of a block that calls the command.</summary>
    public static IEnumerable<string[]> Calls(string block) =>
        from line in block.Split('\n')
        from caller in Callers
        where line.StartsWith(caller, StringComparison.Ordinal)
        select Words(line[caller.Length..]);

    /// <summary>What stands between single back-quotes outside of blocks, as words.</summary>
    public static IEnumerable<string[]> Spans(string page)
    {
        var outside = string.Join('\n', page.ReplaceLineEndings("\n").Split(Fence).Where((_, i) => i % 2 == 0));
        return Regex.Matches(outside, "`(?<span>[^`\n]+)`", RegexOptions.NonBacktracking | RegexOptions.ExplicitCapture).Select(span => Words(span.Groups["span"].Value));
    }

    // As a shell does: blanks divide, but not between quotation marks.
    private static string[] Words(string line) =>
        [.. Regex.Matches(line, "\"(?<quoted>[^\"]*)\"|(?<bare>[^\\s\"]+)", RegexOptions.NonBacktracking | RegexOptions.ExplicitCapture)
            .Select(word => word.Groups["quoted"].Success ? word.Groups["quoted"].Value : word.Groups["bare"].Value)];
}
