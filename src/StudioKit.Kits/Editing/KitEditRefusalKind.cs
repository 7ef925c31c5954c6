namespace StudioKit.Kits.Editing;

/// <summary>Why a kit's text was left as it is.</summary>
public enum KitEditRefusalKind
{
    /// <summary>The text is no well-formed YAML, or no text, or too large.</summary>
    Unreadable,

    /// <summary>A line is indented with a tab.</summary>
    Tab,

    /// <summary>The file holds several documents.</summary>
    SeveralDocuments,

    /// <summary>The place holds an alias, an anchor or a tag, or lies in one that does.</summary>
    AliasOrAnchor,

    /// <summary>The section merges another in.</summary>
    MergeKey,

    /// <summary>The key stands twice in its section.</summary>
    RepeatedKey,

    /// <summary>The path is none, or leads nowhere.</summary>
    NoSuchPlace,

    /// <summary>The section knows no such key.</summary>
    UnknownKey,

    /// <summary>There is no value to write.</summary>
    NoValue,

    /// <summary>The value holds a line break, a control character or half a character.</summary>
    UnwritableCharacter,

    /// <summary>The change would alter more than what was asked for, or lose a comment.</summary>
    WouldAlterMore,
}
