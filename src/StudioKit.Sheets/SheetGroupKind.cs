namespace StudioKit.Sheets;

/// <summary>What a group of files is.</summary>
public enum SheetGroupKind
{
    /// <summary>Cards to carry.</summary>
    Cards,

    /// <summary>A document on paper.</summary>
    Document,

    /// <summary>Drawings.</summary>
    Drawings,

    /// <summary>Tables for a spreadsheet.</summary>
    Tables,
}
