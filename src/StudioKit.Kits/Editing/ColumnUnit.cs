namespace StudioKit.Kits.Editing;

/// <summary>What columns of a line are counted in.</summary>
public enum ColumnUnit
{
    /// <summary>UTF-16 code units, as every diagnostic counts: one for most characters, two for those beyond the basic plane.</summary>
    CodeUnits,

    /// <summary>Characters of Unicode, whatever their width; a combining mark is one of its own.</summary>
    Characters,

    /// <summary>Bytes of UTF-8.</summary>
    Bytes,
}
