using System.Diagnostics;
using System.Globalization;
using StudioKit.Cli.Running;
using StudioKit.Planning.Exploring;

namespace StudioKit.Cli.Commands;

/// <summary>Tells a waiting person how far the search has come, once it has taken a second: one line rewritten on a terminal, now and then a line elsewhere.</summary>
internal sealed class DesignProgressLine(CommandHost host) : IProgress<DesignProgress>
{
    private static readonly TimeSpan OnTerminal = TimeSpan.FromSeconds(1);
    private static readonly TimeSpan InFile = TimeSpan.FromSeconds(5);

    private long _last = Stopwatch.GetTimestamp();
    private bool _told;

    public void Report(DesignProgress value)
    {
        if (Stopwatch.GetElapsedTime(_last) < (host.ErrorIsTerminal ? OnTerminal : InFile))
        {
            return;
        }

        (_last, _told) = (Stopwatch.GetTimestamp(), true);
        var line = string.Create(CultureInfo.InvariantCulture, $"exploring: {value.Tried} of {value.Of} designs tried, {value.Shown} of them beaten by none");
        if (host.ErrorIsTerminal && host.Error is HarmlessWriter terminal)
        {
            // The words are ours alone, and the line rewrites itself.
            terminal.Raw.Write($"\r{line}");
            return;
        }

        host.Error.WriteLine(line);
    }

    /// <summary>Ends the line that rewrites itself.</summary>
    public void End()
    {
        if (_told && host.ErrorIsTerminal)
        {
            host.Error.WriteLine();
        }
    }
}
