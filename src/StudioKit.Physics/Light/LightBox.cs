using StudioKit.Physics.Light.Checks;
using StudioKit.Physics.Light.Obstacles;
using StudioKit.Physics.Light.Solving;
using StudioKit.Physics.Sources;

namespace StudioKit.Physics.Light;

/// <summary>A panel and its surround made ready: all that does not depend on the flashes is worked out once and kept.</summary>
/// <remarks>
/// Kept are, each by itself: the form factors of the bare box, which follow from panel, ground, skirts and points, and what each frame
/// member blocks of them. A flash then adds what its body blocks and the light it throws from its place; its power only scales.
/// Floor, skirts and panel are cut into a fixed number of diffuse patches, so the cost grows in step with the panel points.
/// A box never changes and serves any number of threads.
/// </remarks>
public sealed class LightBox
{
    private readonly ReceiverSet _points;
    private readonly BareBox? _bare;
    private readonly Dictionary<Obstacle, ShadowSet> _shadows = [];
    private readonly FormFactors? _factors;
    private readonly Lazy<SettledBox?> _settled;

    private LightBox(LightPanel panel, LightSurround surround, ReceiverSet points, BareBox? bare, Dictionary<Obstacle, ShadowSet> known)
    {
        (Panel, Surround, _points, _bare) = (panel, surround, points, bare);
        _settled = new(() => _factors is null ? null : new SettledBox(_bare!.Mesh, _factors));
        if (bare is not null)
        {
            _shadows = Shadows(bare.Rays, surround.Frame, known);
            _factors = bare.Factors.Without(_shadows.Values);
        }
    }

    /// <summary>The sheet.</summary>
    public LightPanel Panel { get; }

    /// <summary>Ground, skirts and frame.</summary>
    public LightSurround Surround { get; }

    // None where points were given one by one.
    private PanelGrid? Grid { get; init; }

    /// <summary>Makes a panel and its surround ready.</summary>
    /// <param name="panel">The sheet.</param>
    /// <param name="surround">Ground, skirts and frame.</param>
    /// <param name="grid">Points of the panel to work out.</param>
    /// <exception cref="ArgumentException">The geometry is impossible; <see cref="SceneCheck"/> says beforehand how.</exception>
    [Source("Goral1984", "radiosity between diffuse patches")]
    [Source("Howell", "configurations C-13, C-15, B-3 and B-4")]
    public static LightBox Prepare(LightPanel panel, LightSurround surround, PanelGrid grid)
    {
        ArgumentNullException.ThrowIfNull(grid);
        SceneCheck.Refuse(SceneCheck.Problems(panel, surround));
        var points = GridPoints(panel, grid);
        return new LightBox(panel, surround, points, Bare(panel, surround, points), []) { Grid = grid };
    }

    /// <summary>A box ready for any points of the underside, each with the way it faces.</summary>
    internal static LightBox At(LightPanel panel, LightSurround surround, IReadOnlyList<(Position Place, Direction Normal)> places)
    {
        var points = new ReceiverSet(places);
        return new LightBox(panel, surround, points, Bare(panel, surround, points), []);
    }

    /// <summary>The same box with another frame: only what members that were not there before block is worked out.</summary>
    /// <param name="frame">Frame members and other fixed black bodies.</param>
    /// <returns>A box equal in every bit to one prepared afresh.</returns>
    public LightBox WithFrame(IReadOnlyList<Obstacle> frame)
    {
        ArgumentNullException.ThrowIfNull(frame);
        var surround = Surround with { Frame = [.. frame] };

        return PatchMesh.HasPipes(surround) == PatchMesh.HasPipes(Surround)
            ? new LightBox(Panel, surround, _points, _bare, _shadows) { Grid = Grid }
            : new LightBox(Panel, surround, _points, Bare(Panel, surround, _points), []) { Grid = Grid };
    }

    /// <summary>Lights the panel with flashes; their bodies shade straight and interreflected light alike.</summary>
    /// <param name="emitters">The flashes at work.</param>
    /// <returns>Luminous exposure over the panel [lx·s].</returns>
    /// <exception cref="ArgumentException">A flash stands where it cannot; <see cref="SceneCheck"/> says beforehand how.</exception>
    [Source("Goral1984", "direct light, interreflection, final gather")]
    public LightMap Illuminate(IReadOnlyList<Emitter> emitters)
    {
        SceneCheck.Refuse(SceneCheck.Problems(Panel, Surround, emitters));
        return new LightMap(Panel, Points, emitters, Flashes(emitters, Shaded(emitters)));
    }

