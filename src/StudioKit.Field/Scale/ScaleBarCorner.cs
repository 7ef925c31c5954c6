namespace StudioKit.Field.Scale;

/// <summary>Corner of the picture, as seen, that the scale bar goes to.</summary>
public enum ScaleBarCorner
{
    /// <summary>Bottom right.</summary>
    BottomRight,

    /// <summary>Bottom left.</summary>
    BottomLeft,

    /// <summary>Top right.</summary>
    TopRight,

    /// <summary>Top left.</summary>
    TopLeft,
}
