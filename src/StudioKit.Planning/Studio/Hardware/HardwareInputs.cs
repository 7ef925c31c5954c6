using StudioKit.Kits;
using StudioKit.Physics.Structure.Frames;
using UnitsNet;

namespace StudioKit.Planning.Studio.Hardware;

/// <summary>What the small parts of a studio follow from.</summary>
internal sealed record HardwareInputs
{
    /// <summary>The kit.</summary>
    public required KitSpec Kit { get; init; }

    /// <summary>Its panel.</summary>
    public required PanelPlan Panel { get; init; }

    /// <summary>The frame; none where none is built.</summary>
    public FrameResult? Frame { get; init; }

    /// <summary>Flashes under the panel.</summary>
    public IReadOnlyList<FlashBelow> LowerFlashes { get; init; } = [];

    /// <summary>Softboxes that are folded.</summary>
    public IReadOnlyList<FoldedSoftbox> Softboxes { get; init; } = [];

    /// <summary>Every flat piece.</summary>
    public IReadOnlyList<SheetPart> Parts { get; init; } = [];

    /// <summary>Holders that are built.</summary>
    public IReadOnlyList<BuiltHolder> Holders { get; init; } = [];

    /// <summary>What holds the upright sheets.</summary>
    public IReadOnlyList<UprightStandPlan> Uprights { get; init; } = [];

    /// <summary>Outside diameter of the pipe.</summary>
    public Length Pipe => Kit.Frame.Pipe.OutsideDiameter;

    /// <summary>Inside diameter of the pipe.</summary>
    public Length Bore => Kit.Frame.Pipe.OutsideDiameter - (2 * Kit.Frame.Pipe.Wall);
}