    /// <summary>Light that follows flashes while they are moved away from where they stand.</summary>
    /// <param name="exact">What <see cref="Illuminate"/> gave for them where they stand.</param>
    /// <exception cref="ArgumentException">The light is another sheet's.</exception>
    public LightPreview Follow(LightMap exact)
    {
        ArgumentNullException.ThrowIfNull(exact);
        return exact.Panel == Panel && exact.Grid == Points ? new LightPreview(this, exact) : throw new ArgumentException("The light is another sheet's.", nameof(exact));
    }

    /// <summary>A flash without a body as one of many that are tried in this box.</summary>
    internal FlashInBox Try(Emitter emitter) =>
        new(new DirectLight(emitter, Surround.Frame, NearestSurface(emitter)), _points, _settled.Value, Samples);

    internal Interreflection? Reflections => _factors is null ? null : new Interreflection(_bare!.Mesh, _factors);

    internal PatchMesh? Mesh => _bare?.Mesh;

    internal PatchSamples? Samples => _bare?.Samples;

    internal ReceiverSet Receivers => _points;

    internal PanelGrid Points => Grid ?? throw new InvalidOperationException("This box has no grid.");

    private FormFactors? Shaded(IReadOnlyList<Emitter> emitters) =>
        _factors?.Without([.. emitters.Select(emitter => emitter.Body).OfType<Obstacle>().Select(_bare!.Rays.Of)]);

    private UnitLight[] Flashes(IReadOnlyList<Emitter> emitters, FormFactors? factors)
    {
        Obstacle[] obstacles = [.. Surround.Frame, .. emitters.Select(emitter => emitter.Body).OfType<Obstacle>()];
        var reflections = factors is null ? null : new Interreflection(_bare!.Mesh, factors);
        return [.. emitters.Select(emitter => Flash(emitter, new DirectLight(emitter, obstacles, NearestSurface(emitter)), reflections))];
    }

    private UnitLight Flash(Emitter emitter, DirectLight flash, Interreflection? reflections)
    {
        var direct = new double[_points.PaddedCount];
        flash.AddTo(_points, direct);
        if (reflections is null)
        {
            return new UnitLight(direct, new double[_points.PaddedCount], null);
        }

        var exposure = _bare!.Samples.Exposures(flash);
        var interreflected = reflections.Settle(exposure);
        return new UnitLight(direct, interreflected, reflections.Balance(emitter.Lobe.FluxOverAxialIntensity, exposure));
    }

    internal double NearestSurface(Emitter emitter)
    {
        var up = Math.Min(Panel.Height.Meters - emitter.Centre.Z, Surround.Ground is { } ground && _bare is not null ? GroundPlane.Over(Panel, ground, emitter.Centre) : double.PositiveInfinity);
        if (_bare is not { Mesh.HasSkirts: true })
        {
            return up;
        }

        var (aside, surface) = ((Panel.Width.Meters / 2) - Math.Abs(emitter.Centre.X), new PanelSurface(Panel));
        var back = Math.Min(emitter.Centre.Y - surface.FrontY, surface.BackY - emitter.Centre.Y);
        return Math.Min(up, Math.Min(aside, back));
    }

    private static Dictionary<Obstacle, ShadowSet> Shadows(ShadowRays rays, IReadOnlyList<Obstacle> frame, Dictionary<Obstacle, ShadowSet> known)
    {
        Obstacle[] members = [.. frame.Distinct()];
        var sets = new ShadowSet[members.Length];
        ParallelWork.For(members.Length, i => sets[i] = known.TryGetValue(members[i], out var set) ? set : rays.Of(members[i]));
        return members.Zip(sets).ToDictionary(pair => pair.First, pair => pair.Second);
    }

    // Without anything that sends light back to the panel there is nothing to keep.
    private static BareBox? Bare(LightPanel panel, LightSurround surround, ReceiverSet points) =>
        surround.SkirtReflectance is > 0 || surround.FloorReflectance > 0 || surround.Ground is { Reflectance: > 0 } ? new BareBox(panel, surround, points) : null;

    internal static ReceiverSet GridPoints(LightPanel panel, PanelGrid grid)
    {
        var surface = new PanelSurface(panel);
        return new ReceiverSet([.. from row in Enumerable.Range(0, grid.Rows)
                                   from column in Enumerable.Range(0, grid.Columns)
                                   let s = (row + 0.5) / grid.Rows * surface.Depth
                                   let x = (((column + 0.5) / grid.Columns) - 0.5) * surface.Width
                                   select (surface.At(x, s), -surface.NormalAt(s))]);
    }
}
