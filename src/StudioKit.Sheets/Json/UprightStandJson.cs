using StudioKit.Kits;
using StudioKit.Planning;

namespace StudioKit.Sheets.Json;

/// <summary>What holds an upright sheet, as part of a plan's JSON document.</summary>
internal static class UprightStandJson
{
    public static void Write(JsonReport json, UprightStandPlan stand) => json
        .Text("name", stand.Name)
        .Text("carrier", MemberText.Of(stand.Carrier))
        .Millimetres("width", stand.Width)
        .Millimetres("height", stand.Height)
        .Millimetres("lowerEdge", stand.LowerEdge)
        .Number("leanDegrees", stand.Lean.Degrees)
        .List("pieces", stand.Pieces, piece => json.Text("label", piece.Label).Text("role", MemberText.Of(piece.Role)).Millimetres("cut", piece.Cut).Count("count", piece.Count))
        .List("fittingCounts", stand.Fittings, fitting => json
            .Text("name", fitting.Name).Count("count", fitting.Count).Millimetres("takeOff", fitting.TakeOff).Grams("massEach", fitting.MassEach))
        .Millimetres("poleSpacing", stand.PoleSpacing)
        .Millimetres("poleLength", stand.PoleLength)
        .Millimetres("playPerEdge", stand.PlayPerEdge)
        .Millimetres("stakeDepth", stand.StakeDepth)
        .Grams("stakeHold", stand.StakeHold)
        .Millimetres("footLength", stand.FootLength)
        .Grams("ballast", stand.Ballast)
        .Millimetres("barHeight", stand.BarHeight)
        .Number("barPushN", stand.BarPush.Newtons)
        .Count("pipeClips", stand.PipeClips)
        .Count("clipsPerPole", stand.ClipsPerPole)
        .Millimetres("firstClip", stand.FirstClip)
        .Millimetres("clipSpacing", stand.ClipSpacing)
        .Number("clipPullN", stand.ClipPull.Newtons)
        .Count("cords", stand.Cords)
        .Millimetres("cordLength", stand.CordLength)
        .Grams("pegHold", stand.PegHold)
        .Millimetres("topLean", stand.TopLean)
        .Millimetres("bow", stand.Bow)
        .Number("gustMPerS", stand.Wind.Gust.MetersPerSecond)
        .Number("highestGustMPerS", stand.HighestGust.MetersPerSecond)
        .Number("highestMeanMPerS", stand.HighestMean.MetersPerSecond)
        .Count("takeDownFromBeaufort", stand.TakeDownFrom)
        .Text("weakest", MemberText.Of(stand.Weakest))
        .Grams("carrierMass", stand.CarrierMass)
        .Grams("sheetMass", stand.SheetMass)
        .Texts("assembly", stand.Assembly.Select(step => MemberText.Of(step)))
        .Texts("packingDown", stand.PackingDown.Select(step => MemberText.Of(step)));
}
