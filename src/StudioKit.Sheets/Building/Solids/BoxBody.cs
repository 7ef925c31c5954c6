using StudioKit.Physics.Structure.Frames;
using StudioKit.Sheets.Drawings;

namespace StudioKit.Sheets.Building.Solids;

/// <summary>A box that stands square in the frame.</summary>
/// <param name="Low">Its left, front, lower corner [m].</param>
/// <param name="High">Its right, back, upper corner [m].</param>
internal sealed record BoxBody(FramePoint Low, FramePoint High)
{
    public static BoxBody About(FramePoint middle, double right, double back, double up) =>
        new(middle - (0.5 * new FramePoint(right, back, up)), middle + (0.5 * new FramePoint(right, back, up)));

    /// <summary>Its faces as they are seen, the upper one filled as is asked.</summary>
    public Solid In(Camera camera, Ink ink, Fill? top = null)
    {
        List<Primitive> faces = [];
        if (camera.Towards.Right > 0)
        {
            faces.Add(Face(camera, ink, point => new FramePoint(High.Right, point.Right, point.Back), Low.Back, High.Back, Low.Up, High.Up, ink.Face));
        }

        if (camera.Towards.Back < 0)
        {
            faces.Add(Face(camera, ink, point => new FramePoint(point.Right, Low.Back, point.Back), Low.Right, High.Right, Low.Up, High.Up, ink.Face));
        }

        if (camera.Towards.Up > 0)
        {
            faces.Add(Face(camera, ink, point => new FramePoint(point.Right, point.Back, High.Up), Low.Right, High.Right, Low.Back, High.Back, top ?? ink.Face));
        }

        return new Solid(Low, High, faces);
    }

    private static Polygon Face(Camera camera, Ink ink, Func<FramePoint, FramePoint> place, double fromA, double toA, double fromB, double toB, Fill fill) => new(
        [.. new[] { (fromA, fromB), (toA, fromB), (toA, toB), (fromA, toB) }.Select(corner => camera.At(place(new FramePoint(corner.Item1, corner.Item2, 0))))], ink.Edge, fill);
}
