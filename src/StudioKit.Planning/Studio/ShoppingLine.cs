using StudioKit.Physics;
using StudioKit.Planning.Studio.Hardware;
using UnitsNet;

namespace StudioKit.Planning.Studio;

/// <summary>A line of the shopping list.</summary>
/// <param name="Named">Name of what to buy, where it is no length of stock, small part or tool.</param>
/// <param name="Count">How many, or metres of what is sold by the metre [1].</param>
/// <param name="PriceEach">Price of one [1]; 0 for what is on hand, none where the kit gives none.</param>
public sealed record ShoppingLine(string Named, int Count, decimal? PriceEach)
{
    /// <summary>What its sizes are.</summary>
    public ShoppingSize Size { get; init; }

    /// <summary>How thick a sheet is, where that is part of its name.</summary>
    public Length? Thickness { get; init; }

    /// <summary>Its sizes.</summary>
    public ValueList<Length> Sizes { get; init; } = [];

    /// <summary>The small parts; none of all else.</summary>
    public HardwareLine? Hardware { get; init; }

    /// <summary>The tool; none of all else.</summary>
    public ToolLine? Tool { get; init; }

    /// <summary>What to buy, in words.</summary>
    public string Item => this switch
    {
        { Hardware: { ByTheMetre: true } part } => $"{HardwareText.Name(part)}, metre",
        { Hardware: { } part } => HardwareText.Name(part),
        { Tool: { } tool } => ToolText.Name(tool),
        { Size: ShoppingSize.Bar } => $"{Named}, length of {PlanFormat.AsSold(Sizes[0])}",
        { Size: ShoppingSize.Sides } => $"{Name}, {PlanFormat.Rectangle(Sizes[0], Sizes[1])}",
        { Size: ShoppingSize.CutTo } => $"{Name}, cut to {PlanFormat.Rectangle(Sizes[0], Sizes[1])}",
        { Size: ShoppingSize.Inside } => $"{Named}: {PlanFormat.Box(Sizes[0], Sizes[1], Sizes[2])} inside",
        _ => Named,
    };

    /// <summary>Whether it is looked for at home before it is bought, so that it counts as no cost.</summary>
    public bool IsFromTheHouse => Tool is not null || Hardware is { IsFromTheHouse: true };

    /// <summary>Price of all of them [1].</summary>
    public decimal? Total => PriceEach * Count;

    private string Name => Thickness is { } thickness ? $"{Named}, {PlanFormat.AsSold(thickness)}" : Named;
}
