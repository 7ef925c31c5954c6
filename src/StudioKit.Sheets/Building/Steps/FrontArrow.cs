using StudioKit.Physics.Structure.Frames;
using StudioKit.Sheets.Building.Solids;
using StudioKit.Sheets.Drawings;

namespace StudioKit.Sheets.Building.Steps;

/// <summary>Says where front is: the side of the camera.</summary>
internal static class FrontArrow
{
    public static IEnumerable<Primitive> At(Point place, Camera camera)
    {
        var (at, ahead) = (camera.At(default), camera.At(new FramePoint(0, -1, 0)));
        var length = at.DistanceTo(ahead);
        var (dx, dy) = ((ahead.X - at.X) / length, (ahead.Y - at.Y) / length);
        return [.. StepDrawing.ArrowTo(place.Plus(0, 3), dx, dy), new Label(place.Plus(7, 4), "front", 8)];
    }
}
