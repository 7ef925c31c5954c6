namespace StudioKit.Writing;

/// <summary>What a name leads to.</summary>
/// <param name="Kind">What stands there.</param>
/// <param name="Identity">Which one it is.</param>
internal readonly record struct FilePlace(FileKind Kind, FileIdentity Identity)
{
    /// <summary>Follows a name, links and all. Linux tells device and number; elsewhere the real name stands in, folded in case as their file systems do.</summary>
    public static FilePlace At(string path)
    {
        var full = Path.GetFullPath(path);
        return (OperatingSystem.IsLinux() ? LinuxFile.At(full) : null) ?? ByName(full);
    }

    /// <summary>Whether the name itself is a link.</summary>
    public static bool IsLink(string path) => new FileInfo(path).LinkTarget is not null;

    internal static FilePlace ByName(string path)
    {
        var real = RealPath.Of(path);
        var identity = new FileIdentity(0, 0, OperatingSystem.IsLinux() ? real : real.ToUpperInvariant());
        return new FilePlace(Directory.Exists(real) ? FileKind.Folder : File.Exists(real) ? FileKind.File : FileKind.Nothing, identity);
    }
}
