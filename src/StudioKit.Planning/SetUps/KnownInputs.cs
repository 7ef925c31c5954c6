using StudioKit.Kits;
using StudioKit.Kits.Lighting;
using StudioKit.Kits.SetUps;
using StudioKit.Physics.Exposure;
using StudioKit.Planning.Studio.Lights;

namespace StudioKit.Planning.SetUps;

/// <summary>How well the inputs of the light account are known: what the kit writes after <c>±</c>, else what is usual for the kind.</summary>
/// <remarks>An amount after <c>±</c> is taken as one standard deviation, as the usual figures are.</remarks>
/// <param name="kit">The kit.</param>
/// <param name="written">Uncertainties by the path of their value.</param>
internal sealed class KnownInputs(KitSpec kit, IReadOnlyDictionary<string, Uncertainty> written)
{
    // Ambient light that was looked up or guessed and not metered (common practice, no source).
    private static readonly Stops UnmeteredAmbient = new(1);

    /// <summary>How well the inputs of one set-up are known.</summary>
    public KnownSetUp Of(SetUpSpec setUp) => new([.. setUp.Lights.Select((light, place) => Of(setUp, light, place))], Ambient(setUp));

    private LightUncertainty Of(SetUpSpec setUp, LightSpec light, int place)
    {
        var usual = LightUncertainty.Usual;
        var flash = LightingCases.FlashOf(kit, light);
        return usual with
        {
            GuideNumber = Stops(GuideNumberPath(flash, light), 1, power: 2) ?? usual.GuideNumber,
            Outdoor = Stops("site.outdoor-correction", 1) ?? usual.Outdoor,
            Modifier = Modifier(light) ?? usual.Modifier,
            DistanceShare = Share($"{PathOf(setUp)}.lights[{place}].distance", light.Distance.Meters) ?? usual.DistanceShare,
            TransmittanceShare = Share("panel.transmittance", kit.Panel.Transmittance) ?? usual.TransmittanceShare,
            ClipPoint = Stops("camera.clip-point", 1) ?? usual.ClipPoint,
        };
    }

    private Stops Ambient(SetUpSpec setUp) =>
        Stops(setUp.Ambient is null ? "site.ambient" : $"{PathOf(setUp)}.ambient", 1) ?? UnmeteredAmbient;

    private Stops? Modifier(LightSpec light)
    {
        if (kit.Modifiers.FirstOrDefault(modifier => modifier.Name == light.Modifier) is not { } modifier)
        {
            return null;
        }

        var path = $"modifiers[{IndexOf(kit.Modifiers, other => other.Name == modifier.Name)}]";
        if (modifier.Loss is not null)
        {
            return Stops($"{path}.loss", 1);
        }

        // The shape of its beam stays a guess, however well the transmittance is known.
        return Stops($"{path}.transmittance", modifier.Transmittance) is { } known
            ? new Stops(double.Hypot(known.Value, LightUncertainty.Usual.Modifier.Value))
            : null;
    }

    private string GuideNumberPath(FlashSpec flash, LightSpec light)
    {
        var path = $"flashes[{IndexOf(kit.Flashes, other => other.Name == flash.Name)}]";
        var zoom = LightingCases.ZoomOf(flash, light);
        for (var i = 0; zoom is not null && i < flash.Zooms.Count; i++)
        {
            if (flash.Zooms[i].Zoom?.Meters == zoom?.Meters)
            {
                return $"{path}.zooms[{i}]";
            }
        }

        return $"{path}.guide-number";
    }

    private string PathOf(SetUpSpec setUp) => $"set-ups[{IndexOf(kit.SetUps, other => other.Name == setUp.Name)}]";

    private Stops? Stops(string path, double value, int power = 1) => written.TryGetValue(path, out var known)
        ? new Stops(UncertaintyInStops.Of(known, value, power))
        : null;

    private double? Share(string path, double value) => written.TryGetValue(path, out var known)
        ? Math.Min(1, known.Kind switch
        {
            UncertaintyKind.InStops => Math.Pow(2, Math.Min(1, known.Amount)) - 1,
            UncertaintyKind.Relative => known.Amount,
            _ => known.Amount / value,
        })
        : null;

    private static int IndexOf<T>(IReadOnlyList<T> list, Func<T, bool> isIt)
    {
        for (var i = 0; i < list.Count; i++)
        {
            if (isIt(list[i]))
            {
                return i;
            }
        }

        return -1;
    }
}
