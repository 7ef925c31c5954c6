using StudioKit.Kits;
using StudioKit.Physics.Sources;
using StudioKit.Planning;
using StudioKit.Planning.Checks;
using StudioKit.Planning.Packing;
using StudioKit.Wording;

namespace StudioKit.Sheets.Json;

/// <summary>The pack of a plan as JSON.</summary>
internal static class PackJson
{
    public static void Write(JsonReport json, PackPlan pack)
    {
        json.Grams("mass", pack.Total)
            .Grams("weighed", pack.Weighed)
            .Grams("fromGeometry", pack.FromGeometry)
            .Grams("assumed", pack.Assumed)
            .List("items", pack.Items, item => WriteItem(json, item))
            .List("bags", pack.Bags, bag => WriteBag(json, bag))
            .Flag("provenMostEven", pack.ProvenMostEven)
            .List("people", pack.People, person => json
                .Text("name", person.Person)
                .Texts("bags", person.Bags)
                .Grams("mass", person.Mass)
                .Number("shareOfBodyMass", person.Share)
                .Text("band", MemberText.Of(person.Band)))
            .List("longPieces", pack.LongPieces, piece => json
                .Text("name", piece.Name)
                .Millimetres("length", piece.Length)
                .Text("bag", piece.Bag)
                .Text("placement", MemberText.Of(piece.Placement))
                .Millimetres("longestInside", piece.LongestInside)
                .List("caveats", piece.Caveats, caveat => CaveatJson.Write(json, new CheckCaveat.OfLongPiece(caveat))))
            .List("cells", pack.Cells, stock => WriteCells(json, stock))
            .List("misfits", pack.Misfits, misfit => FindingJson.Write(json, new CheckFinding.NoPlace(misfit)));
        if (pack.LeaveAtHome is { } home)
        {
            json.Section("leaveAtHome", () => json
                .Grams("target", home.Target)
                .List("lighter", home.Lighter, step => json
                    .Text("change", HomeText.Of(step.Change)).Grams("saved", step.Saved).Grams("total", step.Total).Texts("lost", step.Lost).Number("whiteMarginChangeStops", step.MarginChange?.Value))
                .Texts("left", home.Left)
                .Texts("lost", home.Lost)
                .Grams("mass", home.Mass)
                .Flag("reached", home.Reached)
                .Flag("provenLeast", home.ProvenLeast));
        }

        json.Texts("notes", pack.Notes);
    }

    private static void WriteItem(JsonReport json, PackedItem item) => json
        .Text("name", item.Name)
        .Count("count", item.Count)
        .Grams("mass", item.Mass)
        .Text("massOrigin", MemberText.Of(item.Origin))
        .Text("kind", MemberText.Of(item.Kind))
        .Text("bag", item.Bag)
        .Text("stage", MemberText.Of(item.Stage))
        .Millimetres("longestSide", item.LongestSide)
        .Flag("fragile", item.Fragile)
        .Flag("outside", item.Outside);

    private static void WriteBag(JsonReport json, BagLoad bag) => json
        .Text("name", bag.Name)
        .Grams("mass", bag.Mass)
        .Grams("highestLoad", bag.HighestLoad)
        .Text("carrier", bag.Carrier)
        .Number("shareOfBodyMass", bag.ShareOfBodyMass)
        .Number("shareOfUsableVolume", bag.VolumeShare)
        .Texts("fromBottom", bag.FromBottom);

    private static void WriteCells(JsonReport json, CellStock stock) => json
        .Text("flash", stock.Flash)
        .Text("cell", stock.Cell)
        .Count("count", stock.Count)
        .Count("spare", stock.Spare)
        .Number("energyEachWh", stock.EnergyEach.WattHours)
        .Number("energyTotalWh", stock.EnergyTotal.WattHours)
        .Count("fullPowerFlashes", stock.FullPowerFlashes)
        .Text("airClass", MemberText.Of(stock.Air.Class))
        .Text("airRule", stock.Air.Rule)
        .Text("airRuleAsOf", stock.Air.AsOf)
        .Text("airRuleSource", Bibliography.Entries[stock.Air.SourceKey].Citation);
}
