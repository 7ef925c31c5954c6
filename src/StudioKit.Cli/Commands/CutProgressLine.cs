using System.Diagnostics;
using System.Globalization;
using StudioKit.Planning.Cutting;

namespace StudioKit.Cli.Commands;

/// <summary>Tells a waiting person how far the cut plan has come, once it has taken a second.</summary>
internal sealed class CutProgressLine(CommandHost host) : IProgress<CutProgress>
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(1);

    private readonly long _start = Stopwatch.GetTimestamp();

    /// <summary>A line for a terminal, nothing for a file.</summary>
    public static CutProgressLine? For(CommandHost host) => host.ErrorIsTerminal ? new CutProgressLine(host) : null;

    public void Report(CutProgress value)
    {
        if (Stopwatch.GetElapsedTime(_start) > Patience)
        {
            host.Error.WriteLine(string.Create(
                CultureInfo.InvariantCulture, $"cutting: {value.Phase}; best {value.Best?.ToString("0.##", CultureInfo.InvariantCulture) ?? "none yet"}, at least {value.LowerBound:0.##}"));
        }
    }
}
