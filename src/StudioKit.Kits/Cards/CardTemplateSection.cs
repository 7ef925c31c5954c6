using StudioKit.Kits.Description;
using UnitsNet;

namespace StudioKit.Kits.Cards;

/// <summary>Keys of a card template.</summary>
internal static class CardTemplateSection
{
    private const string LeastType = "6.5 pt";
    private const string MostType = "120 pt";

    private static readonly Section<CardTypeSizes> Type = new Section<CardTypeSizes>("type", "Largest sizes of type.", new())
        .Size("set-up", "Name of the set-up.", (type, size) => type with { SetUp = size }, type => type.SetUp)
        .Size("framing", "The framing.", (type, size) => type with { Framing = size }, type => type.Framing)
        .Size("settings", "Aperture, shutter and ISO.", (type, size) => type with { Settings = size }, type => type.Settings)
        .Size("flashes", "Power and distance of the flashes.", (type, size) => type with { Flashes = size }, type => type.Flashes)
        .Size("least-numerals", "Settings, powers and distances never shrink under this.", (type, size) => type with { LeastNumerals = size }, type => type.LeastNumerals)
        .Size("mount", "What is mounted, and where it stands.", (type, size) => type with { Mount = size }, type => type.Mount)
        .Size("text", "The check and the remedies.", (type, size) => type with { Text = size }, type => type.Text)
        .Size("small", "Budget, tables and small print.", (type, size) => type with { Small = size }, type => type.Small)
        .Check(type => type.LeastNumerals > type.Settings || type.LeastNumerals > type.Flashes
            ? new Fault("least-numerals", "The least size of numerals is larger than the largest.", "Make it as small as 'settings' and 'flashes' or smaller.")
            : null);

    public static readonly Section<CardTemplate> Template = new Section<CardTemplate>(
        "card template", "How starting-exposure cards look.", new() { Name = "", Size = CardSize.A6, Front = [] })
        .Required("template", "Name of the template, printed on the sheet and used in file names.").Name((card, value) => card with { Name = value })
        .Required("size", "Size after trimming: ID-1, A7, A6, 3x5in, 4x6in, or two lengths.", "40 mm", "300 mm")
            .Value(CardSizeText.Kind, (card, value) => card with { Size = value }, null)
        .Optional("orientation", "How the card is held: upright or lying.")
            .Choice<CardOrientation>("an orientation", (card, value) => card with { Orientation = value }, card => card.Orientation)
        .Optional("margin", "Between the card's edge and what is printed.", "0 mm", "20 mm")
            .Length((card, value) => card with { Margin = value }, card => card.Margin)
        .Optional("lamination-margin", "Seal of the pouch that is to stay around the card.", "0 mm", "20 mm")
            .Length((card, value) => card with { LaminationMargin = value }, card => card.LaminationMargin)
        .Optional("hole", "Diameter of the hole for the ring; '0 mm' for none.", "0 mm", "12 mm")
            .Length((card, value) => card with { Hole = value }, card => card.Hole)
        .Optional("front", "Blocks of the front in their order.")
            .Choices<CardBlock>("a block of a card", (card, values) => card with { Front = values })
        .Optional("back", "Blocks of the back in their order; left out, the card has one side.")
            .Choices<CardBlock>("a block of a card", (card, values) => card with { Back = values })
        .Within("type", Type, "Largest sizes of type.", (card, value) => card with { Type = value }, card => card.Type)
        .Optional("index", "Whether the ring begins with a card that lists the others.")
            .YesNo((card, value) => card with { Index = value }, card => card.Index)
        .Check(card => card.Front.Contains(CardBlock.Settings)
            ? null
            : new Fault("front", "The front does not show the settings.", "Put 'settings' among its blocks: they must be seen first."))
        .Check(card => Twice("front", card.Front))
        .Check(card => Twice("back", card.Back));

    private static Section<CardTypeSizes> Size(
        this Section<CardTypeSizes> section, string key, string doc, Func<CardTypeSizes, Length, CardTypeSizes> set, Func<CardTypeSizes, Length> get) =>
        section.Optional(key, doc, LeastType, MostType).TypeSize(set, get);

    private static Fault? Twice(string side, IReadOnlyList<CardBlock> blocks) =>
        blocks.GroupBy(block => block).FirstOrDefault(same => same.Count() > 1) is { } twice
            ? new Fault(side, $"'{MemberText.Of(twice.Key)}' stands twice on the {side}.", "Keep one of the two.")
            : null;
}
