using StudioKit.Kits;
using StudioKit.Physics.Light;
using StudioKit.Physics.Light.Views;
using StudioKit.Planning;
using StudioKit.Planning.Checks;
using StudioKit.Planning.Studio;
using StudioKit.Planning.Studio.Lights;
using StudioKit.Planning.Studio.Placing;

namespace StudioKit.Sheets.Json;

/// <summary>Light on the panel, and where the flash should go, as JSON.</summary>
public static class PanelLightJson
{
    /// <summary>One set-up; the margin grids only where they are asked for, as they are long.</summary>
    public static void Write(JsonReport json, PanelLightPlan light, bool withGrids)
    {
        json.Text("setUp", light.SetUp)
            .Text("uprightSheet", light.Upright)
            .List("problems", light.Problems, problem => FindingJson.Write(json, new CheckFinding.OfLight(light.SetUp, light.FlashOf(problem), problem)))
            .Millimetres("panelWidth", light.PanelWidth)
            .Millimetres("panelDepth", light.PanelDepth)
            .Millimetres("sweptLength", light.SweptLength)
            .Millimetres("panelHeight", light.PanelHeight)
            .Flag("skirts", light.Skirts)
            .Millimetres("subjectFromFront", light.SubjectFromFront)
            .Stops("targetMargin", light.TargetMargin)
            .List("flashes", light.Flashes, flash => WriteFlash(json, flash))
            .List("overPipes", light.Covered, strip => WritePlaces(json.Millimetres("width", strip.Width), "outline", strip.Corners))
            .List("framings", light.Framings, framing => WriteFraming(json, framing, withGrids))
            .Texts("caveats", light.Caveats);
    }

    /// <summary>What a search for the flash's place found.</summary>
    public static void Write(JsonReport json, PlacementPlan placement)
    {
        json.Text("setUp", placement.SetUp).Count("evaluated", placement.Evaluated);
        WriteChoice(json, "recommended", placement.Recommended);
        WriteChoice(json, "own", placement.Own);
        WriteChoice(json, "nearest", placement.Nearest);
        json.Text("advice", placement.Advice)
            .Number("energySavedShare", placement.EnergySaved)
            .Texts("kitLines", placement.KitLines)
            .List("frontier", placement.Frontier, choice => WriteChoice(json, choice))
            .Texts("caveats", placement.Caveats);
    }

    private static void WriteFlash(JsonReport json, FlashBelowPlan flash) => json
        .Text("flash", flash.Flash)
        .Text("modifier", flash.Modifier)
        .Millimetres("zoom", flash.Zoom)
        .Millimetres("distance", flash.Distance)
        .Millimetres("overGround", flash.OverGround)
        .Millimetres("fromLeft", flash.FromLeft)
        .Millimetres("fromRight", flash.FromRight)
        .Millimetres("fromFront", flash.FromFront)
        .Millimetres("fromBack", flash.FromBack)
        .Number("tiltDeg", flash.Tilt.Degrees)
        .Millimetres("windowWidth", flash.WindowWidth)
        .Millimetres("windowHeight", flash.WindowHeight)
        .Millimetres("inverseSquareFrom", flash.InverseSquareFrom)
        .Stops("nearFieldShortfall", flash.NearFieldShortfall);

    private static void WriteFraming(JsonReport json, FramingLightPlan framing, bool withGrids)
    {
        json.Text("framing", framing.Framing)
            .Text("power", framing.Mark.AsOneFraction)
            .Text("powerInFullStops", framing.Mark.InFullStops)
            .Number("powerFraction", framing.Power.Fraction)
            .Number("powerStopsBelowFull", framing.Power.StopsBelowFull)
            .Flag("usable", framing.IsUsable);
        WritePoint(json, "darkest", framing.DarkestView, framing.Darkest);
        WritePoint(json, "brightest", framing.BrightestView, framing.Brightest);
        json.Number("clippedFraction", framing.ClippedFraction)
            .Stops("highestMargin", framing.HighestMargin)
            .Stops("veil", framing.Veil)
            .Stops("uplightAgainstKey", framing.UplightAgainstKey)
            .List("views", framing.Views, view => WriteView(json, view));
        WritePlaces(json, "outline", framing.Outline);
        if (withGrids)
        {
            WriteGrid(json, framing.Grid);
        }
    }

    private static void WriteView(JsonReport json, ViewLightPlan view)
    {
        json.Number("pitchDeg", view.Pitch.Degrees)
            .Number("rollDeg", view.Roll.Degrees)
            .Number("panelFraction", view.PanelFraction)
            .Stops("darkestMargin", view.Darkest?.Margin)
            .Stops("brightestMargin", view.Brightest?.Margin)
            .Number("clippedFraction", view.ClippedFraction);
        WritePlaces(json, "patch", view.Patch);
    }

    private static void WritePoint(JsonReport json, string key, ViewLightPlan view, MarginPoint point) => json.Section(key, () => json
        .Stops("margin", point.Margin)
        .Number("pitchDeg", view.Pitch.Degrees)
        .Millimetres("acrossPanel", point.Place.Across)
        .Millimetres("alongSheet", point.Place.AlongSheet)
        .Number("frameRight", point.FrameRight)
        .Number("frameUp", point.FrameUp));

    private static void WritePlaces(JsonReport json, string key, IReadOnlyList<PanelPlace> places) => json
        .Numbers(key + "AcrossMm", places.Select(place => place.Across.Millimeters))
        .Numbers(key + "AlongSheetMm", places.Select(place => place.AlongSheet.Millimeters));

    private static void WriteGrid(JsonReport json, MarginGrid grid) => json.Section("grid", () => json
        .Count("columns", grid.Columns)
        .Count("rows", grid.Rows)
        .Numbers("contourLevelsStops", grid.ContourLevels.Select(level => level.Value))
        .Numbers("marginsStops", grid.Margins));

    private static void WriteChoice(JsonReport json, string key, PlacementChoice? choice)
    {
        if (choice is null)
        {
            json.Text(key, null);
        }
        else
        {
            json.Section(key, () => WriteChoice(json, choice));
        }
    }

    private static void WriteChoice(JsonReport json, PlacementChoice choice) => json
        .Text("flash", choice.Flash)
        .Text("modifier", choice.Modifier)
        .Millimetres("zoom", choice.Zoom)
        .Count("flashes", choice.Count)
        .Flag("skirts", choice.Skirts)
        .Millimetres("panelHeight", choice.PanelHeight)
        .Millimetres("distance", choice.Distance)
        .Millimetres("offsetRight", choice.OffsetRight)
        .Millimetres("offsetBack", choice.OffsetBack)
        .Millimetres("aimRight", choice.AimRight)
        .Millimetres("aimBack", choice.AimBack)
        .Number("fullPowerFlashes", choice.FullPowerFlashes)
        .Stops("spread", choice.Spread)
        .Text("limit", MemberText.Of(choice.Limit))
        .List("framings", choice.Framings, framing => json
            .Text("framing", framing.Framing.View.Name)
            .Number("powerFraction", framing.Power)
            .Stops("darkestMargin", framing.Darkest)
            .Stops("brightestMargin", framing.Brightest));
}
