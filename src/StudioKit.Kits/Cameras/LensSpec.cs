using StudioKit.Physics;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Optics;
using UnitsNet;

namespace StudioKit.Kits.Cameras;

/// <summary>A lens and the magnifications it is used at.</summary>
public sealed record LensSpec
{
    /// <summary>Name on the sheets; unique among the lenses.</summary>
    public required string Name { get; init; }

    /// <summary>Focal length at infinity focus.</summary>
    public required Length FocalLength { get; init; }

    /// <summary>How it focuses.</summary>
    public LensFocusing Focusing { get; init; } = LensFocusing.Unit;

    /// <summary>Widest aperture; with <see cref="SmallestAperture"/> the file's <c>aperture: f/2.8 to f/32</c>.</summary>
    public FNumber WidestAperture { get; init; } = new(2.8);

    /// <summary>Smallest aperture.</summary>
    public FNumber SmallestAperture { get; init; } = new(22);

    /// <summary>Greatest magnification by its own focusing, without accessories.</summary>
    public Magnification LargestMagnification { get; init; } = new(1);

    /// <summary>
    /// Subject to sensor at closest focus; with <see cref="LargestMagnification"/> it tells where the principal planes lie, or how far the lens shortens.
    /// </summary>
    public Length? ClosestFocus { get; init; }

    /// <summary>Exit over entrance pupil diameter (pupil magnification) [1]; &gt; 0, none where it was not given.</summary>
    public double? PupilRatio { get; init; }

    /// <summary>Outside diameter of its front, hood and all (common practice, no source).</summary>
    public Length FrontDiameter { get; init; } = UnitsNet.Length.FromMillimeters(65);

    /// <summary>How far a hood stands before the front glass.</summary>
    public Length Hood { get; init; } = UnitsNet.Length.Zero;

    /// <summary>Front glass to mount at infinity focus.</summary>
    public Length? Length { get; init; }

    /// <summary>Whether the lens is mounted back to front by a reversing ring.</summary>
    public bool Reversed { get; init; }

    /// <summary>Magnifications wanted with it, e.g. <c>[1:2, 1:1]</c>; its own largest where none are named.</summary>
    public ValueList<Magnification> Magnifications { get; init; } = [];

    /// <summary>Mass; none where it was not given.</summary>
    public Mass? Mass { get; init; }
}
