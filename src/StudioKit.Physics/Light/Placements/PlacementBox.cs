using System.Collections.Concurrent;
using StudioKit.Physics.Light.Checks;
using StudioKit.Physics.Light.Solving;

namespace StudioKit.Physics.Light.Placements;

/// <summary>One box that flashes are tried in. Light adds up: each flash's is worked out once, and serves it alone and as one of a pair.</summary>
internal sealed class PlacementBox
{
    private readonly FrameSampleSet _views;
    private readonly LightBox _box;
    private readonly PanelExit _exit;
    private readonly ConcurrentDictionary<Emitter, Lazy<TriedFlash?>> _flashes = new();

    public PlacementBox(LightPanel panel, LightSurround surround, FrameSampleSet views)
    {
        (_views, Surface, _exit) = (views, new PanelSurface(panel), new PanelExit(panel));
        _box = LightBox.At(panel, surround, views.Underside(Surface));
    }

    public PanelSurface Surface { get; }

    /// <summary>Margins of the darkest and the brightest point that each framing sees [stops]; none where a flash stands where it cannot.</summary>
    /// <param name="emitters">The flashes at work.</param>
    /// <param name="isWhole">Whether all points are looked at, or only the outlines of the framings.</param>
    public (double Darkest, double Brightest)[]? Margins(IReadOnlyList<Emitter> emitters, bool isWhole)
    {
        TriedFlash?[] flashes = [.. emitters.Select(emitter => _flashes.GetOrAdd(emitter, one => new(() => Tried(one))).Value)];
        if (flashes.Any(flash => flash is null))
        {
            return null;
        }

        UnitLight[] units = [.. flashes.Select(flash => isWhole ? flash!.Whole.Value : flash!.Outline)];
        return _views.Margins(PointLight.Of(units, [.. emitters.Select(emitter => emitter.AxialIntensityTime)]), emitters, Surface, _exit);
    }

    private TriedFlash? Tried(Emitter emitter)
    {
        if (SceneCheck.Problems(_box.Panel, _box.Surround, [emitter]).Count > 0)
        {
            return null;
        }

        var flash = _box.Try(emitter);
        return new TriedFlash(flash.At(_views.OutlineCount), new(() => flash.At(_views.Count)));
    }

    private sealed record TriedFlash(UnitLight Outline, Lazy<UnitLight> Whole);
}
