using UnitsNet;

namespace StudioKit.Physics.Light;

/// <summary>Ground at the front edge of a sheet that stands upright, lit by the flash behind the sheet; equal where all of it is.</summary>
/// <remarks>
/// An upright sheet is worked out lying on its back: its front edge is its lower one, its top faces the camera, and the ground runs from under its front edge down behind it,
/// as a wall does.
/// </remarks>
public sealed record GroundBeside
{
    /// <summary>Diffuse reflectance of the ground [1]; 0 to 0.99.</summary>
    public required double Reflectance { get; init; }

    /// <summary>From where the sheet's plane meets the ground to its lower edge, along the sheet; 0 m or more.</summary>
    public Length Under { get; init; } = Length.Zero;

    /// <summary>How far the sheet's top leans over the ground behind it, from upright; 0° to under 90°.</summary>
    public Angle Lean { get; init; } = Angle.Zero;

    /// <summary>How far the ground counts beyond both sides of the sheet; 0 m or more.</summary>
    public Length Beyond { get; init; } = Length.Zero;
}
