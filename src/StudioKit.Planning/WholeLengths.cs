using UnitsNet;

namespace StudioKit.Planning;

/// <summary>Lengths in the whole steps that are offered: never under what is needed or over what there is, whatever rounding left behind the point.</summary>
internal static class WholeLengths
{
    private const double Rounding = 1e-6;

    /// <summary>The longest whole thirty-second of an inch that is no longer than a length, as a steel rule has them.</summary>
    public static Length DownToThirtySecond(Length length) => Length.FromInches(Math.Floor((length.Inches * InchText.Parts) + Rounding) / InchText.Parts);

    /// <summary>The next whole centimetre that is not under a length.</summary>
    public static Length UpToCentimetre(Length length) => Length.FromCentimeters(Math.Ceiling(length.Centimeters - Rounding));

    /// <summary>The next whole millimetre beyond a length: what fits exactly may miss by rounding.</summary>
    public static Length BeyondMillimetre(Length length) => Length.FromMillimeters(Math.Floor(length.Millimeters + Rounding) + 1);
}
