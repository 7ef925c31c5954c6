using StudioKit.Physics;
using StudioKit.Planning.Studio.Hardware;

namespace StudioKit.Planning.Stations;

/// <summary>A tool that several stations need.</summary>
/// <param name="Tool">The tool.</param>
/// <param name="Stations">Names of the kits that need it.</param>
public sealed record SharedTool(ToolLine Tool, ValueList<string> Stations);
