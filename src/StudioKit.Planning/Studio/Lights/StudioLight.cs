using StudioKit.Kits;
using StudioKit.Kits.SetUps;
using StudioKit.Kits.Subjects;
using StudioKit.Physics;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Light;
using StudioKit.Physics.Light.Checks;
using StudioKit.Physics.Light.Covers;
using StudioKit.Physics.Light.Views;
using StudioKit.Physics.Structure.Frames;
using StudioKit.Planning.Framing;
using StudioKit.Planning.Studio.Panels;
using StudioKit.Planning.Studio.Uprights;
using UnitsNet;

namespace StudioKit.Planning.Studio.Lights;

/// <summary>The studio's light: panel, frame and surround as planned, lit by whatever flashes a set-up puts below.</summary>
/// <remarks>The one place where a light scene is made. What was lit is kept by the value of its scene, for every set-up and for whoever asks later.</remarks>
public sealed class StudioLight
{
    private readonly KitSpec _kit;
    private readonly PanelPlan _panel;
    private readonly FrameResult? _frame;
    private readonly ValueList<UprightPlan> _uprights;
    private readonly LightStore _store;
    private readonly Lazy<LightScene> _unlit;

    internal StudioLight(KitSpec kit, PanelPlan panel, FrameResult? frame, ValueList<UprightPlan> uprights, LightStore store)
    {
        (_kit, _panel, _frame, _uprights, _store) = (kit, panel, frame, uprights, store);
        _unlit = new(() => PanelScene.Unlit(kit, panel, frame));
    }

    /// <summary>The panel lit by a set-up's flashes where they stand.</summary>
    internal LitPanel Of(SetUpSpec setUp) => _store.Lit(_unlit.Value with { Emitters = PanelScene.Flashes(_kit, _panel, _frame, setUp) });

    /// <summary>Sheet and pipes, unlit.</summary>
    internal LightScene Unlit => _unlit.Value;

    /// <summary>Subject's foot beyond half the sheet's length.</summary>
    internal Length SubjectBeyondMiddle => SubjectBack;

    /// <summary>What is impossible about a set-up's geometry; such a set-up is planned without a light map.</summary>
    internal IReadOnlyList<LightProblem> ProblemsOf(SetUpSpec setUp, IReadOnlyList<PlannedFraming> framings)
    {
        var views = PanelSight.Of(_kit.Subjects, setUp, framings).Select(ViewOf).ToList();
        return [.. SceneCheck.Problems(Of(setUp).Scene, views).Distinct()];
    }

    /// <summary>Margins over the frame of one framing at each possible camera angle, flashes below at full power.</summary>
    internal IEnumerable<(PanelSight Sight, WhiteMarginMap Margins)> Seen(SetUpSpec setUp, PlannedFraming framing, CameraCase camera)
    {
        var lit = Of(setUp);
        foreach (var sight in PanelSight.Of(_kit.Subjects, setUp, framing))
        {
            if (lit.Seen(ViewOf(sight), camera) is { } margins)
            {
                yield return (sight, margins);
            }
        }
    }

    /// <summary>The upright sheet of a set-up lit by the flashes behind it; none where it has none.</summary>
    internal LitPanel? UprightOf(SetUpSpec setUp) =>
        _kit.UprightOf(setUp) is { } upright && _uprights.FirstOrDefault(plan => plan.Name == upright.Name) is { } plan
            ? _store.Lit(UprightScene.Of(_kit, upright, plan, setUp))
            : null;

    /// <summary>What is impossible about a set-up's upright sheet.</summary>
    internal IReadOnlyList<LightProblem> UprightProblemsOf(SetUpSpec setUp, IReadOnlyList<PlannedFraming> framings) => UprightOf(setUp) is { } lit
        ? [.. SceneCheck.Problems(lit.Scene, [.. UprightSight.Of(_kit, setUp, framings).Select(sight => UprightViewOf(lit, sight))]).Distinct()]
        : [];

