using StudioKit.Kits.Quantities;

namespace StudioKit.Kits.Cards;

/// <summary>Sizes of cards: a standard's name or two lengths.</summary>
internal static class CardSizeText
{
    private static readonly ValueKind<Size> TwoLengths = PairText.Size("90 mm x 130 mm");

    public static readonly ValueKind<CardSize> Kind = new("a size of card", "A6", Read, value => value.Name)
    {
        Measure = value => new Extent(
            Math.Min(value.Width.Millimeters, value.Height.Millimeters),
            Math.Max(value.Width.Millimeters, value.Height.Millimeters)),
        ReadMeasure = text => NumberText.Quantity(text, UnitDimension.Length),
    };

    private static Reading<CardSize> Read(string text)
    {
        var written = text.Trim();
        if (CardSize.Standard.FirstOrDefault(size => size.Name.Equals(written, StringComparison.OrdinalIgnoreCase)) is { } standard)
        {
            return Reading<CardSize>.Good(standard);
        }

        if (written.Length > 0 && (char.IsAsciiDigit(written[0]) || written[0] == '.'))
        {
            return TwoLengths.Read(text).Then(size => CardSize.Custom(size.First, size.Second));
        }

        var names = CardSize.Standard.Select(size => size.Name).ToList();
        var nearest = NearestName.Of(written, names);
        var all = $"Known: {string.Join(", ", names)}, or two lengths such as '90 mm x 130 mm'.";
        return Reading<CardSize>.Bad($"'{text}' is not a size of card.", nearest is null ? all : $"Did you mean '{nearest}'? {all}");
    }
}
