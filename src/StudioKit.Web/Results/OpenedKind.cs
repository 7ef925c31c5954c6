namespace StudioKit.Web.Results;

/// <summary>What a file is that somebody opens.</summary>
public enum OpenedKind
{
    /// <summary>A kit, or what is to be one: its reader says what is wrong with it.</summary>
    Kit,

    /// <summary>A part that kits name: it says where its figures come from.</summary>
    Part,

    /// <summary>A part where a kit names it, else what is to be a kit.</summary>
    Unsure,

    /// <summary>Corrections that were measured for a kit.</summary>
    Correction,
}
