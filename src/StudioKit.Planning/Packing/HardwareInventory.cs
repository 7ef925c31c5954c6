using StudioKit.Kits.Carrying;
using StudioKit.Physics.Packing;
using StudioKit.Planning.Studio.Hardware;
using UnitsNet;

namespace StudioKit.Planning.Packing;

/// <summary>Small parts and tools that travel, on the pack list.</summary>
internal static class HardwareInventory
{
    /// <summary>Their lines; of a frame that was weighed, without what was weighed with it.</summary>
    /// <param name="hardware">Small parts of one studio.</param>
    /// <param name="tools">Its tools.</param>
    /// <param name="uprights">Names of its upright sheets.</param>
    /// <param name="frameWeighed">Whether the kit gives the mass of the frame.</param>
    public static IEnumerable<PackedItem> Of(IReadOnlyList<HardwareLine> hardware, IReadOnlyList<ToolLine> tools, IReadOnlyList<UprightStandPlan> uprights, bool frameWeighed)
    {
        var sheets = uprights.Select(upright => upright.Name).ToHashSet(StringComparer.Ordinal);
        return
        [
            .. hardware.Where(line => line.Travels && !(frameWeighed && line.StaysOnFrame)).Select(line => Item(line, sheets)),
            .. tools.Where(tool => tool.Travels).Select(Item),
        ];
    }

    private static PackedItem Item(HardwareLine line, HashSet<string> sheets) => Item(HardwareText.Brief(line), line.Kind == HardwareKind.WipingCloth ? 1 : line.Count, line.MassEach) with
    {
        Upright = line.For is { } sheet && sheets.Contains(sheet) ? sheet : null,
        BelongsTo = line.For is { } owner && !sheets.Contains(owner) ? owner : null,
    };

    private static PackedItem Item(ToolLine tool) => Item(ToolText.Name(tool), tool.Count, tool.MassEach) with { Kind = PackItemKind.Tool, Tool = tool };

    private static PackedItem Item(string name, int count, Mass each) => new()
    {
        Part = StudioPart.Hardware,
        Name = name,
        Count = count,
        Mass = each * count,
        Origin = MassOrigin.Assumed,
        Stage = PackItemStage.SettingUp,
        Essential = false,
    };
}
