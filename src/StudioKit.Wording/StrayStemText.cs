using StudioKit.Planning;
using StudioKit.Planning.Studio.Uprights;
using UnitsNet;

namespace StudioKit.Wording;

/// <summary>Stems between a subject and the sheet behind it, in words.</summary>
public static class StrayStemText
{
    /// <summary>What stands on a card: which stems vanish, and the room to look through.</summary>
    /// <param name="stems">The stems.</param>
    public static string OfCard(StrayStemPlan stems)
    {
        ArgumentNullException.ThrowIfNull(stems);
        return stems.WidestAtSheet > Length.Zero
            ? $"A stem up to {Width(stems.WidestHalfWay)} wide vanishes half way to the sheet, up to {Width(stems.WidestAtSheet)} right before it{Within(stems)}."
            : $"The sheet does not clip, and every stem before it shows{Within(stems)}.";
    }

    /// <summary>From where on a stem vanishes, rounded up to half a centimetre: nearer it may show.</summary>
    /// <param name="stem">The stem.</param>
    public static string From(VanishingStem stem)
    {
        ArgumentNullException.ThrowIfNull(stem);
        return stem.From is { } from ? DistanceFormat.Centimetres(Length.FromCentimeters(Math.Ceiling((from.Centimeters * 2) - 1e-9) / 2)) : "nowhere";
    }

    /// <summary>Width of a stem, rounded down: a wider one may show.</summary>
    /// <param name="width">The width.</param>
    public static string Width(Length width) => PlanFormat.TenthMillimetres(Length.FromMillimeters(Math.Floor((width.Millimeters * 10) + 1e-9) / 10));

    private static string Within(StrayStemPlan stems) => Room(stems) is { Length: > 0 } room ? $"; the camera looks at {room} of it" : "";

    /// <summary>What is looked at of the sheet.</summary>
    /// <param name="stems">The stems.</param>
    public static string Room(StrayStemPlan stems)
    {
        ArgumentNullException.ThrowIfNull(stems);
        return stems is { ClearWidth: { } width, ClearHeight: { } height }
            ? DistanceFormat.CentimetreSides(Length.FromCentimeters(Math.Ceiling(width.Centimeters)), Length.FromCentimeters(Math.Ceiling(height.Centimeters)))
            : "";
    }
}
