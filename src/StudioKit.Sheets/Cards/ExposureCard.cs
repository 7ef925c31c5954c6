using StudioKit.Planning;
using StudioKit.Sheets.Drawings;
using StudioKit.Sheets.Fonts;
using StudioKit.Sheets.Layout;

namespace StudioKit.Sheets.Cards;

/// <summary>The starting-exposure card of one framing in one set-up.</summary>
/// <remarks>
/// What must be seen first comes first and never leaves the front. The remedies and the light budget go to the back
/// where the front has no room for them at a readable size.
/// </remarks>
internal static class ExposureCard
{
    private const double Margin = 4;
    private const double FootHeight = 3.4;
    private const double Gap = 2;

    // Numerals and text shrink together, never under what can be read: 18 pt for settings, 6.5 pt for anything.
    private static readonly CardType[] Sizes = [new(44, 36, 10, 9.5), new(34, 30, 9.5, 9), new(30, 26, 9, 8), new(26, 22, 8, 7.5), new(22, 18, 7.5, 7)];

    public static (Card Card, IReadOnlyList<string> Problems) Make(ExposurePlan exposure, CardFormat format, Stamp stamp)
    {
        var room = new Bounds(MillimetreRule.Strip, Margin, format.WidthMm - Margin, format.HeightMm - Margin - FootHeight);
        foreach (var moved in Enumerable.Range(0, 3))
        {
            foreach (var type in Sizes)
            {
                var (front, back) = ExposureCardParts.Of(exposure, type, moved);
                var fit = new Stack(front, Gap).Fit(room.Width, double.PositiveInfinity);
                if (fit.Height <= room.Height)
                {
                    return (new Card(
                        Side(exposure, format, stamp, room, fit), back.Count == 0 ? null : Back(exposure, format, stamp, room, back)), []);
                }
            }
        }

        var (least, _) = ExposureCardParts.Of(exposure, Sizes[^1], 2);
        var needed = new Stack(least, Gap).Fit(room.Width, double.PositiveInfinity);
        var problem = FormattableString.Invariant(
            $"The card {exposure.SetUp}, {exposure.Framing.Name} needs {needed.Height:0} mm of height; {format.Name} has {room.Height:0} mm. Take a larger card.");
        return (new Card(Side(exposure, format, stamp, room, needed)), [problem]);
    }

    private static Drawing Back(ExposurePlan exposure, CardFormat format, Stamp stamp, Bounds room, IReadOnlyList<Block> blocks) =>
        Side(exposure, format, stamp, room, new Stack(blocks, Gap).Fit(room.Width, double.PositiveInfinity));

    private static Drawing Side(ExposurePlan exposure, CardFormat format, Stamp stamp, Bounds room, Fit content)
    {
        // Date and hash must stand; a long name gives way.
        var stamped = $", {stamp.Origin}";
        var nameRoom = room.Width - TextMeter.Width(stamped, TypeScale.Smallest, TextWeight.Regular);
        var foot = TextWrap.Shortened(stamp.KitName, nameRoom, TypeScale.Smallest, TextWeight.Regular) + stamped;
        return new Drawing(
            $"{exposure.SetUp}, {exposure.Framing.Name}",
            $"Starting exposure for {exposure.Framing.Name} in the set-up {exposure.SetUp}",
            [
                .. MillimetreRule.Marks(format.HeightMm),
                .. content.Marks.Select(mark => mark.Under(Similarity.Shift(room.Left, room.Top))),
                new Label(new Point(room.Left, format.HeightMm - Margin), foot, TypeScale.Smallest),
            ]);
    }
}
