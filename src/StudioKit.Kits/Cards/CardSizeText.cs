using StudioKit.Kits.Quantities;
using UnitsNet;

namespace StudioKit.Kits.Cards;

/// <summary>Sizes of cards: a standard's name or two lengths.</summary>
internal static class CardSizeText
{
    // Under that no setting can be read at arm's length; over it no home printer's paper has room (common practice, no source).
    private const double Shortest = 40;
    private const double Longest = 300;

    private static readonly ValueKind<Size> TwoLengths = PairText.Size("90 mm x 130 mm");

    public static readonly ValueKind<CardSize> Kind = new("a size of card", "A6", Read, value => value.Name)
    {
        Measure = value => new Extent(
            Math.Min(value.Width.Millimeters, value.Height.Millimeters),
            Math.Max(value.Width.Millimeters, value.Height.Millimeters)),
        ReadMeasure = text => NumberText.Quantity(text, UnitDimension.Length),
    };

    private static bool IsSensible(Length side) => side.Millimeters is >= Shortest and <= Longest;

    private static Reading<CardSize> Read(string text)
    {
        var written = text.Trim();
        if (CardSize.Standard.FirstOrDefault(size => size.Name.Equals(written, StringComparison.OrdinalIgnoreCase)) is { } standard)
        {
            return Reading<CardSize>.Good(standard);
        }

        if (written.Length > 0 && (char.IsAsciiDigit(written[0]) || written[0] is '.' or '-' or '−' or '+'))
        {
            return TwoLengths.Read(text).Then(size => IsSensible(size.First) && IsSensible(size.Second)
                ? Reading<CardSize>.Good(CardSize.Custom(size.First, size.Second))
                : Reading<CardSize>.Bad($"'{written}' is no size of a card: its sides are {Shortest} mm to {Longest} mm.", "Write for example '90 mm x 130 mm'."));
        }

        var names = CardSize.Standard.Select(size => size.Name).ToList();
        var nearest = NearestName.Of(written, names);
        var all = $"Known: {string.Join(", ", names)}, or two lengths such as '90 mm x 130 mm'.";
        return Reading<CardSize>.Bad($"'{text}' is not a size of card.", nearest is null ? all : $"Did you mean '{nearest}'? {all}");
    }
}
