using StudioKit.Physics.Light.Checks;
using StudioKit.Physics.Light.Obstacles;
using StudioKit.Physics.Light.Solving;
using StudioKit.Physics.Sources;

namespace StudioKit.Physics.Light;

/// <summary>A panel and its surround made ready: all that does not depend on where the flashes stand is worked out once.</summary>
/// <remarks>
/// Floor, skirts and panel are cut into a fixed number of diffuse patches, so the cost grows in step with the panel points.
/// Light between patches follows closed forms where all surfaces are flat, Lambert's polygon sum under a swept panel.
/// </remarks>
public sealed class LightBox
{
    private const int PatchesPerSide = 8;
    private const int SubPointsPerPatch = 9;
    private static readonly double[] GaussNodes = [0.1127016653792583, 0.5, 0.8872983346207417];
    private static readonly double[] GaussWeights = [5.0 / 18, 8.0 / 18, 5.0 / 18];

    private readonly LightPanel _panel;
    private readonly LightSurround _surround;
    private readonly ReceiverSet _points;
    private readonly PatchMesh? _mesh;
    private readonly ReceiverSet? _patchPoints;
    private readonly double[] _areas = [];
    private readonly double[] _gather = [];
    private readonly int _gatherStride;
    private readonly Radiosity? _radiosity;

    private LightBox(LightPanel panel, LightSurround surround, ReceiverSet points, IReadOnlyList<Obstacle> shadows)
    {
        (_panel, _surround, _points) = (panel, surround, points);
        if (!Reflects(surround))
        {
            return;
        }

        _mesh = new PatchMesh(panel, surround, PatchesPerSide);
        _patchPoints = new ReceiverSet([.. _mesh.Patches.SelectMany(SubPoints)]);
        _areas = [.. _mesh.Patches.Select(patch => patch.Area)];
        _gatherStride = VectorMath.Padded(_mesh.SenderCount);
        _radiosity = new Radiosity(FormFactors.Between(_mesh, panel, shadows), [.. _mesh.Patches.Select(patch => patch.Reflectance)]);
        _gather = FormFactors.FromPoints(_mesh, panel, _points, shadows);
    }

    /// <summary>Makes a panel and its surround ready.</summary>
    /// <param name="panel">The sheet.</param>
    /// <param name="surround">Ground, skirts and frame.</param>
    /// <param name="grid">Points of the panel to work out.</param>
    /// <exception cref="ArgumentException">The geometry is impossible; <see cref="SceneCheck"/> says beforehand how.</exception>
    [Source("Goral1984", "radiosity between diffuse patches")]
    public static LightBox Prepare(LightPanel panel, LightSurround surround, PanelGrid grid)
    {
        ArgumentNullException.ThrowIfNull(grid);
        SceneCheck.Refuse(SceneCheck.Problems(panel, surround));
        return Prepare(panel, surround, grid, surround.Frame);
    }

    internal static LightBox Prepare(LightPanel panel, LightSurround surround, PanelGrid grid, IReadOnlyList<Obstacle> shadows) =>
        new(panel, surround, GridPoints(panel, grid), shadows) { Grid = grid };

    /// <summary>A box ready for any points of the underside, each with the way it faces.</summary>
    internal static LightBox At(LightPanel panel, LightSurround surround, IReadOnlyList<(Position Place, Direction Normal)> points) =>
        new(panel, surround, new ReceiverSet(points), surround.Frame);

    /// <summary>Points that it works out; none where they were given one by one.</summary>
    private PanelGrid? Grid { get; init; }

    /// <summary>Lights the panel with flashes.</summary>
    /// <param name="emitters">The flashes at work.</param>
    /// <returns>Luminous exposure over the panel [lx·s].</returns>
    /// <exception cref="ArgumentException">A flash stands where it cannot; <see cref="SceneCheck"/> says beforehand how.</exception>
    [Source("Goral1984", "direct light, interreflection, final gather")]
    public LightMap Illuminate(IReadOnlyList<Emitter> emitters)
    {
        SceneCheck.Refuse(SceneCheck.Problems(_panel, _surround, emitters));
        return Light(emitters);
    }

    internal LightMap Light(IReadOnlyList<Emitter> emitters) =>
        new(_panel, Grid ?? throw new InvalidOperationException("This box has no grid."), emitters, Shine(emitters));

