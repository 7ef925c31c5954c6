using System.Diagnostics;
using System.Globalization;
using StudioKit.Cli.Running;
using StudioKit.Physics.Light.Placements;

namespace StudioKit.Cli.Commands;

/// <summary>Tells a waiting person how far the search has come, once it has taken a second: one line rewritten on a terminal, now and then a line elsewhere.</summary>
internal sealed class PlacementProgressLine(CommandHost host) : IProgress<PlacementProgress>
{
    private static readonly TimeSpan OnTerminal = TimeSpan.FromSeconds(1);
    private static readonly TimeSpan InFile = TimeSpan.FromSeconds(5);

    private readonly Lock _turn = new();
    private readonly long _start = Stopwatch.GetTimestamp();
    private long _last = Stopwatch.GetTimestamp();
    private bool _told;

    public void Report(PlacementProgress value)
    {
        lock (_turn)
        {
            var finished = value.Done == value.Total && _told;
            if (!finished && Stopwatch.GetElapsedTime(_last) < Wait())
            {
                return;
            }

            (_last, _told) = (Stopwatch.GetTimestamp(), true);
            var line = string.Create(CultureInfo.InvariantCulture, $"searching: {value.Done} of {value.Total} candidates");
            if (host.ErrorIsTerminal && host.Error is HarmlessWriter terminal)
            {
                // The words are ours alone, and the line rewrites itself.
                terminal.Raw.Write($"\r{line}{(finished ? "\n" : "")}");
                return;
            }

            host.Error.WriteLine(line);
        }
    }

    private TimeSpan Wait() => host.ErrorIsTerminal || Stopwatch.GetElapsedTime(_start) < InFile ? OnTerminal : InFile;
}
