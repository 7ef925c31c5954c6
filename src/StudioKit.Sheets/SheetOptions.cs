using StudioKit.Kits.Cards;

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

    /// <summary>Templates of the cards to print, one file each.</summary>
    public IReadOnlyList<CardTemplate> Cards { get; init; } = [CardTemplates.Of(CardSize.A6.Name), CardTemplates.Of(CardSize.Index3By5.Name)];
}
