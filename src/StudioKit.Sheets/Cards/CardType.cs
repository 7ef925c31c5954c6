using StudioKit.Kits.Cards;
using StudioKit.Sheets.Layout;

namespace StudioKit.Sheets.Cards;

/// <summary>Sizes of type on one side of a card [pt].</summary>
internal sealed record CardType(double SetUp, double Framing, double Settings, double Flashes, double LeastNumerals, double Mount, double Text, double Small)
{
    // Shrunk this far, a side is so full that even what could stay large must give way.
    private const double BriefShare = 0.7;

    // Read at arm's length by somebody who holds a camera (common practice, no source).
    private const double LeastMount = 9;

    /// <summary>Whether light budgets are set as running text, which takes half the height of columns, and what is nothing to set is left out.</summary>
    public bool IsBrief { get; init; }

    /// <summary>A template's sizes, shrunk together but never under what can be read.</summary>
    public static CardType Of(CardTypeSizes sizes, double share) => new(
        Shrunk(sizes.SetUp.DtpPoints, share, TypeScale.Smallest),
        Shrunk(sizes.Framing.DtpPoints, share, TypeScale.Smallest),
        Shrunk(sizes.Settings.DtpPoints, share, sizes.LeastNumerals.DtpPoints),
        Shrunk(sizes.Flashes.DtpPoints, share, sizes.LeastNumerals.DtpPoints),
        sizes.LeastNumerals.DtpPoints,
        Shrunk(sizes.Mount.DtpPoints, share, LeastMount),
        Shrunk(sizes.Text.DtpPoints, share, TypeScale.Smallest),
        Shrunk(sizes.Small.DtpPoints, share, TypeScale.Smallest))
    { IsBrief = share < BriefShare };

    // Type is set in steps of half a point.
    private static double Shrunk(double size, double share, double least) => Math.Max(Math.Min(size, least), Math.Floor(size * share * 2) / 2);
}
