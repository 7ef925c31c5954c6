using System.Runtime.InteropServices.JavaScript;
using System.Runtime.Versioning;

namespace StudioKit.Web;

/// <summary>A script of the page, by the name of its file.</summary>
[SupportedOSPlatform("browser")]
internal static class PageScript
{
    /// <summary>Loads a script when it is first asked for.</summary>
    /// <param name="module">Name of its file without the ending, and of its module.</param>
    public static Lazy<Task> Of(string module) => new(() => JSHost.ImportAsync(module, $"../js/{module}.js"));
}
