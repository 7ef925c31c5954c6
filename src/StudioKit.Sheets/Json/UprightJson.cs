using StudioKit.Kits;
using StudioKit.Planning;
using StudioKit.Planning.Studio.Lights;
using StudioKit.Planning.Studio.Uprights;

namespace StudioKit.Sheets.Json;

/// <summary>Sheets that stand behind subjects, in JSON.</summary>
internal static class UprightJson
{
    public static void Write(JsonReport json, UprightPlan upright) => json
        .Text("name", upright.Name)
        .Text("carrier", MemberText.Of(upright.Carrier))
        .Millimetres("width", upright.Width)
        .Millimetres("height", upright.Height)
        .Millimetres("requiredWidth", upright.RequiredWidth)
        .Millimetres("requiredHeight", upright.RequiredHeight)
        .Millimetres("lowerEdge", upright.LowerEdge)
        .Number("leanDegrees", upright.Lean.Degrees)
        .Text("material", upright.Material)
        .Millimetres("thickness", upright.Thickness)
        .Grams("mass", upright.Mass)
        .List("places", upright.Places, place => Write(json, place));

    public static void Write(JsonReport json, UprightLightPlan light)
    {
        json.Text("upright", light.Upright).Millimetres("fromSubject", light.FromSubject).List("behind", light.Flashes, flash => Write(json, flash));
        PanelLightJson.Write(json, light.Sheet, withGrids: false);
    }

    private static void Write(JsonReport json, UprightPlace place) => json.Text("setUp", place.SetUp).Millimetres("fromSubject", place.FromSubject).Flag("onPanel", place.OnPanel);

    private static void Write(JsonReport json, FlashBehindPlan flash) => json
        .Text("flash", flash.Flash)
        .Text("modifier", flash.Modifier)
        .Millimetres("distance", flash.Distance)
        .Millimetres("right", flash.Right)
        .Millimetres("behindSubject", flash.BehindSubject)
        .Millimetres("overGround", flash.OverGround)
        .Number("tiltDegrees", flash.Tilt.Degrees)
        .Number("turnDegrees", flash.Turn.Degrees);
}
