using UnitsNet;

namespace StudioKit.Physics.Light.Views;

/// <summary>A point of the frame that falls on the panel.</summary>
/// <param name="X">Where on the sheet, to the right of its middle [m].</param>
/// <param name="S">Where along the sheet from its front edge [m].</param>
/// <param name="FrameRight">Place in the frame from its middle, share of its width [1].</param>
/// <param name="FrameUp">The same upwards, share of its height [1].</param>
internal readonly record struct SeenPoint(double X, double S, double FrameRight, double FrameUp)
{
    public PanelPlace Place => new(Length.FromMeters(X), Length.FromMeters(S));
}
