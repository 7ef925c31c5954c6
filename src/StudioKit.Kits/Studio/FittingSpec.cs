using UnitsNet;

namespace StudioKit.Kits.Studio;

/// <summary>One kind of fitting.</summary>
public sealed record FittingSpec
{
    /// <summary>Centre of the fitting to the bottom of its socket, the length that a pipe is cut short by.</summary>
    public required Length TakeOff { get; init; }

    /// <summary>Depth of its socket.</summary>
    public required Length SocketDepth { get; init; }

    /// <summary>Mass of one.</summary>
    public required Mass Mass { get; init; }

    /// <summary>Price of one in the stock's currency [1]; none where it was not given.</summary>
    public decimal? Price { get; init; }
}
