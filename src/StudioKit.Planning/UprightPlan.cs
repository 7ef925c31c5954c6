using StudioKit.Kits.Uprights;
using StudioKit.Physics;
using StudioKit.Physics.Packing;
using StudioKit.Planning.Studio.Uprights;
using UnitsNet;

namespace StudioKit.Planning;

/// <summary>A sheet that stands behind the subject: how big it must be, how big it is, and where it stands.</summary>
public sealed record UprightPlan
{
    /// <summary>Name of the upright sheet.</summary>
    public required string Name { get; init; }

    /// <summary>What holds it.</summary>
    public required UprightCarrier Carrier { get; init; }

    /// <summary>Width that the framings need, margins and all; zero where none looks at it.</summary>
    public required Length RequiredWidth { get; init; }

    /// <summary>Height from its lower edge that the framings need, margin and all; zero where none looks at it.</summary>
    public required Length RequiredHeight { get; init; }

    /// <summary>Width to cut: the kit's own, or the required one rounded up.</summary>
    public required Length Width { get; init; }

    /// <summary>Height to cut, along the sheet.</summary>
    public required Length Height { get; init; }

    /// <summary>Whether the kit gives the size.</summary>
    public required bool SizeGiven { get; init; }

    /// <summary>Lower edge over the ground, or over the panel where the frame carries it.</summary>
    public required Length LowerEdge { get; init; }

    /// <summary>How far its top leans away from the camera.</summary>
    public required Angle Lean { get; init; }

    /// <summary>Where it stands in each of its set-ups.</summary>
    public required ValueList<UprightPlace> Places { get; init; }

    /// <summary>Framing that asks for the largest sheet; none where none looks at it.</summary>
    public string? LargestFraming { get; init; }

    /// <summary>Framings, each with its camera pitch, that see the ground under its lower edge.</summary>
    public ValueList<UprightGap> SeenUnder { get; init; } = [];

    /// <summary>Material.</summary>
    public required string Material { get; init; }

    /// <summary>Thickness.</summary>
    public required Length Thickness { get; init; }

    /// <summary>Mass of the sheet.</summary>
    public required Mass Mass { get; init; }

    /// <summary>Where the mass comes from.</summary>
    public required MassOrigin MassOrigin { get; init; }

    /// <summary>Whether a set-up uses it.</summary>
    public bool IsUsed => Places.Count > 0;

    /// <summary>Height of its upper edge over what its lower edge is counted from.</summary>
    public Length UpperEdge => LowerEdge + (Height * Math.Cos(Lean.Radians));
}
