using StudioKit.Kits;
using StudioKit.Kits.SetUps;
using StudioKit.Kits.Shelters;
using StudioKit.Physics;
using StudioKit.Physics.Daylight;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Exposure.Metering;
using StudioKit.Physics.Light;
using UnitsNet;

namespace StudioKit.Planning.Sheltering;

/// <summary>What is put up in a set-up, and what it takes of the light on the subject.</summary>
internal static class Shade
{
    // A lower sun is met by a shade that leans, which hides no more of the sky than one moved as far as for this (common practice, no source).
    private static readonly Angle Lowest = Angle.FromDegrees(15);

    /// <summary>What is put up in a set-up.</summary>
    public static IEnumerable<ShelterSpec> Of(KitSpec kit, SetUpSpec setUp) => setUp.Shelters.Select(name => kit.Shelters.FirstOrDefault(shelter => shelter.Name == name)).OfType<ShelterSpec>();

    /// <summary>The same as a plan tells it.</summary>
    public static ValueList<ShelterPlan> Plans(KitSpec kit, SetUpSpec setUp)
    {
        var sun = Share(kit, setUp) > 0 ? PlaceSun.Height(kit, setUp) : null;
        return [.. Of(kit, setUp).Select(shelter => new ShelterPlan(shelter.Name, shelter.Kind, shelter.Held, shelter.Away, shelter.Shades && sun is not null ? Aside(shelter, sun) : null))];
    }

    /// <summary>Stops that the subject loses by it; 0 or more.</summary>
    public static Stops Loss(KitSpec kit, SetUpSpec setUp)
    {
        var shades = Of(kit, setUp).Where(shelter => shelter.Shades).ToList();
        if (shades.Count == 0)
        {
            return default;
        }

        var share = Share(kit, setUp);
        var sun = share > 0 ? PlaceSun.Height(kit, setUp) : null;
        var direct = shades.Aggregate(1.0, (left, shade) => left * SunShare.Left(1, shade.Transmittance, 0));
        var sky = shades.Aggregate(1.0, (left, shade) => left * SunShare.Left(0, shade.Transmittance, Hidden(shade, sun)));
        return new Stops(-Math.Log2(Math.Max(LeastLeft, (share * direct) + ((1 - share) * sky))));
    }

    /// <summary>Says what the loss under a shade is taken for.</summary>
    public static IEnumerable<string> Caveats(KitSpec kit, SetUpSpec setUp) => Of(kit, setUp).Where(shelter => shelter.Shades).Select(shelter => FormattableString.Invariant(
        $"Light under the {shelter.Name} is worked out for an even sky and {100 * Share(kit, setUp):0} % sun, with none thrown back by the ground: meter under it."));

    /// <summary>Share of the sun in the light on the subject in the open [1].</summary>
    public static double Share(KitSpec kit, SetUpSpec setUp) =>
        setUp.SunShare ?? SunShare.Of(setUp.SubjectAmbient ?? setUp.Ambient ?? kit.Site.Ambient, Sky(kit, setUp));

    /// <summary>How far a shade is moved towards the sun so that its shadow falls on the subject.</summary>
    public static Length Aside(ShelterSpec shade, Angle? sun) => sun is { } height ? shade.Away * SunShadow.LengthOverHeight(UnitMath.Max(height, Lowest)) : Length.Zero;

    // What comes through cloth and round it is never nothing, and a kit's text holds no darker light.
    private const double LeastLeft = 1.0 / 4096;

    private static Illuminance Sky(KitSpec kit, SetUpSpec setUp) => PlaceSun.Height(kit, setUp) is { } height
        ? DaylightIlluminance.Clear(UnitMath.Max(height, DaylightIlluminance.Lowest)).Sky
        : LightMeter.IlluminanceOf(SunShare.OpenShade);

    private static double Hidden(ShelterSpec shade, Angle? sun)
    {
        var (aside, up) = (Aside(shade, sun).Meters, shade.Away.Meters);
        return shade.Kind == ShelterKind.Umbrella
            ? ShadeFactor.OfDisc(shade.Width.Meters / 2, up, aside)
            : ShadeFactor.OfRectangle(shade.Width.Meters, shade.Height.Meters, up, aside);
    }
}
