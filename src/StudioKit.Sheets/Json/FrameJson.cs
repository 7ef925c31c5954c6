using StudioKit.Kits;
using StudioKit.Planning;
using StudioKit.Planning.Checks;
using StudioKit.Planning.Cutting;
using StudioKit.Planning.Studio;

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
        json.List("flashesBelow", frame.LowerFlashes, flash => WriteFlash(json, flash));
        WriteCuts(json, frame);
        json.List("shopping", frame.Shopping, line => json
                .Text("item", line.Item).Count("count", line.Count).Amount("priceEach", line.PriceEach).Amount("price", line.Total))
            .Text("currency", frame.Currency)
            .Amount("totalCost", frame.TotalCost)
            .Texts("assembly", frame.Assembly)
            .Texts("packingDown", frame.PackingDown)
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
            .Text("name", fitting.Name).Count("count", fitting.Count).Millimetres("takeOff", fitting.TakeOff).Grams("massEach", fitting.MassEach))
        .List("sheetParts", frame.SheetParts, part => json
            .Text("label", part.Label)
            .Text("material", part.Material)
            .Millimetres("width", part.Width)
            .Millimetres("height", part.Height)
            .Count("count", part.Count)
            .Flag("keepsDirection", part.KeepsDirection));

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

    private static void WriteCuts(JsonReport json, FramePlan frame)
    {
        json.List("bars", frame.PipeCuts.Bars, bar => json
            .Text("stock", bar.StockLabel)
            .Millimetres("stockLength", bar.StockLength)
            .Amount("price", bar.Price)
            .Millimetres("offcut", bar.Offcut)
            .List("pieces", bar.Marks, mark => json.Text("piece", mark.Label).Millimetres("length", mark.Length).Millimetres("end", mark.End)));
        json.Section("barProof", () => WriteProof(json, frame.PipeCuts.Proof));
        json.List("sheets", frame.SheetCuts.Sheets, sheet => json
            .Text("stock", sheet.StockLabel)
            .Amount("price", sheet.Price)
            .List("pieces", sheet.Panels, panel => json
                .Text("piece", panel.Label)
                .Millimetres("x", panel.X)
                .Millimetres("y", panel.Y)
                .Millimetres("width", panel.Width)
                .Millimetres("height", panel.Height)
                .Flag("turned", panel.Turned)));
        json.Section("sheetProof", () => WriteProof(json, frame.SheetCuts.Proof));
    }

    private static void WriteProof(JsonReport json, CutProof proof) => json
        .Text("objective", MemberText.Of(proof.Objective))
        .Amount("value", proof.Value)
        .Amount("lowerBound", proof.LowerBound)
        .Flag("provenOptimal", proof.ProvenOptimal)
        .Text("method", proof.Method);
}
