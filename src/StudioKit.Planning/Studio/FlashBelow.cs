using StudioKit.Physics.Structure.Frames;
using UnitsNet;

namespace StudioKit.Planning.Studio;

/// <summary>A flash under the panel in one place, and what holds it there.</summary>
/// <param name="Flash">Its name.</param>
/// <param name="SetUps">Set-ups that light with it there.</param>
/// <param name="Window">Middle of its bright window in the frame's space.</param>
/// <param name="HeadWidth">Width of the window.</param>
/// <param name="HeadHeight">Height of the window.</param>
/// <param name="FromLeft">Panel's left edge, as the camera sees it, to the window's middle.</param>
/// <param name="FromFront">Panel's front edge to the window's middle.</param>
/// <param name="BelowPanel">Panel's underside down to the window.</param>
public sealed record FlashBelow(
    string Flash,
    IReadOnlyList<string> SetUps,
    FramePoint Window,
    Length HeadWidth,
    Length HeadHeight,
    Length FromLeft,
    Length FromFront,
    Length BelowPanel)
{
    /// <summary>What holds it.</summary>
    public required FlashSupport Support { get; init; }

    /// <summary>Label of the tee whose open socket takes its clamp; none where the frame does not carry it.</summary>
    public string? CradleJoint { get; init; }

    /// <summary>Why the frame does not carry it; none where it does, or where it lies on the ground.</summary>
    public CradleFault? Fault { get; init; }

    /// <summary>Moves after which the frame would carry it, the least first; none where it does, or where no single move helps.</summary>
    public IReadOnlyList<CradleMove> Moves { get; init; } = [];
}
