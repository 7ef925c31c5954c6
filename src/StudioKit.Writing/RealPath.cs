namespace StudioKit.Writing;

/// <summary>Names without links in them.</summary>
internal static class RealPath
{
    // A chain longer than this is a loop, as operating systems see it too.
    private const int MostLinks = 40;

    public static string Of(string path) => Of(Path.GetFullPath(path), MostLinks);

    private static string Of(string full, int links)
    {
        var real = Path.GetPathRoot(full)!;
        foreach (var part in full[real.Length..].Split(Path.DirectorySeparatorChar, StringSplitOptions.RemoveEmptyEntries))
        {
            real = Path.Combine(real, part);
            if (links > 0 && new FileInfo(real).ResolveLinkTarget(returnFinalTarget: false) is { } target)
            {
                real = Of(target.FullName, links - 1);
            }
        }

        return real;
    }
}
