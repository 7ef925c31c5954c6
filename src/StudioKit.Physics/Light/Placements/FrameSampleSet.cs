using StudioKit.Physics.Light.Solving;

namespace StudioKit.Physics.Light.Placements;

/// <summary>The points of all framings in one row: first the outlines of each, then all that is between.</summary>
internal sealed class FrameSampleSet
{
    private readonly FrameSamples[] _framings;
    private readonly (int Outline, int Others)[] _starts;

    public FrameSampleSet(PlacementCase search)
    {
        _framings = [.. search.Framings.Select(framing => new FrameSamples(search.Panel, framing))];
        _starts = new (int, int)[_framings.Length];
        var (outlines, others) = (0, _framings.Sum(framing => framing.Points(true).Count));
        for (var i = 0; i < _framings.Length; i++)
        {
            _starts[i] = (outlines, others);
            (outlines, others) = (outlines + _framings[i].Points(true).Count, others + _framings[i].Points(false).Count);
        }

        (OutlineCount, Count) = (outlines, others);
    }

    public IReadOnlyList<FrameSamples> Framings => _framings;

    /// <summary>Points of the outlines, which come first [1].</summary>
    public int OutlineCount { get; }

    public int Count { get; }

    public bool FillsFrames => _framings.All(framing => framing.FillsFrame);

    /// <summary>The middle of what all framings see, as (x, s).</summary>
    public (double X, double S) Middle
    {
        get
        {
            var (sums, count) = (_framings.Select(framing => framing.Sum).ToArray(), Math.Max(1, Count));
            return (sums.Sum(sum => sum.X) / count, sums.Sum(sum => sum.S) / count);
        }
    }

    /// <summary>The points of the underside, each with the way it faces.</summary>
    public IReadOnlyList<(Position Place, Direction Normal)> Underside(PanelSurface surface) =>
    [
        .. _framings.SelectMany(framing => framing.Points(true)).Concat(_framings.SelectMany(framing => framing.Points(false)))
            .Select(point => (surface.At(point.X, point.S), -surface.NormalAt(point.S))),
    ];

    /// <summary>Margins of the darkest and the brightest point of each framing [stops]: of those of its outline alone where the light goes no further.</summary>
    public (double Darkest, double Brightest)[] Margins(PointLight light, IReadOnlyList<Emitter> emitters, PanelSurface surface, PanelExit exit)
    {
        var isWhole = light.Interreflected.Length >= Count;
        return [.. _framings.Select((framing, i) =>
        {
            var seen = new SeenLight(light, emitters, surface, exit);
            var outline = seen.Extremes(framing.Points(true), _starts[i].Outline, (double.PositiveInfinity, 0));
            return framing.Margins(isWhole ? seen.Extremes(framing.Points(false), _starts[i].Others, outline) : outline);
        })];
    }

    private readonly record struct SeenLight(PointLight Light, IReadOnlyList<Emitter> Emitters, PanelSurface Surface, PanelExit Exit)
    {
        public (double Least, double Most) Extremes(IReadOnlyList<PanelSight> points, int first, (double Least, double Most) known)
        {
            var (least, most) = known;
            for (var i = 0; i < points.Count; i++)
            {
                var luminance = LuminanceTime(points[i], first + i);
                (least, most) = (Math.Min(least, luminance), Math.Max(most, luminance));
            }

            return (least, most);
        }

        private double LuminanceTime(PanelSight point, int index)
        {
            var (place, normal) = (Surface.At(point.X, point.S), Surface.NormalAt(point.S));
            var luminance = Exit.Even(Light.Interreflected[index]);
            for (var flash = 0; flash < Emitters.Count; flash++)
            {
                luminance += Exit.Straight(Light.Direct[flash][index], Emitters[flash].Centre, place, normal, point.Towards);
            }

            return luminance;
        }
    }
}
