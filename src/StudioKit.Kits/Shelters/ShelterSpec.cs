using UnitsNet;

namespace StudioKit.Kits.Shelters;

/// <summary>Something carried that is put up against sun or wind.</summary>
/// <example><code language="yaml">
/// shelters:
///   - {name: white umbrella, kind: umbrella, size: 1.1 m x 1.1 m, held: yes, mass: 420 g}
///   - {name: reed screen, kind: wind-break, size: 3 m x 1.2 m, porosity: 35 %}
/// </code></example>
public sealed record ShelterSpec
{
    /// <summary>Name on the cards and the pack list; unique among the shelters.</summary>
    public required string Name { get; init; }

    /// <summary>What it is.</summary>
    public required ShelterKind Kind { get; init; }

    /// <summary>Width; for an umbrella its diameter, for a wind-break its length along the ground.</summary>
    public required Length Width { get; init; }

    /// <summary>Depth of a shade, height of a wind-break.</summary>
    public required Length Height { get; init; }

    /// <summary>Share of the light that comes through a shade, as measured; none where it was not.</summary>
    public double? Measured { get; init; }

    /// <summary>Share of the light that comes through a shade [1]; usual for its kind where it was not measured (common practice, no source).</summary>
    public double Transmittance => Measured ?? (Kind == ShelterKind.ShadeCloth ? 0.5 : 0.1);

    /// <summary>Share of holes in a wind-break [1]; 0 to 1.</summary>
    public double Porosity { get; init; } = 0.35;

    /// <summary>From the subject to it: up for a shade, windward for a wind-break; usual where the kit gives none.</summary>
    public Length? Distance { get; init; }

    /// <summary>From the subject to it, given or usual (common practice, no source).</summary>
    public Length Away => Distance ?? (Shades ? Length.FromCentimeters(80) : Length.FromMeters(1.5));

    /// <summary>Whether a hand holds it; else it stands.</summary>
    public bool Held { get; init; }

    /// <summary>Highest wind that it stands or is held in, as a mean; usual for its kind where the kit gives none.</summary>
    public Speed? Rated { get; init; }

    /// <summary>Highest wind for it, given or usual: a light breeze for a shade, a fresh one for a wind-break (common practice, no source).</summary>
    public Speed HighestWind => Rated ?? Speed.FromMetersPerSecond(Shades ? 5.4 : 10.7);

    /// <summary>Mass; usual for its kind where the kit gives none.</summary>
    public Mass? Mass { get; init; }

    /// <summary>Longest side as it is packed; with the next two the file's <c>packed: 600 mm x 60 mm x 60 mm</c>.</summary>
    public Length? PackedLength { get; init; }

    /// <summary>Second side as it is packed.</summary>
    public Length? PackedWidth { get; init; }

    /// <summary>Third side as it is packed.</summary>
    public Length? PackedDepth { get; init; }

    /// <summary>Price where it is to be bought; on hand where the kit gives none.</summary>
    public decimal? Price { get; init; }

    /// <summary>Whether it takes away light.</summary>
    public bool Shades => Kind != ShelterKind.WindBreak;
}
