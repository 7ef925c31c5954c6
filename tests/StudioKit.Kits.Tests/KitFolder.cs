namespace StudioKit.Kits.Tests;

/// <summary>Finds the repository's kits, wherever the tests run.</summary>
internal static class KitFolder
{
    public static string Path { get; } = System.IO.Path.Combine(Root(), "kits");

    private static string Root()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(System.IO.Path.Combine(folder.FullName, "StudioKit.sln")))
        {
            folder = folder.Parent;
        }

        return folder?.FullName ?? throw new InvalidOperationException("The tests run outside the repository.");
    }
}
