using StudioKit.Physics;
using StudioKit.Planning.Cutting;
using StudioKit.Planning.Studio;
using StudioKit.Planning.Studio.Hardware;

namespace StudioKit.Planning;

/// <summary>What is cut and bought for everything that is built, frame and upright sheets together.</summary>
public sealed record Workshop
{
    /// <summary>Name of the pipe.</summary>
    public required string PipeName { get; init; }

    /// <summary>Name of the family of fittings.</summary>
    public required string FittingsName { get; init; }

    /// <summary>Which pieces are cut from which pipe lengths.</summary>
    public required BarCutPlan PipeCuts { get; init; }

    /// <summary>Flat pieces to cut for one studio.</summary>
    public required IReadOnlyList<SheetPart> SheetParts { get; init; }

    /// <summary>Which pieces are cut from which sheets.</summary>
    public required SheetCutPlan SheetCuts { get; init; }

    /// <summary>What to buy or take from the shelf.</summary>
    public required IReadOnlyList<ShoppingLine> Shopping { get; init; }

    /// <summary>Currency of the prices, ISO 4217.</summary>
    public required string Currency { get; init; }

    /// <summary>How many studios are built at once [1]; cuts and shopping are for all of them.</summary>
    public required int Studios { get; init; }

    /// <summary>Holders of flashes that are built of the same pipe.</summary>
    public ValueList<BuiltHolder> BuiltHolders { get; init; } = [];

    /// <summary>What holds the upright sheets that set-ups use.</summary>
    public ValueList<UprightStandPlan> Uprights { get; init; } = [];

    /// <summary>Small parts of one studio, with where each is used.</summary>
    public ValueList<HardwareLine> Hardware { get; init; } = [];

    /// <summary>Tools for however many studios.</summary>
    public ValueList<ToolLine> Tools { get; init; } = [];

    /// <summary>What it costs where every line has a price but what is looked for at home; none where one has not.</summary>
    public decimal? TotalCost => Unpriced == 0 ? PricedCost : null;

    /// <summary>What the lines cost that have a price.</summary>
    public decimal PricedCost => Shopping.Where(line => !line.IsFromTheHouse).Sum(line => line.Total ?? 0);

    /// <summary>Lines to buy without a price [1].</summary>
    public int Unpriced => Shopping.Count(line => line is { IsFromTheHouse: false, Total: null });
}
