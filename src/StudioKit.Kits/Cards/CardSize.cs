using StudioKit.Physics;
using UnitsNet;

namespace StudioKit.Kits.Cards;

/// <summary>Size of a card after trimming, held upright.</summary>
/// <param name="Name">Its name on sheets and in file names.</param>
/// <param name="Width">The shorter side of the standard sizes; &gt; 0.</param>
/// <param name="Height">The longer side of the standard sizes; &gt; 0.</param>
public sealed record CardSize(string Name, Length Width, Length Height)
{
    /// <summary>ISO/IEC 7810 ID-1, the size of bank cards, 53.98 mm × 85.60 mm.</summary>
    public static CardSize Id1 { get; } = new("ID-1", Length.FromMillimeters(53.98), Length.FromMillimeters(85.6));

    /// <summary>ISO 216 A7, 74 mm × 105 mm.</summary>
    public static CardSize A7 { get; } = new("A7", Length.FromMillimeters(74), Length.FromMillimeters(105));

    /// <summary>ISO 216 A6, 105 mm × 148 mm.</summary>
    public static CardSize A6 { get; } = new("A6", Length.FromMillimeters(105), Length.FromMillimeters(148));

    /// <summary>Index card of 3 in by 5 in.</summary>
    public static CardSize Index3By5 { get; } = new("3x5in", Length.FromInches(3), Length.FromInches(5));

    /// <summary>Index card of 4 in by 6 in.</summary>
    public static CardSize Index4By6 { get; } = new("4x6in", Length.FromInches(4), Length.FromInches(6));

    /// <summary>The sizes that have a name, smallest first.</summary>
    public static IReadOnlyList<CardSize> Standard { get; } = [Id1, A7, Index3By5, Index4By6, A6];

    /// <summary>A size of one's own.</summary>
    /// <param name="width">Width; &gt; 0.</param>
    /// <param name="height">Height; &gt; 0.</param>
    /// <returns>The size, named after itself.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A side is not finite or not above zero.</exception>
    public static CardSize Custom(Length width, Length height)
    {
        Guard.Positive(width.Millimeters);
        Guard.Positive(height.Millimeters);

        return new(FormattableString.Invariant($"{width.Millimeters:0.#}x{height.Millimeters:0.#}mm"), width, height);
    }

    /// <summary>The same card on its side.</summary>
    public CardSize Turned => this with { Width = Height, Height = Width };
}
