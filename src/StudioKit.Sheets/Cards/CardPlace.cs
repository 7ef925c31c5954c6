using System.Globalization;

namespace StudioKit.Sheets.Cards;

/// <summary>Where a card stands in its ring.</summary>
/// <param name="Number">Counted from 1.</param>
/// <param name="Count">Cards in the ring, the index left out.</param>
internal readonly record struct CardPlace(int Number, int Count)
{
    /// <summary>Whether it goes on from a card of the same number.</summary>
    public bool IsContinued { get; init; }

    public string Says => string.Create(CultureInfo.InvariantCulture, $"{Number} of {Count}{(IsContinued ? ", more" : "")}");
}
