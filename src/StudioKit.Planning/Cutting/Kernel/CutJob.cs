using StudioKit.Physics;
using UnitsNet;

namespace StudioKit.Planning.Cutting.Kernel;

/// <summary>What jobs of bars and of sheets share: a kerf carried by every piece and lent by all stock, prices in whole ticks, and what is refused.</summary>
internal abstract class CutJob
{
    protected CutJob(StockPrices prices, Length kerf, Length trim)
    {
        Prices = prices;
        Kerf = Tenths.Up(kerf, nameof(kerf));
        Trim = Tenths.Up(trim, nameof(trim));
    }

    public StockPrices Prices { get; }

    /// <summary>Width of a cut [tenths of a millimetre].</summary>
    public int Kerf { get; }

    /// <summary>What squaring takes off stock [tenths of a millimetre].</summary>
    public int Trim { get; }

    /// <summary>Whether a side is one that any stock could have.</summary>
    protected static bool CanCount(Length side) => Tenths.CanCount(Positive(side));

    /// <summary>A side of a piece with its kerf [tenths of a millimetre].</summary>
    protected int Needed(Length side) => Tenths.Up(Positive(side), nameof(side)) + Kerf;

    /// <summary>A side of stock, squared, with the kerf that it lends [tenths of a millimetre].</summary>
    protected int Given(Length side) => Tenths.Down(Tenths.AtMostCountable(Positive(side)), nameof(side)) - Trim + Kerf;

    /// <summary>Refuses a job without pieces.</summary>
    protected static void RefuseNone(int kinds)
    {
        if (kinds == 0)
        {
            throw new ArgumentOutOfRangeException(nameof(kinds), "A job needs at least one piece.");
        }
    }

    /// <summary>Refuses a piece that is wanted less than once.</summary>
    protected static int Wanted(int count) =>
        count >= 1 ? count : throw new ArgumentOutOfRangeException(nameof(count), count, "A piece is wanted at least once.");

    /// <summary>Refuses stock of less than none; stock without a count is endless.</summary>
    protected static int? OnHand(int? count) =>
        count is null or >= 0 ? count : throw new ArgumentOutOfRangeException(nameof(count), count, "Stock is counted from zero up.");

    private static Length Positive(Length side)
    {
        Guard.Positive(side.Millimeters, nameof(side));
        return side;
    }
}
