using StudioKit.Kits;
using StudioKit.Kits.SetUps;
using StudioKit.Kits.Uprights;
using StudioKit.Physics.Light;
using StudioKit.Planning.Framing;
using StudioKit.Planning.Studio.Panels;
using UnitsNet;

namespace StudioKit.Planning.Studio.Uprights;

/// <summary>One framing at one camera angle looking at an upright sheet.</summary>
/// <remarks>
/// For the light the sheet lies on its back: its front edge is its lower one, its top faces the camera. A camera that looks level then looks straight down, and one that
/// looks down looks back towards the front edge.
/// </remarks>
internal sealed record UprightSight(UprightSpec Upright, SetUpSpec SetUp, PanelSight Sight)
{
    private readonly CameraView _view = Sight.ViewAt(Length.Zero);

    /// <summary>Every framing of a set-up at every camera angle of it.</summary>
    public static IEnumerable<UprightSight> Of(KitSpec kit, SetUpSpec setUp, IReadOnlyList<PlannedFraming> framings) => kit.UprightOf(setUp) is { } upright
        ? PanelSight.Of(kit.Subjects, setUp, framings).Select(sight => new UprightSight(upright, setUp, sight))
        : [];

    /// <summary>From the sheet's lower edge, along the sheet, to the point of it right behind what is looked at.</summary>
    public Length FromLowerEdge => UprightPlacing.FromLowerEdge(Upright, SetUp, _view.SubjectHeight);

    /// <summary>The view, counted from a place of the sheet.</summary>
    /// <param name="back">The point right behind what is looked at, beyond that place towards the upper edge.</param>
    public CameraView ViewAt(Length back) => _view with
    {
        Pitch = Angle.FromDegrees(90) + Sight.Pitch - Upright.Lean,
        SubjectHeight = UprightPlacing.Distance(Upright, SetUp, _view.SubjectHeight),
        SubjectBack = back,
        EndsBehind = null,
    };
}
