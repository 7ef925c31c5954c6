namespace StudioKit.Sheets.Layout;

/// <summary>Which sides of the paper a document is printed on.</summary>
internal enum PrintedSides
{
    /// <summary>The front alone.</summary>
    One,

    /// <summary>Both, the paper turned over its long edge, as the leaves of an upright book are.</summary>
    BothOverLongEdge,

    /// <summary>Both, the paper turned over its short edge, as leaves that lie across are.</summary>
    BothOverShortEdge,
}
