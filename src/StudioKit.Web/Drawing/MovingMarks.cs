using System.Runtime.InteropServices.JavaScript;
using System.Runtime.Versioning;
using System.Text.Json;
using StudioKit.Web.Results;

namespace StudioKit.Web.Drawing;

/// <summary>Follows the hand that moves marks of a drawing.</summary>
[SupportedOSPlatform("browser")]
internal static partial class MovingMarks
{
    private const string Module = "moving";

    private static readonly Lazy<Task> Loaded = PageScript.Of(Module);

    /// <summary>Tells what happens to a drawing's marks from now on; once for each drawing.</summary>
    /// <param name="drawing">Id of the drawing.</param>
    /// <param name="moved">Told what is moved to where, and whether the hand has let go, or taken it back.</param>
    public static async Task FollowAsync(string drawing, Action<MovePhase, IReadOnlyList<HandleMove>> moved)
    {
        await Loaded.Value;
        Follow(drawing, (phase, moves) => moved(PhaseOf(phase), JsonSerializer.Deserialize(moves, ResultsJson.Default.IReadOnlyListHandleMove) ?? []));
    }

    /// <summary>Puts marks that were moved, and are in no hand, back where they are drawn.</summary>
    /// <param name="drawing">Id of the drawing.</param>
    public static async Task SettleAsync(string drawing)
    {
        await Loaded.Value;
        Settle(drawing);
    }

    private static MovePhase PhaseOf(string phase) => phase switch
    {
        "drop" => MovePhase.Dropped,
        "cancel" => MovePhase.TakenBack,
        _ => MovePhase.Moving,
    };

    [JSImport("follow", Module)]
    private static partial void Follow(string drawing, [JSMarshalAs<JSType.Function<JSType.String, JSType.String>>] Action<string, string> tell);

    [JSImport("settle", Module)]
    private static partial void Settle(string drawing);
}
