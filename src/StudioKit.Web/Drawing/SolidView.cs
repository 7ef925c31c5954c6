using System.Runtime.InteropServices.JavaScript;
using System.Runtime.Versioning;
using System.Text.Json;
using StudioKit.Web.Results;

namespace StudioKit.Web.Drawing;

/// <summary>Draws a studio in space; its scripts are loaded with the first.</summary>
[SupportedOSPlatform("browser")]
internal static partial class SolidView
{
    private const string Module = "solid";

    private static readonly Lazy<Task> Loaded = PageScript.Of(Module);

    /// <summary>Draws a studio, in place of what was drawn there before.</summary>
    /// <param name="canvas">Id of the canvas.</param>
    /// <param name="picture">The studio.</param>
    public static async Task ShowAsync(string canvas, SolidAnswer picture)
    {
        await Loaded.Value;
        await Show(canvas, JsonSerializer.Serialize(picture, ResultsJson.Default.SolidAnswer));
    }

    [JSImport("show", Module)]
    private static partial Task Show(string canvas, string picture);
}
