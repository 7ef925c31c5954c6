namespace StudioKit.Sheets.Layout;

/// <summary>What stands before an item of a list.</summary>
internal enum ItemMarker
{
    /// <summary>A dot.</summary>
    Dot,

    /// <summary>An empty box to tick.</summary>
    TickBox,

    /// <summary>The item's number.</summary>
    Number,
}
