using UnitsNet;

namespace StudioKit.Planning.Studio;

/// <summary>A softbox folded from one sheet: four sides round the flash head, glue flaps, and a lip for the front.</summary>
/// <param name="Modifier">Name of the modifier.</param>
/// <param name="Flash">Name of the flash it is folded for.</param>
/// <param name="HeadWidth">Opening for the head, across.</param>
/// <param name="HeadHeight">Opening for the head, upright.</param>
/// <param name="FrontWidth">Glowing front, across.</param>
/// <param name="FrontHeight">Glowing front, upright.</param>
/// <param name="Reach">Head to front, along the flash's axis.</param>
/// <param name="Flap">Width of glue flaps and lip.</param>
public sealed record FoldedSoftbox(
    string Modifier, string Flash, Length HeadWidth, Length HeadHeight, Length FrontWidth, Length FrontHeight, Length Reach, Length Flap)
{
    /// <summary>Slant of the upper and lower side, fold to fold.</summary>
    public Length UpperSlant => Slant(FrontHeight - HeadHeight);

    /// <summary>Slant of the left and right side.</summary>
    public Length SideSlant => Slant(FrontWidth - HeadWidth);

    /// <summary>Seam between two neighbouring sides.</summary>
    public Length Seam => Length.FromMeters(Math.Sqrt(
        Math.Pow(UpperSlant.Meters, 2) + Math.Pow((FrontWidth - HeadWidth).Meters / 2, 2)));

    /// <summary>Width of the flat pattern, lips included.</summary>
    public Length PatternWidth => UnitMath.Max(HeadWidth + (2 * (SideSlant + Flap)), FrontWidth + (2 * Flap));

    /// <summary>Height of the flat pattern, lips included.</summary>
    public Length PatternHeight => UnitMath.Max(HeadHeight + (2 * (UpperSlant + Flap)), FrontHeight);

    private Length Slant(Length opening) =>
        Length.FromMeters(Math.Sqrt(Math.Pow(Reach.Meters, 2) + Math.Pow(opening.Meters / 2, 2)));
}
