namespace StudioKit.Physics.Structure.Frames;

/// <summary>What holds a flash below the panel: a tee on a rail of its own or another's, or nothing, with the reason.</summary>
/// <param name="Joint">Label of the tee, whose open socket points up; none where the frame does not carry the flash.</param>
/// <param name="Position">Where the tee sits, or would.</param>
/// <param name="BrightWindow">Where the flash's bright window comes to lie.</param>
/// <param name="Fault">Why the frame does not carry it; none where it does.</param>
public sealed record FlashCradle(string? Joint, FramePoint Position, FramePoint BrightWindow, CradleFault? Fault);
