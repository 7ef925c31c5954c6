using StudioKit.Sheets.Drawings;
using StudioKit.Sheets.Layout;

namespace StudioKit.Sheets.Cards;

/// <summary>A line across, between the parts of a card.</summary>
internal sealed record DividingLine(Stroke Stroke) : Block
{
    private const double Room = 0.6;

    public override Fit Fit(double width, double height) =>
        new(Room, [new Line(new Point(0, Room / 2), new Point(width, Room / 2), Stroke)]);
}
