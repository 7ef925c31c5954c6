using System.Globalization;
using StudioKit.Cli.Running;
using StudioKit.Planning.Exploring;

namespace StudioKit.Cli.Commands;

/// <summary>Tells a waiting person how far the search for designs has come.</summary>
internal sealed class DesignProgressLine(CommandHost host) : IProgress<DesignProgress>
{
    private readonly WaitingLine _line = new(host);

    public void Report(DesignProgress value) =>
        _line.Tell(string.Create(CultureInfo.InvariantCulture, $"exploring: {value.Tried} of {value.Of} designs tried, {value.Shown} of them beaten by none"), isLast: false);

    /// <summary>Ends the line that rewrites itself.</summary>
    public void End() => _line.End();
}
