using System.Runtime.InteropServices.JavaScript;
using System.Runtime.Versioning;

namespace StudioKit.Web.Editing;

/// <summary>The editor of a kit's text, which is loaded when a text is first opened.</summary>
[SupportedOSPlatform("browser")]
internal static partial class TextEditor
{
    private const string Module = "text-editor";

    private static readonly Lazy<Task> Loaded = PageScript.Of(Module);

    /// <summary>Opens a text in an element; what is typed is told at each pause.</summary>
    /// <returns>Whether its place was still there.</returns>
    /// <exception cref="JSException">The editor cannot be loaded.</exception>
    public static async Task<bool> OpenAsync(string id, string text, Action<string> typed)
    {
        await Loaded.Value;
        return await Open(id, text, typed);
    }

    /// <summary>Shows another text, unless something is being typed.</summary>
    [JSImport("setText", Module)]
    public static partial void SetText(string text);

    /// <summary>Underlines what is wrong.</summary>
    /// <param name="faults">The faults, as JSON.</param>
    [JSImport("setFaults", Module)]
    public static partial void SetFaults(string faults);

    /// <summary>Puts the caret at a line and column, counted from 1.</summary>
    [JSImport("goTo", Module)]
    public static partial void GoTo(int line, int column);

    [JSImport("open", Module)]
    private static partial Task<bool> Open(string id, string text, [JSMarshalAs<JSType.Function<JSType.String>>] Action<string> typed);
}
