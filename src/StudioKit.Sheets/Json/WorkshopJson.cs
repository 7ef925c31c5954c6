using StudioKit.Kits;
using StudioKit.Planning;
using StudioKit.Planning.Cutting;
using StudioKit.Planning.Studio.Hardware;

namespace StudioKit.Sheets.Json;

/// <summary>Cuts and shopping as part of a plan's JSON document.</summary>
internal static class WorkshopJson
{
    /// <summary>A workshop of its own.</summary>
    public static void Write(JsonReport json, Workshop workshop)
    {
        json.Text("pipe", workshop.PipeName).Text("fittings", workshop.FittingsName).Count("studios", workshop.Studios);
        WriteSheetParts(json, workshop);
        WriteCuts(json, workshop);
    }

    /// <summary>Flat pieces to cut.</summary>
    public static void WriteSheetParts(JsonReport json, Workshop workshop) => json
        .List("sheetParts", workshop.SheetParts, part => json
            .Text("label", part.Label)
            .Text("material", part.Material)
            .Millimetres("width", part.Width)
            .Millimetres("height", part.Height)
            .Count("count", part.Count)
            .Flag("keepsDirection", part.KeepsDirection));

    /// <summary>Patterns and shopping.</summary>
    public static void WriteCuts(JsonReport json, Workshop workshop)
    {
        WritePatterns(json, workshop);
        json.List("hardware", workshop.Hardware, line => json
            .Text("kind", MemberText.Of(line.Kind))
            .Text("part", HardwareText.Name(line))
            .Count("count", line.Count)
            .Grams("massEach", line.MassEach)
            .List("usedAt", line.Places, place => json.Text("place", place.Where).Count("count", place.Count)));
        json.List("tools", workshop.Tools, tool => json.Text("tool", ToolText.Name(tool)).Count("count", tool.Count));
        json.List("shopping", workshop.Shopping, line => json
                .Text("item", line.Item).Count("count", line.Count).Amount("priceEach", line.PriceEach).Amount("price", line.Total))
            .Text("currency", workshop.Currency)
            .Amount("totalCost", workshop.TotalCost);
    }

    private static void WritePatterns(JsonReport json, Workshop workshop)
    {
        json.List("bars", workshop.PipeCuts.Bars, bar => json
            .Text("stock", bar.StockLabel)
            .Millimetres("stockLength", bar.StockLength)
            .Amount("price", bar.Price)
            .Millimetres("offcut", bar.Offcut)
            .List("pieces", bar.Marks, mark => json.Text("piece", mark.Label).Millimetres("length", mark.Length).Millimetres("end", mark.End)));
        json.Section("barProof", () => WriteProof(json, workshop.PipeCuts.Proof));
        json.List("sheets", workshop.SheetCuts.Sheets, sheet => json
            .Text("stock", sheet.StockLabel)
            .Amount("price", sheet.Price)
            .List("pieces", sheet.Panels, panel => json
                .Text("piece", panel.Label)
                .Millimetres("x", panel.X)
                .Millimetres("y", panel.Y)
                .Millimetres("width", panel.Width)
                .Millimetres("height", panel.Height)
                .Flag("turned", panel.Turned)));
        json.Section("sheetProof", () => WriteProof(json, workshop.SheetCuts.Proof));
    }

    private static void WriteProof(JsonReport json, CutProof proof) => json
        .Text("objective", MemberText.Of(proof.Objective))
        .Amount("value", proof.Value)
        .Amount("lowerBound", proof.LowerBound)
        .Flag("provenOptimal", proof.ProvenOptimal)
        .Text("method", proof.Method);
}
