using StudioKit.Physics.Packing;

namespace StudioKit.Planning.Packing;

/// <summary>A thing that goes in no bag that it may go in, nor can be strapped outside.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Size">Its size; none where the kit gives none.</param>
public sealed record Misfit(string Name, BoxSize? Size)
{
    /// <summary>Its name with its sizes, where it has sizes in it.</summary>
    public SoldName? Sold { get; init; }

    /// <summary>Its name for whoever reads of it.</summary>
    public string Words => Sold?.Words ?? Name;
}
