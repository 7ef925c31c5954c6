using StudioKit.Kits.Cards;
using StudioKit.Planning;

namespace StudioKit.Sheets;

/// <summary>How the sheets are to be printed.</summary>
public sealed record SheetOptions
{
    /// <summary>The date that every sheet carries; sheets never look at a clock, so none where none is given.</summary>
    public DateOnly? Date { get; init; }

    /// <summary>The paper.</summary>
    public Paper Paper { get; init; } = Paper.A4;

    /// <summary>Units of all sheets, cards, drawings and tables.</summary>
    public TextUnits Units { get; init; } = TextUnits.Metric;

    /// <summary>Whether cards that cannot work are printed all the same, with what would make them work.</summary>
    public bool EvenIfFailing { get; init; }

    /// <summary>Templates of the cards to print, one file each.</summary>
    public IReadOnlyList<CardTemplate> Cards { get; init; } = [CardTemplates.Of(CardSize.A6.Name), CardTemplates.Of(CardSize.Index3By5.Name)];
}
