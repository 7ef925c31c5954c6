using StudioKit.Physics.Light.Obstacles;
using UnitsNet;

namespace StudioKit.Physics.Light;

/// <summary>What surrounds the light under the panel: ground, skirts and frame; equal where all of it is.</summary>
public sealed record LightSurround
{
    /// <summary>Diffuse reflectance of the ground or of the cloth on it [1]; 0 to 0.99.</summary>
    public double FloorReflectance { get; init; } = 0.1;

    /// <summary>Diffuse reflectance of the skirts that close the space under the panel [1]; 0 to 0.99; none where it is open.</summary>
    public double? SkirtReflectance { get; init; }

    /// <summary>Ground under an upright sheet; none for one that lies over it.</summary>
    public GroundBeside? Ground { get; init; }

    /// <summary>How far lit ground reaches beyond the panel where there are no skirts; the panel's height unless given, and never more than about one panel side.</summary>
    public Length? OpenFloorMargin { get; init; }

    /// <summary>Frame members and other fixed black bodies.</summary>
    public ValueList<Obstacle> Frame { get; init; } = [];
}
