using System.Globalization;
using System.Text;

namespace StudioKit.Web.Editing;

/// <summary>The numbers that stand beside the lines of a text.</summary>
public static class LineNumbers
{
    /// <summary>So many lines are numbered: as many as a kit may have. The page would stand still over the numbers of a text that is no kit.</summary>
    public const int Most = 20_000;

    /// <summary>One number a line, with a cross at those that have something wrong.</summary>
    /// <param name="text">The text.</param>
    /// <param name="wrong">Lines that have something wrong, counted from 1.</param>
    public static string Of(string text, IReadOnlySet<int> wrong)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(wrong);

        var lines = text.AsSpan().Count('\n') + 1;
        var numbers = new StringBuilder();
        for (var line = 1; line <= Math.Min(lines, Most); line++)
        {
            numbers.Append(line > 1 ? "\n" : "").Append(wrong.Contains(line) ? "✕ " : "").Append(line.ToString(CultureInfo.InvariantCulture));
        }

        return lines > Most ? numbers.Append("\n…").ToString() : numbers.ToString();
    }
}
