using UnitsNet;

namespace StudioKit.Physics.Structure;

/// <summary>How a panel sags, between edges that lie free and edges held flat.</summary>
/// <param name="FreeEdges">Greatest sag with edges that lie free: the design value.</param>
/// <param name="HeldEdges">Sag at the centre with edges held flat: the least it can be; none on two edges, where nothing holds them flat.</param>
/// <param name="FreeEdgesAtLeastThickness">Sag with free edges where the sheet is as thin as the standard lets it be.</param>
/// <param name="Stress">Greatest bending stress with free edges.</param>
/// <param name="Caveats">Where the theory is strained.</param>
public sealed record PanelSagResult(
    Length FreeEdges,
    Length? HeldEdges,
    Length FreeEdgesAtLeastThickness,
    Pressure Stress,
    IReadOnlyList<StructuralCaveat> Caveats);
