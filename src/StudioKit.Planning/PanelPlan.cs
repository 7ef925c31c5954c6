using StudioKit.Physics.Packing;
using UnitsNet;

namespace StudioKit.Planning;

/// <summary>The panel: how big it must be and how big it is.</summary>
public sealed record PanelPlan
{
    // A sheet too short for its sweep fails the check of its size; what is left flat of it is at least where the subject stands.
    private static readonly Length LeastFlat = Length.FromMillimeters(50);

    /// <summary>No sheet at all.</summary>
    public static PanelPlan None { get; } = new()
    {
        RequiredWidth = Length.Zero,
        RequiredDepth = Length.Zero,
        Width = Length.Zero,
        Depth = Length.Zero,
        SizeGiven = false,
        SubjectFromFront = Length.Zero,
        Material = "",
        Thickness = Length.Zero,
        Mass = Mass.Zero,
        MassOrigin = MassOrigin.FromGeometry,
    };

    /// <summary>Width that the framings need, margins and all.</summary>
    public required Length RequiredWidth { get; init; }

    /// <summary>Depth that the framings need, margins and all.</summary>
    public required Length RequiredDepth { get; init; }

    /// <summary>Width to cut: the kit's own, or the required one rounded up.</summary>
    public required Length Width { get; init; }

    /// <summary>Depth to cut.</summary>
    public required Length Depth { get; init; }

    /// <summary>Whether the kit gives the size.</summary>
    public required bool SizeGiven { get; init; }

    /// <summary>Name of the framing that asks for most; none where no framing sees the panel.</summary>
    public string? LargestFraming { get; init; }

    /// <summary>Camera pitch that asks for most.</summary>
    public Angle? LargestPitch { get; init; }

    /// <summary>Where the subject's foot stands, from the front edge.</summary>
    public required Length SubjectFromFront { get; init; }

    /// <summary>Radius of the swept back; none for a flat panel.</summary>
    public Length? SweepRadius { get; init; }

    /// <summary>Length of the swept part along the sheet; zero for a flat panel.</summary>
    public Length SweptLength { get; init; }

    /// <summary>Flat part along the camera's view.</summary>
    public Length FlatDepth => UnitMath.Max(Depth - SweptLength, LeastFlat);

    /// <summary>Framings, each with its camera pitch, behind which no panel reaches: they look up over it.</summary>
    public IReadOnlyList<string> Unfilled { get; init; } = [];

    /// <summary>Least angle of the line of sight under the horizontal, in whole degrees, from which on a flat panel fills every frame; none where one does at the kit's angles, or at none.</summary>
    public Angle? FlatFrom { get; init; }

    /// <summary>Material.</summary>
    public required string Material { get; init; }

    /// <summary>Thickness.</summary>
    public required Length Thickness { get; init; }

    /// <summary>Mass.</summary>
    public required Mass Mass { get; init; }

    /// <summary>Where the mass comes from.</summary>
    public required MassOrigin MassOrigin { get; init; }

    /// <summary>Limits of the theory that the reader must know.</summary>
    public IReadOnlyList<string> Caveats { get; init; } = [];
}
