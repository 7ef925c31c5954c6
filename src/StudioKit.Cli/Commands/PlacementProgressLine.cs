using System.Globalization;
using StudioKit.Cli.Running;
using StudioKit.Physics.Light.Placements;

namespace StudioKit.Cli.Commands;

/// <summary>Tells a waiting person how far the search for a flash's place has come.</summary>
internal sealed class PlacementProgressLine(CommandHost host) : IProgress<PlacementProgress>
{
    private readonly WaitingLine _line = new(host);

    public void Report(PlacementProgress value) =>
        _line.Tell(string.Create(CultureInfo.InvariantCulture, $"searching: {value.Done} of {value.Total} candidates"), value.Done == value.Total);
}
