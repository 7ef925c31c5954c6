using StudioKit.Web.Engine.Telling;
using StudioKit.Web.Results;

namespace StudioKit.Web.Engine;

/// <summary>Previews of planned kits whose studio is being moved.</summary>
/// <param name="kits">The kits.</param>
internal sealed class Previews(PlannedKits kits)
{
    /// <summary>One preview.</summary>
    public PreviewAnswer Answer(PreviewRequest request)
    {
        var none = new PreviewAnswer(request.Hash, null, null);
        if (kits.Find(request.Hash) is not { } kit || kit.Light(request.SetUp) is not { } light)
        {
            return none;
        }

        var handles = StudioHandles.Of(kit.Plan.Kit, light, StudioTelling.PlaceOf(kit.Plan.Kit, light)).ToList();
        var changes = request.Moves.Select(move => handles.Find(handle => handle.Told.Key == move.Key)?.Moved(move.Value)).ToList();
        return !changes.Contains(null) && kit.Preview.Of(request.SetUp, request.Framing, [.. changes.Select(change => change!)], DialTelling.Power(kit.Plan.Kit, light, request.Mark)) is { } preview
            ? new PreviewAnswer(request.Hash, StudioTelling.Of(preview.Kit, preview.Light), CardTelling.Of(preview.Exposure))
            : none;
    }
}
