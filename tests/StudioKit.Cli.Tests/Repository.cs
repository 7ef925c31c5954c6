namespace StudioKit.Cli.Tests;

/// <summary>Files of the repository that tests read.</summary>
internal static class Repository
{
    /// <summary>A demo kit.</summary>
    public static string Kit(string name) => Path.Combine(Root(), "kits", name);

    private static string Root()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "StudioKit.sln")))
        {
            folder = folder.Parent ?? throw new InvalidOperationException("The tests do not run inside the repository.");
        }

        return folder.FullName;
    }
}
