using System.Diagnostics;

namespace StudioKit.Cli.Running;

/// <summary>Tells a waiting person how far something has come, once it has taken a second: one line rewritten on a terminal, now and then a line elsewhere.</summary>
internal sealed class WaitingLine(CommandHost host)
{
    private static readonly TimeSpan OnTerminal = TimeSpan.FromSeconds(1);
    private static readonly TimeSpan InFile = TimeSpan.FromSeconds(5);

    private readonly Lock _turn = new();
    private readonly long _start = Stopwatch.GetTimestamp();
    private long _last = Stopwatch.GetTimestamp();
    private bool _told;

    /// <summary>Tells a line where it is time for one.</summary>
    /// <param name="line">The line, in words that are ours alone.</param>
    /// <param name="isLast">Whether no other follows; it is told at once where one was told before.</param>
    public void Tell(string line, bool isLast)
    {
        lock (_turn)
        {
            var finished = isLast && _told;
            if (!finished && Stopwatch.GetElapsedTime(_last) < Wait())
            {
                return;
            }

            (_last, _told) = (Stopwatch.GetTimestamp(), true);
            if (host.ErrorIsTerminal && host.Error is HarmlessWriter terminal)
            {
                // The line rewrites itself.
                terminal.Raw.Write($"\r{line}{(finished ? "\n" : "")}");
                return;
            }

            host.Error.WriteLine(line);
        }
    }

    /// <summary>Ends a line that rewrites itself where nobody knew which would be the last.</summary>
    public void End()
    {
        if (_told && host.ErrorIsTerminal)
        {
            host.Error.WriteLine();
        }
    }

    private TimeSpan Wait() => host.ErrorIsTerminal || Stopwatch.GetElapsedTime(_start) < InFile ? OnTerminal : InFile;
}
