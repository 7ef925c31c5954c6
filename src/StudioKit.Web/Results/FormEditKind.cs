namespace StudioKit.Web.Results;

/// <summary>What a form does to a kit's text.</summary>
public enum FormEditKind
{
    /// <summary>Write a value.</summary>
    Write,

    /// <summary>Take a key or an entry away.</summary>
    Remove,

    /// <summary>Add an entry to a list.</summary>
    Add,

    /// <summary>Move an entry of a list.</summary>
    Move,
}
