namespace StudioKit.Web.Results;

/// <summary>How a field is filled in.</summary>
public enum FormLineKind
{
    /// <summary>By typing words or a value with its unit.</summary>
    Typed,

    /// <summary>By choosing one of a few words.</summary>
    Chosen,

    /// <summary>By choosing a part of the library.</summary>
    Part,
}
