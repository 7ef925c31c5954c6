namespace StudioKit.Kits.Uprights;

/// <summary>What holds a sheet upright.</summary>
public enum UprightCarrier
{
    /// <summary>Two poles at its sides, driven into the ground.</summary>
    Stakes,

    /// <summary>Two poles at its sides, each on a foot of pipe that lies on the ground.</summary>
    Feet,

    /// <summary>Two poles at its sides, in the back of the frame that carries the panel.</summary>
    Frame,
}
