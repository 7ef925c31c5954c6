namespace StudioKit.Planning.Packing;

/// <summary>What to mind of a long thing on its bag.</summary>
public enum LongPieceCaveatKind
{
    /// <summary>It is thicker than the bag is wide.</summary>
    TooThick,

    /// <summary>It sticks out over the bag by more than a tenth.</summary>
    SticksOut,

    /// <summary>It is a sheet larger than the bag's back.</summary>
    LargerThanBack,
}
