using StudioKit.Sheets.Cards;

namespace StudioKit.Sheets;

/// <summary>How the sheets are to be printed.</summary>
public sealed record SheetOptions
{
    /// <summary>The date that every sheet carries; sheets never look at a clock, so none where none is given.</summary>
    public DateOnly? Date { get; init; }

    /// <summary>The paper.</summary>
    public Paper Paper { get; init; } = Paper.A4;

    /// <summary>Units of the build sheet.</summary>
    public SheetUnits Units { get; init; } = SheetUnits.Metric;

    /// <summary>Sizes of card to print, one file each.</summary>
    public IReadOnlyList<CardFormat> CardFormats { get; init; } = [CardFormat.A6, CardFormat.Index3By5];
}