    internal PointLight Shine(IReadOnlyList<Emitter> emitters)
    {
        Obstacle[] obstacles = [.. _surround.Frame, .. emitters.Select(emitter => emitter.Body).OfType<Obstacle>()];
        var flashes = emitters.Select(emitter => new DirectLight(emitter, obstacles, NearestSurface(emitter))).ToArray();
        var direct = flashes.Select(flash => Lit(flash, _points)).ToArray();
        var interreflected = new double[_points.PaddedCount];
        var balance = _mesh is null ? null : Interreflect(emitters, flashes, interreflected);
        return new PointLight(direct, interreflected, balance);
    }

    /// <summary>Full exposure of every patch and every point from given direct exposures of the patches [lx·s].</summary>
    internal double[] Settle(double[] patchExposure, Span<double> pointExposure)
    {
        var exitance = new double[_radiosity!.Stride];
        _radiosity.Settle(patchExposure, exitance);
        ReadOnlySpan<double> sent = exitance;
        var senders = new double[_gatherStride];
        sent[.._mesh!.SenderCount].CopyTo(senders);
        for (var i = 0; i < _points.Count; i++)
        {
            pointExposure[i] = VectorMath.Dot(_gather.AsSpan(i * _gatherStride, _gatherStride), senders);
        }

        return patchExposure;
    }

    internal PatchMesh? Mesh => _mesh;

    private LightBalance Interreflect(IReadOnlyList<Emitter> emitters, DirectLight[] flashes, double[] interreflected)
    {
        var arriving = new double[_patchPoints!.PaddedCount];
        foreach (var flash in flashes)
        {
            flash.AddTo(_patchPoints, arriving);
        }

        var exposure = new double[_areas.Length];
        for (var i = 0; i < exposure.Length; i++)
        {
            exposure[i] = Mean(arriving.AsSpan(i * SubPointsPerPatch, SubPointsPerPatch));
        }

        return Balance(emitters, Settle(exposure, interreflected));
    }

    private LightBalance Balance(IReadOnlyList<Emitter> emitters, double[] exposure)
    {
        double Absorbed(BoxFace first, BoxFace last) => Enumerable
            .Range(_mesh!.Start(first), _mesh.End(last) - _mesh.Start(first))
            .Sum(i => exposure[i] * _areas[i] * (1 - _mesh.Patches[i].Reflectance));

        return new LightBalance(
            emitters.Sum(emitter => emitter.FluxTime),
            Absorbed(BoxFace.Panel, BoxFace.Panel),
            Absorbed(BoxFace.Left, BoxFace.Back),
            Absorbed(BoxFace.Floor, BoxFace.Floor));
    }

    // Whether anything can send light back to the panel.
    private static bool Reflects(LightSurround surround) => surround.SkirtReflectance is > 0 || surround.FloorReflectance > 0;

    private static double[] Lit(DirectLight flash, ReceiverSet points)
    {
        var exposure = new double[points.PaddedCount];
        flash.AddTo(points, exposure);
        return exposure;
    }

    private double NearestSurface(Emitter emitter)
    {
        var up = _panel.Height.Meters - emitter.Centre.Z;
        if (_mesh is not { HasSkirts: true })
        {
            return up;
        }

        var aside = (_panel.Width.Meters / 2) - Math.Abs(emitter.Centre.X);
        var back = Math.Min(emitter.Centre.Y - new PanelSurface(_panel).FrontY, new PanelSurface(_panel).BackY - emitter.Centre.Y);
        return Math.Min(up, Math.Min(aside, back));
    }

    private static ReceiverSet GridPoints(LightPanel panel, PanelGrid grid)
    {
        var surface = new PanelSurface(panel);
        return new ReceiverSet([.. from row in Enumerable.Range(0, grid.Rows)
                                   from column in Enumerable.Range(0, grid.Columns)
                                   let s = (row + 0.5) / grid.Rows * surface.Depth
                                   let x = (((column + 0.5) / grid.Columns) - 0.5) * surface.Width
                                   select (surface.At(x, s), -surface.NormalAt(s))]);
    }

    private static IEnumerable<(Position Place, Direction Normal)> SubPoints(Patch patch)
    {
        var normal = patch.Normal;
        return from t in GaussNodes from s in GaussNodes select (patch.At(s, t), normal);
    }

    private static double Mean(ReadOnlySpan<double> subPoints)
    {
        var sum = 0.0;
        for (var i = 0; i < SubPointsPerPatch; i++)
        {
            sum += GaussWeights[i / GaussWeights.Length] * GaussWeights[i % GaussWeights.Length] * subPoints[i];
        }

        return sum;
    }
}
