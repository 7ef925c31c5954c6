namespace StudioKit.Physics.Light.Views;

/// <summary>A point of the frame that falls on the panel.</summary>
/// <param name="Place">Where on the sheet.</param>
/// <param name="FrameRight">Place in the frame from its middle, share of its width [1].</param>
/// <param name="FrameUp">The same upwards, share of its height [1].</param>
/// <param name="UnitLuminanceTimes">Luminance times time towards the camera, for each flash at an axial intensity·time of 1 cd·s [cd·s/m²].</param>
internal sealed record SeenPoint(PanelPlace Place, double FrameRight, double FrameUp, double[] UnitLuminanceTimes);
