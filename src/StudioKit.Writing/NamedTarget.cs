namespace StudioKit.Writing;

/// <summary>A target with its full name.</summary>
/// <param name="Target">As the user gave it.</param>
/// <param name="Full">Its full name.</param>
internal readonly record struct NamedTarget(FileTarget Target, string Full)
{
    /// <summary>Full name of its folder.</summary>
    public string Folder => Path.GetDirectoryName(Full)!;

    /// <summary>Name of its folder for the user.</summary>
    public string ShownFolder => Path.GetDirectoryName(Target.Path) is { Length: > 0 } folder ? folder : ".";
}
