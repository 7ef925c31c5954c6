using StudioKit.Kits;
using StudioKit.Planning;
using StudioKit.Planning.Checks;
using StudioKit.Planning.Studio;
using StudioKit.Planning.Studio.Assembling;
using StudioKit.Wording;

namespace StudioKit.Sheets.Json;

/// <summary>A frame, its cuts and its shopping list as part of a plan's JSON document.</summary>
internal static class FrameJson
{
    public static void Write(JsonReport json, FramePlan frame)
    {
        json.Text("shape", MemberText.Of(frame.Geometry.Shape))
            .Text("pipe", frame.PipeName)
            .Text("fittings", frame.FittingsName)
            .Count("studios", frame.Studios)
            .Millimetres("panelHeight", frame.Geometry.PanelHeight)
            .Millimetres("sheetLength", frame.Geometry.SheetLength)
            .Millimetres("baseWidth", frame.Geometry.BaseWidth)
            .Millimetres("baseDepth", frame.Geometry.BaseDepth)
            .Grams("mass", frame.Mass)
            .Text("massOrigin", MemberText.Of(frame.MassOrigin))
            .Grams("standingMass", frame.StandingMass)
            .Text("panelRests", frame.Geometry.Ledge.AllRound ? "all-edges" : "front-and-back")
            .List("strips", frame.Geometry.Ledge.Rests, rest => json.Text("edge", MemberText.Of(rest.Edge)).Text("member", rest.Member).Millimetres("length", rest.Length))
            .Grams("stripMass", frame.RestMass)
            .Number("meanWindMPerS", frame.Wind?.Mean.MetersPerSecond)
            .Number("gustFactor", frame.Wind?.GustFactor)
            .Number("windLeft", frame.Wind?.Left)
            .Number("gustMPerS", frame.Wind?.Gust.MetersPerSecond)
            .Grams("ballast", frame.Ballast)
            .Count("pegs", frame.Pegs)
            .Number("pegHoldN", frame.PegHold.Newtons);
        WriteParts(json, frame);
        WorkshopJson.WriteSheetParts(json, frame.Workshop);
        json.List("flashesBelow", frame.LowerFlashes, flash => WriteFlash(json, flash));
        WorkshopJson.WriteCuts(json, frame.Workshop);
        json.List("assembly", frame.Assembly, step => WriteStep(json, step, frame))
            .Texts("packingDown", frame.PackingDown.Select(AssemblyText.Of))
            .List("problems", frame.Geometry.Problems, problem => FindingJson.Write(json, new CheckFinding.OfFrame(problem)))
            .List("caveats", frame.Geometry.Caveats, caveat => CaveatJson.Write(json, new CheckCaveat.OfFrame(caveat)));
    }

    private static void WriteParts(JsonReport json, FramePlan frame) => json
        .List("pieces", frame.Pieces, piece => json
            .Text("group", piece.Group)
            .Count("count", piece.Count)
            .Millimetres("cut", piece.Rounded)
            .Millimetres("exact", piece.Exact)
            .Texts("labels", piece.Members))
        .List("members", frame.Geometry.Members, member => json
            .Text("label", member.Label)
            .Text("role", MemberText.Of(member.Role))
            .Text("from", member.From)
            .Text("to", member.To)
            .Millimetres("centreLine", member.CentreLine))
        .List("joints", frame.Geometry.Joints, joint => json
            .Text("label", joint.Label)
            .Text("fitting", MemberText.Of(joint.Kind))
            .Flag("pinned", joint.Pinned)
            .Number("rightMm", 1000 * joint.Position.Right)
            .Number("backMm", 1000 * joint.Position.Back)
            .Number("upMm", 1000 * joint.Position.Up))
        .List("feet", frame.FootSettings, foot => json.Text("joint", foot.Joint).Millimetres("extension", foot.Extension).Flag("inReach", foot.InReach))
        .List("fittingCounts", frame.Fittings, fitting => json
            .Text("name", fitting.Name).Count("count", fitting.Count).Millimetres("takeOff", fitting.TakeOff).Grams("massEach", fitting.MassEach));

    private static void WriteStep(JsonReport json, AssemblyStep step, FramePlan frame) => json
        .Text("kind", step.Kind)
        .Texts("members", step.Members)
        .Texts("joints", step.Joints)
        .Texts("moved", step.Moved)
        .List("freeSockets", step.FreeSockets, socket => json.Text("joint", socket.Joint).Text("direction", MemberText.Of(socket.Direction)).Text("later", socket.Later))
        .Text("text", AssemblyText.Of(step, frame.Geometry));

    private static void WriteFlash(JsonReport json, FlashBelow flash)
    {
        json.Text("flash", flash.Flash)
            .Texts("setUps", flash.SetUps)
            .Millimetres("belowPanel", flash.BelowPanel)
            .Millimetres("fromLeft", flash.FromLeft)
            .Millimetres("fromFront", flash.FromFront)
            .Text("support", MemberText.Of(flash.Support))
            .Text("joint", flash.CradleJoint);
        if (flash.Fault is { } fault)
        {
            json.Section("fault", () => FindingJson.Write(json, new CheckFinding.OfCradle(fault)));
        }

        json.List("moves", flash.Moves, move => FindingJson.Write(json, move));
    }
}
