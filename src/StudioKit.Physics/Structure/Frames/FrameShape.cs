namespace StudioKit.Physics.Structure.Frames;

/// <summary>Shapes of frame that can be generated.</summary>
public enum FrameShape
{
    /// <summary>Top rails on four removable legs.</summary>
    Table,

    /// <summary>A table whose sheet sweeps up to a rail between two rear posts.</summary>
    SweptTable,

    /// <summary>Rails on stub legs or flat on the ground.</summary>
    LowGround,
}
