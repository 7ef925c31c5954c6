using StudioKit.Kits.Lighting;
using StudioKit.Kits.Shelters;
using StudioKit.Kits.Supports;
using StudioKit.Kits.Triggers;
using UnitsNet;

namespace StudioKit.Planning.Packing;

/// <summary>What things weigh where a kit does not say (common practice, no source); the pack list calls them assumed.</summary>
internal static class UsualMass
{
    public static Mass Camera { get; } = Mass.FromGrams(700);

    public static Mass Lens { get; } = Mass.FromGrams(500);

    public static Mass ExtensionTube { get; } = Mass.FromGrams(70);

    public static Mass CloseUpLens { get; } = Mass.FromGrams(100);

    public static Mass Teleconverter { get; } = Mass.FromGrams(200);

    public static Mass Filter { get; } = Mass.FromGrams(30);

    public static Mass Flash { get; } = Mass.FromGrams(350);

    public static Mass Holder(HolderKind kind) => Mass.FromGrams(kind switch
    {
        HolderKind.Stand => 900,
        HolderKind.Arm => 350,
        HolderKind.Clamp => 250,
        _ => 30,
    });

    public static Mass Modifier { get; } = Mass.FromGrams(60);

    public static Mass Trigger(TriggerKind kind) => Mass.FromGrams(kind switch
    {
        TriggerKind.OpticalCell => 25,
        TriggerKind.Cord => 80,
        _ => 60,
    });

    // Cloth by its area, with ribs, poles and cords.
    public static Mass Shelter(ShelterSpec shelter) => Mass.FromGrams(200 + (shelter.Width.Meters * shelter.Height.Meters * (shelter.Shades ? 200 : 300)));

    public static Mass Support(SupportKind kind) => Mass.FromGrams(kind switch
    {
        SupportKind.Tripod => 1300,
        SupportKind.Rail => 350,
        _ => 600,
    });
}
