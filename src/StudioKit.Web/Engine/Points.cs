using StudioKit.Physics.Light;
using StudioKit.Planning.Previewing;
using StudioKit.Web.Engine.Telling;
using StudioKit.Web.Results;
using UnitsNet;

namespace StudioKit.Web.Engine;

/// <summary>Places of planned panels.</summary>
/// <param name="kits">The kits.</param>
internal sealed class Points(PlannedKits kits)
{
    /// <summary>What is known of one place.</summary>
    public PointAnswer Answer(PointRequest request)
    {
        if (kits.Find(request.Hash) is not { } kit || kit.Light(request.SetUp) is not { } light)
        {
            return PointTelling.Nothing;
        }

        var place = new PanelPlace(Length.FromMillimeters(request.Place.X) - (light.PanelWidth / 2), Length.FromMillimeters(request.Place.Y));
        return PointTelling.Of(light, place, PanelPoint.Of(kit.Plan, request.SetUp, place), request.Framing);
    }
}
