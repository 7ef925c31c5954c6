namespace StudioKit.Physics.Structure.Frames;

/// <summary>The tee that carries the flash.</summary>
/// <param name="Joint">Label of the tee; its open socket points up.</param>
/// <param name="Position">Where the tee sits.</param>
/// <param name="BrightWindow">Where the flash's bright window comes to lie.</param>
public sealed record FlashCradle(string Joint, FramePoint Position, FramePoint BrightWindow);
