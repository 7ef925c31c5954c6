using StudioKit.Physics.Structure.Frames;
using StudioKit.Sheets.Drawings;

namespace StudioKit.Sheets.Building.Solids;

/// <summary>A view at a scale: where points come to lie on paper and which of two is nearer.</summary>
internal sealed class Camera
{
    public Camera(FrameView view, double scale)
    {
        (View, Scale) = (view, scale);
        (Right, Back, Up) = (At(new FramePoint(1, 0, 0)), At(new FramePoint(0, 1, 0)), At(new FramePoint(0, 0, 1)));
        Towards = new FramePoint(Math.Sign(view.Nearness(new FramePoint(1, 0, 0))), Math.Sign(view.Nearness(new FramePoint(0, 1, 0))), Math.Sign(view.Nearness(new FramePoint(0, 0, 1))));

        // Any parallel projection square to its rays, at one scale, keeps the sum of the squared lengths of three unit axes: twice the squared scale.
        PerMetre = Math.Sqrt((Squared(Right) + Squared(Back) + Squared(Up)) / 2);
    }

    public FrameView View { get; }

    public double Scale { get; }

    /// <summary>Signs of the direction to the eye.</summary>
    public FramePoint Towards { get; }

    /// <summary>Length on paper of a metre that lies square to the rays [mm/m].</summary>
    public double PerMetre { get; }

    private Point Right { get; }

    private Point Back { get; }

    private Point Up { get; }

    public Point At(FramePoint point)
    {
        var place = View.Project(point);
        return new Point(place.X * Scale, place.Y * Scale);
    }

    private static double Squared(Point point) => (point.X * point.X) + (point.Y * point.Y);
}
