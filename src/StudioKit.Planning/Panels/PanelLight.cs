using StudioKit.Kits;
using StudioKit.Kits.SetUps;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Light;
using StudioKit.Physics.Light.Checks;
using StudioKit.Physics.Light.Views;
using StudioKit.Physics.Structure.Frames;
using StudioKit.Planning.Exposures;
using StudioKit.Planning.Framing;
using UnitsNet;

namespace StudioKit.Planning.Panels;

/// <summary>Light on the panel for each white-background set-up, worked out once and looked at by every framing.</summary>
internal sealed class PanelLight
{
    private static readonly PanelGrid Grid = new(24, 24);

    private readonly KitSpec _kit;
    private readonly PanelPlan _panel;
    private readonly Dictionary<string, (LightScene Scene, IReadOnlyList<string> Problems)> _scenes;
    private readonly Dictionary<string, LightMap?> _maps = new(StringComparer.Ordinal);

    public PanelLight(KitSpec kit, PanelPlan panel, FrameResult? frame, IReadOnlyList<PlannedFraming> framings)
    {
        (_kit, _panel) = (kit, panel);
        var sights = PanelSight.All(kit, framings).ToLookup(sight => sight.SetUp);
        _scenes = kit.SetUps
            .Where(setUp => setUp.Kind == SetUpKind.WhiteBackground)
            .ToDictionary(setUp => setUp.Name, setUp => Checked(PanelScene.Of(kit, panel, frame, setUp), [.. sights[setUp]]), StringComparer.Ordinal);
    }

    /// <summary>What is impossible about the studio's geometry, a sentence each; such a set-up is planned without a light map.</summary>
    public IReadOnlyList<string> Problems => [.. _scenes.SelectMany(scene => scene.Value.Problems.Select(problem => $"{scene.Key}: {problem}"))];

    /// <summary>What is impossible about one set-up.</summary>
    public IReadOnlyList<string> ProblemsOf(SetUpSpec setUp) => _scenes[setUp.Name].Problems;

    /// <summary>Panel, flashes, frame and ground of a set-up.</summary>
    public LightScene SceneOf(SetUpSpec setUp) => _scenes[setUp.Name].Scene;

    /// <summary>The light map of a set-up at full power; none where its flashes stand where they cannot.</summary>
    public LightMap? MapOf(SetUpSpec setUp)
    {
        if (!_maps.TryGetValue(setUp.Name, out var map))
        {
            var scene = SceneOf(setUp);
            map = SceneCheck.Problems(scene).Count > 0 ? null : LightSolver.Solve(scene, Grid);
            _maps.Add(setUp.Name, map);
        }

        return map;
    }

    /// <summary>
    /// Darkest and brightest visible point over all camera angles of a framing; none where the geometry is impossible or none sees the panel.
    /// </summary>
    public PanelExtremes? Extremes(SetUpAtFraming at)
    {
        var straightAbove = WhiteMargin.Level(SetUpCases.StraightAbove(at));
        var camera = LightingCases.Camera(_kit, at.SetUp, at.Framing, at.Aperture);
        var seen = Seen(at.SetUp, at.Framing, camera).Select(view => view.Margins).Where(margins => margins.Darkest is not null).ToList();
        return seen.Count == 0
            ? null
            : new PanelExtremes(
                new Stops(seen.Min(margins => margins.Darkest!.Margin.Value) - straightAbove.Value),
                new Stops(seen.Max(margins => margins.Brightest!.Margin.Value) - straightAbove.Value));
    }

    /// <summary>Margins over the frame of one framing at each possible camera angle, flashes below at full power.</summary>
    public IEnumerable<(PanelSight Sight, WhiteMarginMap Margins)> Seen(SetUpSpec setUp, PlannedFraming framing, CameraCase camera)
    {
        if (MapOf(setUp) is not { } map)
        {
            return [];
        }

        return PanelSight.Of(_kit, setUp, framing)
            .Where(sight => SceneCheck.ViewProblems(map.Panel, ViewOf(sight)).Count == 0)
            .Select(sight => (sight, WhiteMarginMap.Of(map, ViewOf(sight), camera)));
    }

    /// <summary>The camera's view over the panel.</summary>
    public CameraView ViewOf(PanelSight sight) => sight.ViewAt(SubjectBack(_panel));

    private static Length SubjectBack(PanelPlan panel) => panel.SubjectFromFront - (panel.Depth / 2);

    private (LightScene Scene, IReadOnlyList<string> Problems) Checked(LightScene scene, IReadOnlyList<PanelSight> sights) =>
        (scene, [.. SceneCheck.Problems(scene, [.. sights.Select(ViewOf)]).Select(problem => problem.Sentence).Distinct(StringComparer.Ordinal)]);
}
