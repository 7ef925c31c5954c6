using System.Runtime.InteropServices.JavaScript;
using System.Runtime.Versioning;

namespace StudioKit.Web.Editing;

/// <summary>What only a script can do for editing: keys of the whole page, and places in a text.</summary>
[SupportedOSPlatform("browser")]
internal static partial class EditingScripts
{
    private const string Module = "editing";

    private static readonly Lazy<Task> Loaded = PageScript.Of(Module);

    /// <summary>Listens for the keys that take a change back (false) and make it again (true), outside of fields.</summary>
    public static async Task ListenAsync(Action<bool> pressed)
    {
        await Loaded.Value;
        Listen(pressed);
    }

    /// <summary>Lets a text's line numbers follow it, and puts nothing in that is more than a kit may hold.</summary>
    /// <param name="id">Id of the text.</param>
    /// <param name="refused">Told with each input whether it was too much.</param>
    public static async Task FollowAsync(string id, Action<bool> refused)
    {
        await Loaded.Value;
        Follow(id, refused);
    }

    /// <summary>Puts the caret at a line and column, counted from 1.</summary>
    public static async Task GoToAsync(string id, int line, int column)
    {
        await Loaded.Value;
        GoTo(id, line, column);
    }

    /// <summary>Takes the field, list or group of a path in hand, and brings it into sight.</summary>
    /// <returns>Whether it is there.</returns>
    public static async Task<bool> TakeAsync(string path)
    {
        await Loaded.Value;
        return Take(path);
    }

    [JSImport("take", Module)]
    private static partial bool Take(string path);

    [JSImport("listen", Module)]
    private static partial void Listen([JSMarshalAs<JSType.Function<JSType.Boolean>>] Action<bool> pressed);

    [JSImport("follow", Module)]
    private static partial void Follow(string id, [JSMarshalAs<JSType.Function<JSType.Boolean>>] Action<bool> refused);

    [JSImport("goTo", Module)]
    private static partial void GoTo(string id, int line, int column);
}
