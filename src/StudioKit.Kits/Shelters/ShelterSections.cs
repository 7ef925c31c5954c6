using StudioKit.Kits.Description;

namespace StudioKit.Kits.Shelters;

/// <summary>Keys of what is put up against sun and wind.</summary>
internal static class ShelterSections
{
    public static readonly Section<ShelterSpec> Shelter = new Section<ShelterSpec>(
        "shelter", "Something carried that is put up against sun or wind.",
        new() { Name = "", Kind = ShelterKind.Umbrella, Width = UnitsNet.Length.FromMeters(1), Height = UnitsNet.Length.FromMeters(1) }, namedAmong: "shelters")
        .Required("name", "Name on the cards and the pack list; each shelter has its own.").Name((shelter, value) => shelter with { Name = value })
        .Required("kind", "What it is: an umbrella, a cloth stretched over the place, or a screen against the wind.").Choice<ShelterKind>("a kind of shelter", (shelter, value) => shelter with { Kind = value })
        .Required("size", "Its two sides as it is put up, e.g. '1.1 m x 1.1 m'; of a wind-break its length along the ground and its height.", "10 cm", "20 m")
            .Size((shelter, value) => shelter with { Width = value.First, Height = value.Second })
        .Optional("transmittance", "Share of the light that comes through a shade; measure it: meter in the sun with and without it before the meter.", "0", "1")
            .Ratio((shelter, value) => shelter with { Measured = value }, shelter => shelter.Transmittance)
        .Optional("porosity", "Share of holes in a wind-break, e.g. '35 %'; what one sees through it.", "0", "0.95")
            .Ratio((shelter, value) => shelter with { Porosity = value }, shelter => shelter.Porosity)
        .Optional("distance", "From the subject to it: up for a shade, windward for a wind-break.", "5 cm", "100 m")
            .Length((shelter, value) => shelter with { Distance = value }, shelter => shelter.Away)
        .Optional("held", "Whether somebody holds it; else it stands.").YesNo((shelter, value) => shelter with { Held = value }, shelter => shelter.Held)
        .Optional("highest-wind", "Highest mean wind that it stands or is held in, e.g. 'Beaufort 4'.", "0 m/s", "40 m/s")
            .Wind((shelter, value) => shelter with { Rated = value }, shelter => shelter.HighestWind)
        .Optional("mass", "Mass, with what it stands on; else what is usual for its kind.", "10 g", "30 kg").Mass((shelter, value) => shelter with { Mass = value })
        .Optional("packed", "Its three sides as it is packed, e.g. '600 mm x 60 mm x 60 mm'.", "1 cm", "3 m")
            .Box((shelter, value) => shelter with { PackedLength = value.First, PackedWidth = value.Second, PackedDepth = value.Third })
        .Optional("price", "Price where it is to be bought; else it is on hand.", "0", "100000").Price((shelter, value) => shelter with { Price = value })
        .Without(["transmittance"], shelter => !shelter.Shades, "changes nothing: a wind-break stands beside the subject and not over it", "Say how much wind comes through: 'porosity: 35 %'.")
        .Without(["porosity"], shelter => shelter.Shades, "changes nothing: a shade hangs over the subject and stops no wind", "Say how much light comes through: 'transmittance: 10 %'.")
        .Check(NotRound);

    private static Fault? NotRound(ShelterSpec shelter) => shelter.Kind == ShelterKind.Umbrella && shelter.Width.Meters != shelter.Height.Meters
        ? new Fault("size", $"The umbrella '{shelter.Name}' is not round.", "Write its diameter twice: 'size: 1.1 m x 1.1 m', or 'kind: shade-cloth'.")
        : null;
}
