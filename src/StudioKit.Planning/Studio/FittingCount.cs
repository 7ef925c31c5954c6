using StudioKit.Physics.Structure.Frames;
using UnitsNet;

namespace StudioKit.Planning.Studio;

/// <summary>Fittings of one kind.</summary>
/// <param name="Kind">Which fitting.</param>
/// <param name="Name">As on the shopping list.</param>
/// <param name="Count">How many [1].</param>
/// <param name="TakeOff">Centre to the bottom of its socket.</param>
/// <param name="MassEach">Mass of one.</param>
/// <param name="PriceEach">Price of one [1]; none where the kit gives none.</param>
public sealed record FittingCount(FittingKind Kind, string Name, int Count, Length TakeOff, Mass MassEach, decimal? PriceEach)
{
    /// <summary>Centre to the end of a pipe that is pushed home: the take-off and the gap that a dry push leaves.</summary>
    public required Length ToPipeEnd { get; init; }

    /// <summary>Centre to the fitting's edge, where the insertion mark of a pipe that is pushed home lies.</summary>
    public required Length ToMark { get; init; }
}
