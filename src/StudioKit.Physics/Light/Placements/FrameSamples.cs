using StudioKit.Physics.Light.Solving;
using StudioKit.Physics.Light.Views;

namespace StudioKit.Physics.Light.Placements;

/// <summary>The points of the panel that one framing looks at, as (x, s) on the sheet: they do not change with its height.</summary>
internal sealed class FrameSamples
{
    private const int Across = 13;
    private const int Upright = 9;

    private readonly List<(double X, double S, Direction Towards)> _points = [];
    private readonly double _perLuminanceTime;
    private readonly int _others;

    public FrameSamples(LightPanel panel, PlacementFraming framing)
    {
        Framing = framing;
        _perLuminanceTime = WhiteMarginMap.PerLuminanceTime(framing.Camera);
        var shown = new ShownSheet(panel, framing.View);
        for (var i = 0; i < Across * Upright; i++)
        {
            var (row, column) = Math.DivRem(i, Across);
            var (right, up) = (((double)column / (Across - 1)) - 0.5, ((double)row / (Upright - 1)) - 0.5);
            if (shown.TryMeet(right, up, out var place))
            {
                _points.Add((place.X, place.S, -shown.Through(right, up)));
            }
            else if (shown.IsOthers(right, up))
            {
                _others++;
            }
        }
    }

    public PlacementFraming Framing { get; }

    public int Count => _points.Count;

    public bool FillsFrame => Count + _others == Across * Upright;

    /// <summary>Sums of the places, for the middle of what all framings see.</summary>
    public (double X, double S) Sum => (_points.Sum(point => point.X), _points.Sum(point => point.S));

    /// <summary>The points of the underside, each with the way it faces.</summary>
    public IEnumerable<(Position Place, Direction Normal)> Underside(PanelSurface surface) =>
        _points.Select(point => (surface.At(point.X, point.S), -surface.NormalAt(point.S)));

    /// <summary>Margins of the darkest and the brightest point [stops], from light whose points of this framing begin at an index.</summary>
    public (double Darkest, double Brightest) Margins(
        PointLight light, int first, IReadOnlyList<Emitter> emitters, PanelSurface surface, PanelExit exit)
    {
        var (least, most) = (double.PositiveInfinity, 0.0);
        for (var i = 0; i < Count; i++)
        {
            var (x, s, towards) = _points[i];
            var luminance = exit.Even(light.Interreflected[first + i]);
            for (var flash = 0; flash < emitters.Count; flash++)
            {
                luminance += exit.Straight(
                    light.Direct[flash][first + i], emitters[flash].Centre, surface.At(x, s), surface.NormalAt(s), towards);
            }

            least = Math.Min(least, luminance);
            most = Math.Max(most, luminance);
        }

        return (WhiteMarginMap.MarginOf(least * _perLuminanceTime), WhiteMarginMap.MarginOf(most * _perLuminanceTime));
    }
}
