using UnitsNet;

namespace StudioKit.Physics.Light;

/// <summary>One thing that is wrong with the geometry of a studio.</summary>
/// <param name="Kind">What is wrong.</param>
public sealed record LightProblem(LightProblemKind Kind)
{
    /// <summary>The quantity that has no extent or is out of its range; none of the other kinds.</summary>
    public LightQuantity? Quantity { get; init; }

    /// <summary>What it is [m, or 1]; none of the other kinds, or where it is no number at all.</summary>
    public double? Value { get; init; }

    /// <summary>The least that it may be [m, or 1]; none where no range is given.</summary>
    public double? Lowest { get; init; }

    /// <summary>The most that it may be [m, or 1]; none where no range is given.</summary>
    public double? Highest { get; init; }

    /// <summary>Which flash it is about, counted from 1 in the scene's order [1]; none where it is about none.</summary>
    public int? Flash { get; init; }

    /// <summary>Name of the camera's view that it is about; none where it is about none.</summary>
    public string? View { get; init; }

    /// <summary>How far a flash reaches where it must not; none of the other kinds.</summary>
    public Length? By { get; init; }

    /// <summary>The camera's pitch; none of the other kinds.</summary>
    public Angle? Pitch { get; init; }

    /// <summary>The subject's place right of the panel's middle; none of the other kinds.</summary>
    public Length? Right { get; init; }

    /// <summary>The subject's place back of the panel's middle; none of the other kinds.</summary>
    public Length? Back { get; init; }

    /// <summary>Length of an impossible arc; none of the other kinds.</summary>
    public Length? Arc { get; init; }

    /// <summary>Radius of an impossible arc; none of the other kinds.</summary>
    public Length? Radius { get; init; }
}
