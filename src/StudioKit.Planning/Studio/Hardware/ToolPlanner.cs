using StudioKit.Physics;
using StudioKit.Physics.Structure;
using StudioKit.Planning.Studio.Uprights;
using UnitsNet;

namespace StudioKit.Planning.Studio.Hardware;

/// <summary>The tools that what is built asks for, and no others.</summary>
internal static class ToolPlanner
{
    /// <summary>The tools.</summary>
    /// <param name="inputs">What is built.</param>
    /// <param name="hardware">Its small parts.</param>
    public static ValueList<ToolLine> Of(HardwareInputs inputs, IReadOnlyList<HardwareLine> hardware) => [.. ForPipe(inputs), .. ForHoles(hardware), .. ForSheets(inputs), .. OnSite(inputs, hardware)];

    private static IEnumerable<ToolLine> ForPipe(HardwareInputs inputs) => inputs.Frame is null && inputs.Holders.Count == 0 && inputs.Uprights.Count == 0
        ? []
        : [new(ToolKind.Saw), new(ToolKind.Vice), new(ToolKind.File), new(ToolKind.Rule), new(ToolKind.Pen), new(ToolKind.Goggles)];

    private static IEnumerable<ToolLine> ForHoles(IReadOnlyList<HardwareLine> hardware)
    {
        var holes = hardware.Select(line => line.Hole).OfType<Length>().DistinctBy(hole => hole.Millimeters).OrderBy(hole => hole.Millimeters).ToList();
        return [
            .. holes.Count > 0 ? [new ToolLine(ToolKind.Drill)] : Array.Empty<ToolLine>(),
            .. holes.Select(hole => new ToolLine(ToolKind.DrillBit) { Size = hole }),
            .. hardware.Any(line => line.Kind == HardwareKind.LedgeScrew) ? [new ToolLine(ToolKind.Screwdriver)] : Array.Empty<ToolLine>(),
        ];
    }

    private static IEnumerable<ToolLine> ForSheets(HardwareInputs inputs)
    {
        if (inputs.Parts.Any(part => part.Kind is SheetPartKind.Panel or SheetPartKind.Upright))
        {
            yield return new ToolLine(ToolKind.SheetKnife);
            yield return new ToolLine(ToolKind.Gloves);
        }

        yield return new ToolLine(ToolKind.Scissors);
        if (inputs.Parts.Any(part => part.Kind == SheetPartKind.Skirt))
        {
            yield return new ToolLine(ToolKind.Needle);
        }
    }

    private static IEnumerable<ToolLine> OnSite(HardwareInputs inputs, IReadOnlyList<HardwareLine> hardware)
    {
        if (hardware.FirstOrDefault(line => line.Kind == HardwareKind.Foot) is { Screw: { } screw })
        {
            yield return new ToolLine(ToolKind.Spanner) { Size = screw.AcrossFlats, MassEach = Mass.FromGrams(60) };
        }

        if (inputs.Frame is { Feet.Count: > 0 } || inputs.Uprights.Any(upright => upright.Assembly.Contains(UprightStep.DriveStakes)))
        {
            yield return new ToolLine(ToolKind.Level) { MassEach = Mass.FromGrams(60) };
        }

        if (Pulls(inputs, hardware).DefaultIfEmpty(Mass.Zero).Max() is var load && load > Mass.Zero)
        {
            yield return new ToolLine(ToolKind.SpringBalance) { Load = load, MassEach = Mass.FromGrams(120) };
        }
    }

    // Pegs, stakes, and the clips of upright sheets are pulled to see whether they hold.
    private static IEnumerable<Mass> Pulls(HardwareInputs inputs, IReadOnlyList<HardwareLine> hardware) => hardware.Where(line => line.Kind == HardwareKind.Peg).Select(line => line.Holds!.Value)
        .Concat(inputs.Uprights.Select(upright => upright.StakeHold))
        .Concat(inputs.Uprights.Select(upright => Mass.FromKilograms(upright.ClipPull.Newtons / PanelSag.Gravity)));
}
