using UnitsNet;

namespace StudioKit.Planning.Studio;

/// <summary>The studio in side view, as a section is drawn of it.</summary>
/// <param name="Panel">The panel's underside from its front edge back.</param>
/// <param name="Pipes">The frame's pipes; none where no frame could be planned.</param>
public sealed record StudioSection(IReadOnlyList<SidePoint> Panel, IReadOnlyList<SidePipe> Pipes)
{
    /// <summary>Panel's front edge to its hindmost point, on level ground.</summary>
    public Length Reach => Panel.Max(point => point.FromFront);
}
