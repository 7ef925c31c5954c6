namespace StudioKit.Web.Tests;

/// <summary>The system's Chromium.</summary>
internal static class Browser
{
    /// <summary>Where CI says that a missing browser is a failure and no reason to skip.</summary>
    public const string RequiredBy = "STUDIOKIT_BROWSER";

    private static readonly string[] Places = ["/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome"];

    /// <summary>Switches for a browser that runs alone, without a screen and without a network of its own.</summary>
    public static IReadOnlyList<string> Switches { get; } =
    [
        "--no-sandbox", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync", "--use-gl=angle", "--use-angle=swiftshader",
        "--enable-unsafe-swiftshader",
    ];

    /// <summary>Its program; none where it is not installed.</summary>
    public static string? Program { get; } = Places.FirstOrDefault(File.Exists);

    /// <summary>Whether tests without a browser must fail.</summary>
    public static bool IsRequired => Environment.GetEnvironmentVariable(RequiredBy) == "required";
}
