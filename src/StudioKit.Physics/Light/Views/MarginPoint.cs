using StudioKit.Physics.Exposure;

namespace StudioKit.Physics.Light.Views;

/// <summary>One point of the visible panel with its white margin.</summary>
/// <param name="Place">Where it is on the sheet.</param>
/// <param name="FrameRight">Where it is in the frame, from −½ at the left edge to ½ [1].</param>
/// <param name="FrameUp">Where it is in the frame, from −½ at the bottom to ½ [1].</param>
/// <param name="Margin">Stops above clipping.</param>
public sealed record MarginPoint(PanelPlace Place, double FrameRight, double FrameUp, Stops Margin);
