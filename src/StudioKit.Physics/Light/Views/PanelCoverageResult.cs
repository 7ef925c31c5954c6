using UnitsNet;

namespace StudioKit.Physics.Light.Views;

/// <summary>The smallest panel that fills every frame.</summary>
/// <param name="Width">Side across the view.</param>
/// <param name="Depth">Side along the view, along the sheet where it is swept.</param>
/// <param name="SubjectFromLeft">Where the subject's foot stands, from the left edge as the camera sees it.</param>
/// <param name="SubjectFromFront">Where the subject's foot stands, from the front edge.</param>
/// <param name="SweepRadius">Radius of the arc at the back; none where a flat panel will do.</param>
/// <param name="SweptLength">Length of the arc along the sheet; zero for a flat panel.</param>
/// <param name="Caveats">What the designer should know, in sentences; empty where nothing is out of the ordinary.</param>
public sealed record PanelCoverageResult(
    Length Width,
    Length Depth,
    Length SubjectFromLeft,
    Length SubjectFromFront,
    Length? SweepRadius,
    Length SweptLength,
    IReadOnlyList<string> Caveats)
{
    /// <summary>Whether low camera angles ask for a panel swept up at the back.</summary>
    public bool NeedsSweep => SweepRadius is not null;
}
