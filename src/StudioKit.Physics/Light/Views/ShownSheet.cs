namespace StudioKit.Physics.Light.Views;

/// <summary>What a view shows of a sheet: where its rays meet it, as far as another sheet that stands on it.</summary>
internal readonly struct ShownSheet
{
    private readonly PanelSurface _surface;
    private readonly ViewRays _rays;
    private readonly double _end;

    public ShownSheet(LightPanel panel, CameraView view)
    {
        (_surface, _rays) = (new PanelSurface(panel), new ViewRays(view, panel.Height.Meters));
        _end = view.EndsBehind is { } end ? view.SubjectBack.Meters + end.Meters : double.PositiveInfinity;
    }

    public Direction Through(double right, double up) => _rays.Through(right, up);

    /// <summary>Where the ray through a point of the frame meets the sheet, as (x, s); false where it meets another, or none.</summary>
    public bool TryMeet(double right, double up, out (double X, double S) place) =>
        _surface.TryMeet(_rays.Pupil, _rays.Through(right, up), out place) && place.S + _surface.FrontY <= _end;

    /// <summary>Whether a ray goes on over this sheet to another that stands on it.</summary>
    public bool IsOthers(double right, double up)
    {
        var ray = _rays.Through(right, up);
        var beyond = (_end - _rays.Pupil.Y) / ray.Y;
        return double.IsFinite(_end) && ray.Y > 0 && beyond > 0 && _rays.Pupil.Z + (ray.Z * beyond) >= _surface.Height;
    }
}
