namespace StudioKit.Writing;

/// <summary>What stands at a name once links are followed.</summary>
internal enum FileKind
{
    /// <summary>Nothing, or a link that leads nowhere.</summary>
    Nothing,

    /// <summary>An ordinary file.</summary>
    File,

    /// <summary>A folder.</summary>
    Folder,

    /// <summary>A device, pipe or socket: no place to keep anything.</summary>
    Other,
}
