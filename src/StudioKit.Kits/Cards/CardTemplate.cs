using StudioKit.Physics;
using UnitsNet;

namespace StudioKit.Kits.Cards;

/// <summary>How starting-exposure cards look, as written in a template file.</summary>
public sealed record CardTemplate
{
    /// <summary>Name in file names and on the sheet.</summary>
    public required string Name { get; init; }

    /// <summary>Size after trimming.</summary>
    public required CardSize Size { get; init; }

    /// <summary>How the card is held.</summary>
    public CardOrientation Orientation { get; init; }

    /// <summary>Between the card's edge and what is printed.</summary>
    public Length Margin { get; init; } = Length.FromMillimeters(4);

    /// <summary>Seal of the laminating pouch that is to stay around the card; cards stand twice that apart.</summary>
    public Length LaminationMargin { get; init; } = Length.FromMillimeters(4);

    /// <summary>Diameter of the hole for the ring; zero for none.</summary>
    public Length Hole { get; init; } = Length.FromMillimeters(6);

    /// <summary>What the front holds, in order.</summary>
    public required ValueList<CardBlock> Front { get; init; }

    /// <summary>What the back holds, in order; empty for cards printed on one side.</summary>
    public ValueList<CardBlock> Back { get; init; } = [];

    /// <summary>Sizes of type.</summary>
    public CardTypeSizes Type { get; init; } = new();

    /// <summary>Whether the ring begins with a card that lists the others.</summary>
    public bool Index { get; init; } = true;

    /// <summary>The card as it is held.</summary>
    public CardSize Held => Orientation == CardOrientation.Upright ? Size : Size.Turned;
}
