using StudioKit.Physics;

namespace StudioKit.Planning.Studio.Hardware;

/// <summary>Every small part and tool that building and putting up a studio takes.</summary>
internal static class HardwarePlanner
{
    /// <summary>The parts of one studio, in the order in which they are first needed.</summary>
    public static ValueList<HardwareLine> Of(HardwareInputs inputs) =>
    [
        .. new[]
        {
            JointHardware.Of(inputs), PanelHardware.Of(inputs), HoldingHardware.Of(inputs), FlashHardware.Of(inputs), ClothHardware.Of(inputs), HolderHardware.Of(inputs), UprightHardware.Of(inputs),
        }.SelectMany(lines => lines).Where(line => line.Count > 0),
    ];
}
