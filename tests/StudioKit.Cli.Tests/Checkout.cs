namespace StudioKit.Cli.Tests;

/// <summary>Files of the checkout that the tests were built from.</summary>
internal static class Checkout
{
    public static string Kit(string name) => Path.Combine(Root(), "kits", name);

    public static string Root()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "StudioKit.sln")))
        {
            folder = folder.Parent;
        }

        return folder?.FullName ?? throw new InvalidOperationException("The tests run outside a checkout.");
    }
}
