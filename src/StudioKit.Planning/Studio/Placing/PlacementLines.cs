using StudioKit.Kits;
using StudioKit.Kits.SetUps;
using UnitsNet;

namespace StudioKit.Planning.Studio.Placing;

/// <summary>The lines of a kit file that a placement asks for.</summary>
internal static class PlacementLines
{
    /// <summary>A line under each section that changes.</summary>
    public static IReadOnlyList<string> Of(KitSpec kit, LightSpec own, PlacementChoice choice)
    {
        List<string> lines = [];
        if (!choice.PanelHeight.Equals(kit.Frame.Height, Length.FromMillimeters(0.5)))
        {
            lines.Add($"frame: height: {Whole(choice.PanelHeight)}");
        }

        if (choice.Skirts != kit.Panel.Skirts)
        {
            lines.Add($"panel: skirts: {(choice.Skirts ? "yes" : "no")}");
        }

        lines.Add($"set-ups: lights: - {Light(own.Flash, choice, choice.OffsetRight)}");
        if (choice.Count == 2)
        {
            lines.Add($"set-ups: lights: - {Light("a second such flash", choice, -choice.OffsetRight)}");
        }

        return lines;
    }

    private static string Light(string flash, PlacementChoice choice, Length right)
    {
        List<string> parts = [$"flash: {flash}", "role: below"];
        Add("modifier", choice.Modifier);
        Add("distance", Whole(choice.Distance));
        Add("offset-right", Where(right));
        Add("offset-back", Where(choice.OffsetBack));
        Add("aim-right", choice.AimRight is { } aimRight ? Where(aimRight) : null);
        Add("aim-back", choice.AimBack is { } aimBack ? Whole(aimBack) : null);
        Add("zoom", choice.Zoom is { } zoom ? Whole(zoom) : null);
        return $"{{{string.Join(", ", parts)}}}";

        void Add(string key, string? value)
        {
            if (value is not null)
            {
                parts.Add($"{key}: {value}");
            }
        }
    }

    private static string? Where(Length length) => Math.Abs(length.Millimeters) < 0.5 ? null : Whole(length);

    private static string Whole(Length length) => FormattableString.Invariant($"{length.Millimeters:0} mm");
}