    /// <summary>Margins over the frame of one framing on the upright sheet at each possible camera angle, flashes behind it at full power.</summary>
    internal IEnumerable<(PanelSight Sight, WhiteMarginMap Margins)> SeenUpright(SetUpSpec setUp, PlannedFraming framing, CameraCase camera)
    {
        var lit = UprightOf(setUp);
        foreach (var sight in lit is null ? [] : UprightSight.Of(_kit, setUp, [framing]))
        {
            if (lit!.Seen(UprightViewOf(lit, sight), camera) is { } margins)
            {
                yield return (sight.Sight, margins);
            }
        }
    }

    /// <summary>Light thrown up on the subject's underside against the lights above; none where nothing shines from above or below.</summary>
    internal Stops? UplightAgainstKey(SetUpSpec setUp, IReadOnlyList<LightPlan> lights, SubjectSpec? subject) =>
        Of(setUp).Map is { } map ? UplightPlanner.AgainstKey(_kit, setUp, _panel, lights, subject, map) : null;

    /// <summary>Light that the upright sheet of a set-up throws round the subject's edges; none where nothing shines on the subject, or through the sheet.</summary>
    /// <param name="setUp">The set-up.</param>
    /// <param name="framing">The framing.</param>
    /// <param name="lights">Its flashes at their powers.</param>
    /// <param name="correct">Luminous exposure of the subject that is correct [lx·s]; &gt; 0.</param>
    internal EdgeSpillPlan? EdgeSpill(SetUpSpec setUp, PlannedFraming framing, IReadOnlyList<LightPlan> lights, double correct)
    {
        var key = UplightPlanner.OnSubject(_kit, setUp, lights);
        return key > 0 && lights.FirstOrDefault(light => light.Role == LightRole.Behind) is { } behind && UprightOf(setUp) is { Map: { } map } lit
            ? EdgeSpillPlanner.Of(
                map, behind.Power, UprightSight.Of(_kit, setUp, [framing]).Select(sight => UprightViewOf(lit, sight)).Where(view => SceneCheck.ViewProblems(map.Panel, view).Count == 0), key, correct)
            : null;
    }

    /// <summary>The flat sheet about the subject.</summary>
    internal SheetAround Around => CoverOptics.Around(_panel);

    /// <summary>The studio with another panel or frame, over other flashes, and with other upright sheets; what was lit before is kept.</summary>
    internal StudioLight With(KitSpec kit, PanelPlan panel, FrameResult? frame, ValueList<UprightPlan> uprights) => new(kit, panel, frame, uprights, _store);

    /// <summary>Light that follows the flashes of a set-up while they, or the sheet's edges, are being moved; none where they stand where they cannot.</summary>
    internal LightPreview? Follow(SetUpSpec setUp)
    {
        var scene = Of(setUp).Scene;
        return SceneCheck.Problems(scene).Count > 0 ? null : _store.BoxOf(scene).Follow(_store.UnitMapOf(scene));
    }

    /// <summary>The studio as it is being moved, seen once: the frame stays as it was planned.</summary>
    /// <param name="kit">The kit with what is moved.</param>
    /// <param name="panel">Its panel.</param>
    /// <param name="following">Light that follows.</param>
    internal StudioLight Moving(KitSpec kit, PanelPlan panel, LightPreview following) => new(
        kit, panel, _frame, _uprights, new LightStore(scene => following.At([.. scene.Emitters.Select(flash => flash with { AxialIntensityTime = 1 })], ReferenceEquals(panel, _panel) ? null : scene.Panel)));

    /// <summary>The camera's view over the panel.</summary>
    internal CameraView ViewOf(PanelSight sight) => sight.ViewAt(SubjectBack);

    /// <summary>The upright sheet of a set-up, lit, and one view of it.</summary>
    internal (LitPanel Lit, CameraView View) OnUpright(SetUpSpec setUp, PanelSight sight)
    {
        var lit = UprightOf(setUp)!;
        return (lit, UprightViewOf(lit, new UprightSight(_kit.UprightOf(setUp)!, setUp, sight)));
    }

    private static CameraView UprightViewOf(LitPanel lit, UprightSight sight) => sight.ViewAt(sight.FromLowerEdge - (lit.Scene.Panel.Depth / 2));

    // The light calculation counts from half the sheet's length behind its front edge.
    private Length SubjectBack => _panel.SubjectFromFront - (_panel.Depth / 2);
}
