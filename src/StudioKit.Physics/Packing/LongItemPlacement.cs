namespace StudioKit.Physics.Packing;

/// <summary>Where a long thing goes.</summary>
public enum LongItemPlacement
{
    /// <summary>Inside, along the bag.</summary>
    AlongBag,

    /// <summary>Inside, from corner to corner of the back.</summary>
    CornerToCorner,

    /// <summary>Strapped outside.</summary>
    StrappedOutside,
}
