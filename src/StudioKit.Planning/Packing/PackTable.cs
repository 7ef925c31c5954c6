using System.Globalization;
using StudioKit.Kits.Carrying;
using StudioKit.Physics.Packing;
using StudioKit.Planning.Tables;

namespace StudioKit.Planning.Packing;

/// <summary>The pack list as a table for a spreadsheet.</summary>
public static class PackTable
{
    /// <summary>Writes every line of the pack list.</summary>
    /// <param name="pack">The pack.</param>
    /// <returns>Comma-separated text as RFC 4180 has it; column heads end in their unit.</returns>
    public static string Csv(PackPlan pack)
    {
        ArgumentNullException.ThrowIfNull(pack);
        return string.Concat(pack.Items.Select(Row).Prepend(UnitCell.Row(
            "bag", "neededAt", "kind", "item", "count", UnitCell.MassHead("mass"), "massFrom", UnitCell.LengthHead("length"), UnitCell.LengthHead("width"), UnitCell.LengthHead("depth"), "sizeFrom", "fragile", "strappedOutside", "essential")));
    }

    private static string Row(PackedItem item) => UnitCell.Row(
        item.Bag ?? "",
        Stage(item.Stage),
        Kind(item.Kind),
        item.Words,
        item.Count.ToString(CultureInfo.InvariantCulture),
        UnitCell.Of(item.Mass),
        item.Origin switch { MassOrigin.Weighed => "weighed", MassOrigin.FromGeometry => "geometry", _ => "assumed" },
        UnitCell.Of(item.Size?.Longest, "0.##"),
        UnitCell.Of(item.Size?.Middle, "0.##"),
        UnitCell.Of(item.Size?.Shortest, "0.##"),
        item.Size is null ? "" : item.SizeAssumed ? "assumed" : "given",
        YesNo(item.Fragile),
        YesNo(item.Outside),
        YesNo(item.Essential));

    /// <summary>A stage of the day in words.</summary>
    /// <param name="stage">The stage.</param>
    public static string Stage(PackItemStage stage) => stage switch
    {
        PackItemStage.OnTheWay => "on the way",
        PackItemStage.SettingUp => "setting up",
        PackItemStage.Shooting => "shooting",
        _ => "packing down",
    };

    /// <summary>What a thing is for, in words; empty where it is nothing special.</summary>
    /// <param name="kind">The kind.</param>
    public static string Kind(PackItemKind kind) => kind switch
    {
        PackItemKind.FirstAid => "first aid",
        PackItemKind.Weather => "weather layer",
        PackItemKind.Tool => "tool",
        PackItemKind.AnimalCare => "animal care",
        PackItemKind.Provisions => "food and water",
        _ => "",
    };

    private static string YesNo(bool value) => value ? "yes" : "no";
}
