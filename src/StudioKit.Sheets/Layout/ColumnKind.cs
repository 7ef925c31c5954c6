namespace StudioKit.Sheets.Layout;

/// <summary>How the cells of a column stand.</summary>
internal enum ColumnKind
{
    /// <summary>Words, from the left.</summary>
    Text,

    /// <summary>To the right edge.</summary>
    Right,

    /// <summary>Numbers under each other by their decimal points.</summary>
    Decimal,

    /// <summary>An empty box to tick where the cell is not empty.</summary>
    TickBox,
}
