using StudioKit.Physics;

namespace StudioKit.Sheets.Cards;

/// <summary>Size of a card after trimming.</summary>
/// <param name="Name">Its name on sheets and in file names.</param>
/// <param name="WidthMm">Width [mm]; &gt; 0.</param>
/// <param name="HeightMm">Height [mm]; &gt; 0.</param>
public sealed record CardFormat(string Name, double WidthMm, double HeightMm)
{
    /// <summary>ISO 216 A6, upright.</summary>
    public static CardFormat A6 { get; } = new("A6", 105, 148);

    /// <summary>ISO 216 A7, upright.</summary>
    public static CardFormat A7 { get; } = new("A7", 74, 105);

    /// <summary>Index card of 3 in by 5 in, upright.</summary>
    public static CardFormat Index3By5 { get; } = new("3x5in", 3 * 25.4, 5 * 25.4);

    /// <summary>Index card of 4 in by 6 in, upright.</summary>
    public static CardFormat Index4By6 { get; } = new("4x6in", 4 * 25.4, 6 * 25.4);

    /// <summary>ISO/IEC 7810 ID-1, the size of bank cards, upright.</summary>
    public static CardFormat Id1 { get; } = new("ID-1", 53.98, 85.6);

    /// <summary>A size of one's own.</summary>
    /// <param name="widthMm">Width [mm]; &gt; 0.</param>
    /// <param name="heightMm">Height [mm]; &gt; 0.</param>
    /// <returns>The format, named after its size.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A side is not finite or not above zero.</exception>
    public static CardFormat Custom(double widthMm, double heightMm) => new(
        FormattableString.Invariant($"{widthMm:0.#}x{heightMm:0.#}mm"), Guard.Positive(widthMm), Guard.Positive(heightMm));
}
