namespace StudioKit.Physics.Structure.Uprights;

/// <summary>What the poles of an upright sheet stand in.</summary>
public enum UprightFooting
{
    /// <summary>Their own ends, driven into the ground.</summary>
    Stakes,

    /// <summary>Feet of pipe that lie on the ground along the view, the pole in a tee in the middle of each.</summary>
    Feet,

    /// <summary>Clips on the back rail of a frame, and on a bar across its back legs under it.</summary>
    Frame,
}
