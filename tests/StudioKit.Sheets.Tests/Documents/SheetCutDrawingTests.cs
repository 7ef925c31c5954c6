using StudioKit.Planning.Cutting;
using StudioKit.Sheets.Documents;
using StudioKit.Sheets.Drawings;
using UnitsNet;

namespace StudioKit.Sheets.Tests.Documents;

public sealed class SheetCutDrawingTests
{
    /// <summary>The plan counts heights from the sheet's lower edge; paper counts them from above.</summary>
    [Fact]
    public void Pieces_lie_on_the_drawing_as_high_over_its_lower_edge_as_on_the_sheet()
    {
        var sheet = new FirstFitSheetCutPlanner().Plan(new SheetCutRequest
        {
            Pieces = [new SheetPiece("panel", Length.FromMillimeters(320), Length.FromMillimeters(280)), new SheetPiece("skirt", Length.FromMillimeters(300), Length.FromMillimeters(150))],
            Stock = [new StockSheet("board", Length.FromMillimeters(600), Length.FromMillimeters(500), 24m)],
            Kerf = Length.FromMillimeters(3),
        }).Sheets.Single();

        var marks = SheetCutDrawing.Of(sheet).Marks;

        foreach (var piece in sheet.Panels)
        {
            var (left, bottom) = (piece.X.Millimeters, 500 - piece.Y.Millimeters);
            marks.OfType<Polygon>().Should().ContainSingle(box => box.Fill == Fill.White
                && Math.Abs(box.Bounds.Left - left) < 1e-6 && Math.Abs(box.Bounds.Bottom - bottom) < 1e-6
                && Math.Abs(box.Bounds.Right - left - piece.Width.Millimeters) < 1e-6 && Math.Abs(box.Bounds.Top - bottom + piece.Height.Millimeters) < 1e-6, piece.Label);
        }

        sheet.Panels.Should().Contain(piece => piece.Y.Millimeters == 0).And.Contain(piece => piece.X.Millimeters > 0 || piece.Y.Millimeters > 0);
    }
}
