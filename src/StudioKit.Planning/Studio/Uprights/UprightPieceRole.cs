namespace StudioKit.Planning.Studio.Uprights;

/// <summary>What a piece of pipe does for an upright sheet.</summary>
public enum UprightPieceRole
{
    /// <summary>A pole at the sheet's side, or a part of one.</summary>
    Pole,

    /// <summary>Half a foot, before or behind its pole.</summary>
    HalfFoot,

    /// <summary>The bar across the back legs of the frame.</summary>
    Bar,
}
