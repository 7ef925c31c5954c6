namespace StudioKit.Kits.Studio;

/// <summary>Shape of the frame.</summary>
public enum FrameKind
{
    /// <summary>A four-leg table with removable legs.</summary>
    Table,

    /// <summary>A table whose sheet sweeps up at the back.</summary>
    SweptTable,

    /// <summary>A low frame that rests on the ground.</summary>
    LowGround,
}
