namespace StudioKit.Physics.Light;

/// <summary>The panel's shape in SI numbers: places on it, the way it faces, and where a ray meets it.</summary>
internal sealed class PanelSurface
{
    private readonly double _radius;

    public PanelSurface(LightPanel panel)
    {
        Width = panel.Width.Meters;
        Depth = panel.Depth.Meters;
        Height = panel.Height.Meters;
        SweptLength = panel.IsSwept ? panel.SweptLength.Meters : 0;
        _radius = panel.IsSwept ? panel.SweepRadius!.Value.Meters : double.PositiveInfinity;
    }

    public double Width { get; }

    public double Depth { get; }

    public double Height { get; }

    public double SweptLength { get; }

    public double FrontY => -Depth / 2;

    public double SweepStartY => FrontY + Depth - SweptLength;

    private double SweepAngle => SweptLength > 0 ? SweptLength / _radius : 0;

    public double BackY => SweptLength > 0 ? SweepStartY + (_radius * Math.Sin(SweepAngle)) : FrontY + Depth;

    /// <summary>The point x to the right and a length s along the sheet from its front edge.</summary>
    public Position At(double x, double s)
    {
        var bent = s - (Depth - SweptLength);
        if (SweptLength <= 0 || bent <= 0)
        {
            return new Position(x, FrontY + s, Height);
        }

        var (sin, cos) = Math.SinCos(bent / _radius);
        return new Position(x, SweepStartY + (_radius * sin), Height + (_radius * (1 - cos)));
    }

    /// <summary>The way the top faces there.</summary>
    public Direction NormalAt(double s)
    {
        var bent = s - (Depth - SweptLength);
        return SweptLength <= 0 || bent <= 0
            ? Direction.Up
            : Direction.Of(0, -Math.Sin(bent / _radius), Math.Cos(bent / _radius));
    }

    /// <summary>Where a ray from above meets the sheet, as (x, s); false where it passes beside or over it.</summary>
    public bool TryMeet(Position from, Direction ray, out (double X, double S) place)
    {
        place = default;
        var met = TryMeetFlat(from, ray, out var distance, out var s) || TryMeetSweep(from, ray, out distance, out s);
        if (!met || s < 0 || s > Depth)
        {
            return false;
        }

        place = (from.X + (ray.X * distance), s);
        return Math.Abs(place.X) <= Width / 2;
    }

    private bool TryMeetFlat(Position from, Direction ray, out double distance, out double s)
    {
        distance = ray.Z < 0 ? (Height - from.Z) / ray.Z : -1;
        s = from.Y + (ray.Y * distance) - FrontY;
        return distance > 0 && s <= Depth - SweptLength;
    }

    // The far crossing of the ray with the circle about (sweep start, height + radius): the camera stands inside it.
    private bool TryMeetSweep(Position from, Direction ray, out double distance, out double s)
    {
        (distance, s) = (0, 0);
        var across = (ray.Y * ray.Y) + (ray.Z * ray.Z);
        if (SweptLength <= 0 || across <= 0)
        {
            return false;
        }

        var (y, z) = (from.Y - SweepStartY, from.Z - Height - _radius);
        var half = ((ray.Y * y) + (ray.Z * z)) / across;
        var discriminant = (half * half) - (((y * y) + (z * z) - (_radius * _radius)) / across);
        if (discriminant < 0)
        {
            return false;
        }

        distance = -half + Math.Sqrt(discriminant);
        var angle = Math.Atan2(y + (ray.Y * distance), -(z + (ray.Z * distance)));
        s = Depth - SweptLength + (angle * _radius);
        return distance > 0 && angle >= 0 && angle <= SweepAngle;
    }
}
