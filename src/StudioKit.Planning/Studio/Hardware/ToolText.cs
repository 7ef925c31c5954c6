namespace StudioKit.Planning.Studio.Hardware;

/// <summary>Tools in words.</summary>
public static class ToolText
{
    /// <summary>A tool with its size.</summary>
    /// <param name="tool">The tool.</param>
    /// <exception cref="ArgumentNullException">There is no tool.</exception>
    public static string Name(ToolLine tool)
    {
        ArgumentNullException.ThrowIfNull(tool);
        return tool.Kind switch
        {
            ToolKind.Saw => "fine saw or pipe cutter",
            ToolKind.Vice => "clamp or vice with soft jaws",
            ToolKind.File => "file for burrs",
            ToolKind.Rule => "steel rule or tape",
            ToolKind.Pen => "pencil and waterproof pen",
            ToolKind.Goggles => "goggles",
            ToolKind.Gloves => "gloves",
            ToolKind.Drill => "drill",
            ToolKind.DrillBit => $"drill bit, {PlanFormat.AsSold(tool.Size!.Value)}",
            ToolKind.Screwdriver => "screwdriver",
            ToolKind.SheetKnife => "scoring knife or fine blade for sheet",
            ToolKind.Scissors => "scissors",
            ToolKind.Needle => "needle and strong thread",
            ToolKind.Spanner => $"spanner, {PlanFormat.AsSold(tool.Size!.Value)}",
            ToolKind.Level => "spirit level",
            ToolKind.SpringBalance => $"spring balance that shows {MeasureFormat.Mass(tool.Load!.Value)}",
            _ => throw new ArgumentOutOfRangeException(nameof(tool), tool.Kind, "A tool without words."),
        };
    }
}
