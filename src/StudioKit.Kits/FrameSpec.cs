using UnitsNet;

namespace StudioKit.Kits;

/// <summary>The pipe frame that carries the panel.</summary>
public sealed record FrameSpec
{
    /// <summary>Shape of the frame.</summary>
    public FrameKind Kind { get; init; } = FrameKind.Table;

    /// <summary>Ground to the panel's underside.</summary>
    public Length Height { get; init; } = Length.FromMillimeters(500);

    /// <summary>The pipe it is made of.</summary>
    public PipeSpec Pipe { get; init; } = new();

    /// <summary>The fittings that join it.</summary>
    public FittingsSpec Fittings { get; init; } = new();

    /// <summary>How far short of its socket's bottom a dry push fit stops.</summary>
    public Length InsertionGap { get; init; } = Length.FromMillimeters(0);

    /// <summary>Longest piece allowed; the pack's inside length where the kit gives none.</summary>
    public Length? LongestPiece { get; init; }

    /// <summary>Mass as weighed; from geometry and density where the kit gives none.</summary>
    public Mass? Mass { get; init; }
}
