using System.Globalization;
using StudioKit.Planning;
using StudioKit.Planning.Packing;
using StudioKit.Sheets.Layout;
using StudioKit.Wording;
using MassOrigin = StudioKit.Physics.Packing.MassOrigin;

namespace StudioKit.Sheets.Documents;

/// <summary>The pack list: boxes to tick, by bag, in the order things are needed on site.</summary>
internal static class PackListSheet
{
    private const string Unbagged = "Not in a bag";

    private const double ItemsPt = 8;

    private static readonly Column[] ItemColumns =
    [
        new(" ", ColumnKind.TickBox), new("Item"), new("Count", ColumnKind.Right), new("Needed"), new("Mass", ColumnKind.Right), new("Known by"), new("Note"),
    ];

    public static SheetDocument Make(Plan plan, Stamp stamp, PageSetup page) => new(
        "Pack list",
        stamp,
        page,
        [
            new Heading("Pack list"),
            new Paragraph($"{plan.Kit.Name}. Everything together: {MeasureFormat.Mass(plan.Pack.Total)}. {Known(plan.Pack)}"),
            .. plan.Pack.Notes.Count == 0 ? (Block[])[] : [new ItemList(plan.Pack.Notes, ItemMarker.Dot, TypeScale.Small)],
            .. plan.Pack.LeaveAtHome is { } home ? (Block[])[new Paragraph(HomeText.Of(home))] : [],
            .. BagNames(plan.Pack).SelectMany(bag => Bag(plan.Pack, bag)),
            .. Cells(plan.Pack),
        ]);

    private static string Known(PackPlan pack) =>
        $"Without the bags, {MeasureFormat.Mass(pack.Weighed)} are weighed, {MeasureFormat.Mass(pack.FromGeometry)} computed, {MeasureFormat.Mass(pack.Assumed)} assumed.";

    private static IEnumerable<string> BagNames(PackPlan pack) =>
        pack.Bags.Select(bag => bag.Name).Concat(pack.Items.Select(BagOf)).Distinct();

    private static string BagOf(PackedItem item) => item.Bag ?? Unbagged;

    private static IEnumerable<Block> Bag(PackPlan pack, string name)
    {
        yield return new Heading(name, 2);
        if (pack.Bags.FirstOrDefault(bag => bag.Name == name) is { } load)
        {
            yield return new Paragraph(Load(load));
        }

        var items = pack.Items.Where(item => BagOf(item) == name).ToList();
        yield return items.Count == 0 ? new Paragraph("Nothing goes in it.") : new Table(ItemColumns, [.. items.Select(Row)], ItemsPt);
    }

    private static string Load(BagLoad load)
    {
        var limit = load.HighestLoad is { } highest ? $", at most {MeasureFormat.Mass(highest)}" : "";
        var carrier = load.Carrier is null ? "" : $"; {load.Carrier} carries it";
        var share = load.ShareOfBodyMass is { } part ? $", {MeasureFormat.Percent(part)} of body mass" : "";
        var full = load.VolumeShare > 0 ? $" Filled to {MeasureFormat.Percent(Math.Round(load.VolumeShare, 2))} of what it takes." : "";
        return $"{MeasureFormat.Mass(load.Mass)} with the bag itself{limit}{carrier}{share}.{full}";
    }

    private static TableRow Row(PackedItem item) => new(
        ["tick", item.Words, item.Count.ToString(CultureInfo.InvariantCulture), PackTable.Stage(item.Stage), MeasureFormat.Mass(item.Mass), Origin(item.Origin), Note(item)]);

    private static string Origin(MassOrigin origin) => origin switch
    {
        MassOrigin.Weighed => "weighed",
        MassOrigin.FromGeometry => "computed",
        _ => "assumed, weigh it",
    };

    private static string Note(PackedItem item) => string.Join(", ", new[]
    {
        PackTable.Kind(item.Kind) is { Length: > 0 } kind ? kind : null,
        item is { CellsOf: not null, InFlash: false } ? "spare" : null,
        item.InFlash ? "travel in the flash" : null,
        item.Fragile ? "fragile" : null,
        item.Outside ? "strapped outside" : null,
        item.LongestSide is { } side ? $"longest {PlanFormat.Millimetres(side)}" : null,
    }.OfType<string>());

    private static IEnumerable<Block> Cells(PackPlan pack)
    {
        if (pack.Cells.Count == 0)
        {
            yield break;
        }

        yield return new Heading("Cells", 2);
        yield return new Table(
            [
                new Column(" ", ColumnKind.TickBox), new Column("Flash"), new Column("Cell"), new Column("Count", ColumnKind.Right),
                new Column("Energy each", ColumnKind.Decimal), new Column("Full flashes", ColumnKind.Right), new Column("In the air"),
            ],
            [.. pack.Cells.Select(cell => new TableRow(
                [
                    "tick", cell.Flash, cell.Cell, cell.Count.ToString(CultureInfo.InvariantCulture),
                    FormattableString.Invariant($"{cell.EnergyEach.WattHours:0.#} Wh"),
                    cell.FullPowerFlashes.ToString(CultureInfo.InvariantCulture), cell.Air.Rule,
                ]))]);
        yield return new Caution(UsualCautions.Cells);
    }
}
