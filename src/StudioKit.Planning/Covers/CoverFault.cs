namespace StudioKit.Planning.Covers;

/// <summary>What spoils a picture taken through a cover.</summary>
public enum CoverFault
{
    /// <summary>A flash shows in a wall, over the subject or on a background that is not white.</summary>
    Reflection,

    /// <summary>The wall stands where the front of the lens would have to be.</summary>
    NoRoom,

    /// <summary>Wall or water draw the subject apart by more than is sharp.</summary>
    Astigmatism,

    /// <summary>The line of sight meets the water's edge.</summary>
    WaterEdge,

    /// <summary>The tank's bottom is a mirror, so that no sheet shows behind the subject.</summary>
    BottomMirrors,

    /// <summary>The wall's foot crosses the frame.</summary>
    FootInFrame,
}
