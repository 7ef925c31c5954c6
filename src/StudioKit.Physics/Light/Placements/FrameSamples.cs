using StudioKit.Physics.Light.Views;

namespace StudioKit.Physics.Light.Placements;

/// <summary>The points of the panel that one framing looks at, as (x, s) on the sheet: they do not change with its height.</summary>
internal sealed class FrameSamples
{
    private const int Across = 13;
    private const int Upright = 9;

    // Every third point across and every fourth up: corners, edges and middle, a seventh of all.
    private const int OutlineAcross = 3;
    private const int OutlineUpright = 4;

    private readonly List<PanelSight> _outline = [];
    private readonly List<PanelSight> _others = [];
    private readonly double _perLuminanceTime;
    private readonly int _elsewhere;

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
                var isOutline = column % OutlineAcross == 0 && row % OutlineUpright == 0;
                (isOutline ? _outline : _others).Add(new PanelSight(place.X, place.S, -shown.Through(right, up)));
            }
            else if (shown.IsOthers(right, up))
            {
                _elsewhere++;
            }
        }
    }

    public PlacementFraming Framing { get; }

    public int Count => _outline.Count + _others.Count;

    public bool FillsFrame => Count + _elsewhere == Across * Upright;

    /// <summary>Sums of the places, for the middle of what all framings see.</summary>
    public (double X, double S) Sum => (_outline.Concat(_others).Sum(point => point.X), _outline.Concat(_others).Sum(point => point.S));

    /// <summary>Corners, edges and middle of the frame, or all that is between them.</summary>
    public IReadOnlyList<PanelSight> Points(bool isOutline) => isOutline ? _outline : _others;

    /// <summary>Margins of the darkest and the brightest luminance·time [stops].</summary>
    public (double Darkest, double Brightest) Margins((double Least, double Most) luminanceTimes) =>
        (WhiteMarginMap.MarginOf(luminanceTimes.Least * _perLuminanceTime), WhiteMarginMap.MarginOf(luminanceTimes.Most * _perLuminanceTime));
}
