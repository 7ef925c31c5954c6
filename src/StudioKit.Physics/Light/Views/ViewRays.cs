namespace StudioKit.Physics.Light.Views;

/// <summary>The bundle of rays from a camera's entrance pupil through its field, in SI numbers.</summary>
internal readonly struct ViewRays
{
    private readonly Direction _sight;
    private readonly Direction _right;
    private readonly Direction _up;
    private readonly double _distance;
    private readonly (double Width, double Height) _field;

    public ViewRays(CameraView view, double panelHeight)
    {
        var (sin, cos) = Math.SinCos(view.Pitch.Radians);
        _sight = Direction.Of(0, cos, -sin);
        _right = Direction.Right.TurnedAbout(_sight, view.Roll.Radians);
        _up = Direction.Of(0, sin, cos).TurnedAbout(_sight, view.Roll.Radians);
        _distance = view.PupilDistance.Meters;
        _field = (view.FieldWidth.Meters, view.FieldHeight.Meters);
        var aim = new Position(view.SubjectRight.Meters, view.SubjectBack.Meters, panelHeight + view.SubjectHeight.Meters);
        Pupil = aim.Along(_sight, -_distance);
    }

    public Position Pupil { get; }

    /// <summary>Whether a place lies before the pupil and within the frame, near or far.</summary>
    public bool Holds(Position place)
    {
        var depth = _sight.Dot(Pupil, place);
        return depth > 0
            && Math.Abs(_right.Dot(Pupil, place)) * _distance <= depth * _field.Width / 2
            && Math.Abs(_up.Dot(Pupil, place)) * _distance <= depth * _field.Height / 2;
    }

    /// <summary>The ray through a point of the frame, each share from −½ to ½.</summary>
    public Direction Through(double right, double up) => Direction.From(
        Pupil,
        Pupil.Along(_sight, _distance).Along(_right, right * _field.Width).Along(_up, up * _field.Height));

    /// <summary>Where the frame shows a point, each share from −½ to ½ within it; none where it lies behind the camera.</summary>
    public (double Right, double Up)? PlaceOf(Position point)
    {
        var ahead = _sight.Dot(Pupil, point);
        return ahead <= 0 ? null : (_right.Dot(Pupil, point) * _distance / ahead / _field.Width, _up.Dot(Pupil, point) * _distance / ahead / _field.Height);
    }
}
