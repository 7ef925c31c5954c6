using StudioKit.Kits.Lighting;
using StudioKit.Kits.Shelters;
using StudioKit.Kits.Supports;
using StudioKit.Kits.Triggers;
using StudioKit.Physics.Packing;
using StudioKit.Planning.Studio;
using UnitsNet;

namespace StudioKit.Planning.Packing;

/// <summary>How big things are where a kit does not say (common practice, no source); the pack list calls them assumed.</summary>
internal static class UsualSize
{
    public static BoxSize Camera { get; } = Box(140, 110, 80);

    public static BoxSize CloseUpLens { get; } = Box(80, 80, 15);

    public static BoxSize Teleconverter { get; } = Box(75, 75, 40);

    public static BoxSize Filter { get; } = Box(80, 80, 12);

    public static BoxSize Lens(Length? length) => Box(length?.Millimeters ?? 100, 80, 80);

    public static BoxSize Tube(Length length) => Box(70, 70, length.Millimeters + 10);

    // A softbox rolls up on its ribs, all else lies flat.
    public static BoxSize Modifier(ModifierKind kind, Length width, Length height) => kind == ModifierKind.Softbox
        ? Box(Math.Max(width.Millimeters, height.Millimeters), 80, 80)
        : Box(width.Millimeters, height.Millimeters, 25);

    public static BoxSize Holder(HolderKind kind) => kind switch
    {
        HolderKind.Stand => Box(500, 90, 90),
        HolderKind.Arm => Box(320, 70, 60),
        HolderKind.Clamp => Box(160, 80, 50),
        _ => Box(80, 60, 20),
    };

    // Pieces side by side.
    public static BoxSize Poles(Length diameter, BuiltHolder holder) => new(holder.LongestPiece, (holder.Poles + holder.Arms) * diameter, diameter);

    public static BoxSize Trigger(TriggerKind kind) => kind switch
    {
        TriggerKind.OpticalCell => Box(40, 30, 25),
        TriggerKind.Cord => Box(120, 80, 40),
        _ => Box(75, 40, 35),
    };

    // Poles and ribs take apart or fold to half a metre.
    public static BoxSize Shelter(ShelterSpec shelter) => shelter.Kind == ShelterKind.WindBreak ? Box(500, 120, 120) : Box(500, 70, 70);

    public static BoxSize Support(SupportKind kind) => kind switch
    {
        SupportKind.Tripod => Box(450, 120, 120),
        SupportKind.Rail => Box(220, 70, 60),
        _ => Box(220, 150, 80),
    };

    private static BoxSize Box(double first, double second, double third) =>
        new(Length.FromMillimeters(first), Length.FromMillimeters(second), Length.FromMillimeters(third));
}
