using UnitsNet;

namespace StudioKit.Physics.Structure;

/// <summary>One check of the studio: what is asked of it, what it can bear, and where the rule comes from.</summary>
/// <param name="Kind">What it is about.</param>
/// <param name="Parts">Labels of the pipes and fittings that it is about; none where it is about the sheet or the studio as a whole.</param>
/// <param name="Demand">What is asked, in the unit to print it in.</param>
/// <param name="Capacity">What it can bear, in the same unit.</param>
/// <param name="Ratio">Use of the capacity [1]; it holds up to 1.</param>
/// <param name="Caveats">Where the theory is strained or a value is a guess; sheets must print them.</param>
/// <param name="SourceKey">Key in the bibliography.</param>
/// <param name="Locator">Where in the source.</param>
/// <param name="Remedy">What would make it hold; none where it does, or where no closed form says.</param>
public sealed record StructuralCheck(
    StructuralCheckKind Kind,
    IReadOnlyList<string> Parts,
    IQuantity Demand,
    IQuantity Capacity,
    double Ratio,
    IReadOnlyList<StructuralCaveat> Caveats,
    string SourceKey,
    string Locator,
    StructuralRemedy? Remedy = null)
{
    /// <summary>What it takes for given, in the order to say it.</summary>
    public IReadOnlyList<StructuralLoad> Loads { get; init; } = [];

    /// <summary>Whether the capacity covers the demand.</summary>
    public bool Holds => Ratio <= 1;
}
