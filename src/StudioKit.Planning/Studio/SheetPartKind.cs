namespace StudioKit.Planning.Studio;

/// <summary>What a flat piece is cut for.</summary>
public enum SheetPartKind
{
    /// <summary>The panel.</summary>
    Panel,

    /// <summary>A skirt under the panel's edge.</summary>
    Skirt,

    /// <summary>The folded body of a softbox.</summary>
    SoftboxBody,

    /// <summary>The glowing front of a softbox.</summary>
    SoftboxFront,

    /// <summary>A flat modifier with its flaps.</summary>
    FlatModifier,

    /// <summary>A sheet that stands behind the subject.</summary>
    Upright,
}
