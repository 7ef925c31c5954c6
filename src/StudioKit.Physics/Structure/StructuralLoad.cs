using UnitsNet;

namespace StudioKit.Physics.Structure;

/// <summary>A load or a circumstance that a structural check takes for given.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Value">How much of it.</param>
public sealed record StructuralLoad(StructuralLoadKind Kind, IQuantity Value);
