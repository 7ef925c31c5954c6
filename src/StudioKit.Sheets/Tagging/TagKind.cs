namespace StudioKit.Sheets.Tagging;

/// <summary>What a mark on a page is to somebody who is read to.</summary>
internal enum TagKind
{
    /// <summary>Nothing: rules, frames and other ornament, which is not read.</summary>
    Ornament,

    /// <summary>Said on every page: a header or a repeated head of a table, which is not read.</summary>
    Header,

    /// <summary>Said on every page: a footer, which is not read.</summary>
    Footer,

    /// <summary>Outside what is kept of the paper: marks to cut along, which are not read.</summary>
    CutMark,

    /// <summary>Running text.</summary>
    Paragraph,

    /// <summary>A heading of some level.</summary>
    Heading,

    /// <summary>A list.</summary>
    List,

    /// <summary>An item of a list.</summary>
    ListItem,

    /// <summary>What stands before an item.</summary>
    ItemMarker,

    /// <summary>What an item says.</summary>
    ItemText,

    /// <summary>A table.</summary>
    Table,

    /// <summary>A row of a table.</summary>
    Row,

    /// <summary>The head of a column.</summary>
    ColumnHead,

    /// <summary>A cell.</summary>
    Cell,

    /// <summary>A drawn sign within a cell, with words for it.</summary>
    Sign,

    /// <summary>A drawing or a picture, with words for what it shows.</summary>
    Figure,

    /// <summary>What stands under a figure.</summary>
    Caption,

    /// <summary>A table of contents.</summary>
    Contents,

    /// <summary>A line of a table of contents.</summary>
    ContentsItem,

    /// <summary>What leads to another page.</summary>
    Link,
}
