using StudioKit.Physics.Structure.Frames;
using UnitsNet;

namespace StudioKit.Planning;

/// <summary>Where the flash under the panel goes.</summary>
/// <param name="Flash">Its name.</param>
/// <param name="Window">Middle of its bright window in the frame's space.</param>
/// <param name="HeadWidth">Width of the window.</param>
/// <param name="HeadHeight">Height of the window.</param>
/// <param name="FromLeft">Panel's left edge, as the camera sees it, to the window's middle.</param>
/// <param name="FromFront">Panel's front edge to the window's middle.</param>
/// <param name="BelowPanel">Panel's underside down to the window.</param>
public sealed record FlashBelow(
    string Flash, FramePoint Window, Length HeadWidth, Length HeadHeight, Length FromLeft, Length FromFront, Length BelowPanel);
