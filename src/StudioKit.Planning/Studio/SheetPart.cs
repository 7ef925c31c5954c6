using UnitsNet;

namespace StudioKit.Planning.Studio;

/// <summary>A flat piece to cut for one studio: panel, skirt, upright sheet or part of a softbox.</summary>
/// <param name="Kind">What kind of piece it is.</param>
/// <param name="Label">Name on the cut plan.</param>
/// <param name="Purpose">What it is for, for a person.</param>
/// <param name="Material">What it is cut from, as on the shopping list.</param>
/// <param name="Width">First side to cut.</param>
/// <param name="Height">Second side to cut.</param>
/// <param name="Count">How many for one studio [1].</param>
/// <param name="KeepsDirection">Whether it keeps the sheet's direction, as cloth and extruded sheet should.</param>
public sealed record SheetPart(
    SheetPartKind Kind, string Label, string Purpose, string Material, Length Width, Length Height, int Count, bool KeepsDirection)
{
    /// <summary>The material with its thickness, where that is part of its name; none where the kit names it.</summary>
    public SoldName? Sold { get; init; }

    /// <summary>What it is cut from, for whoever reads it.</summary>
    public string MaterialName => Sold?.Words ?? Material;

    /// <summary>Name under which the kit's stock has the material, where that is not the material as on the shopping list.</summary>
    public string? StockedAs { get; init; }
}
