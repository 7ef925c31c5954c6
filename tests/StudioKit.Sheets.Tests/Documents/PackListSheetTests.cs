using StudioKit.Sheets.Documents;
using StudioKit.Sheets.Drawings;
using StudioKit.Sheets.Layout;

namespace StudioKit.Sheets.Tests.Documents;

public sealed class PackListSheetTests
{
    /// <summary>The sample packs seven lines in its bags and one of cells.</summary>
    [Fact]
    public void Every_line_has_a_box_to_tick_before_its_name()
    {
        var pack = SamplePlan.Plan.Pack;

        var pages = Paginator.Lay(PackListSheet.Make(SamplePlan.Plan, Pages.Stamp, new PageSetup(Paper.A4))).Document.Pages;

        var boxes = pages.SelectMany(page => page.Marks).OfType<Polygon>().Where(IsBox).Select(box => box.Bounds).ToList();
        boxes.Should().HaveCount(pack.Items.Count + pack.Cells.Count).And.HaveCount(8);
        foreach (var name in pack.Items.Select(item => item.Name))
        {
            var label = pages.SelectMany(page => page.Marks).OfType<Label>().Single(label => label.Text == name);
            boxes.Should().ContainSingle(box => box.Right < label.At.X && label.At.X - box.Right < 8 && box.Top < label.At.Y && box.Bottom > label.At.Y - 1);
        }
    }

    private static bool IsBox(Polygon mark) => mark.Bounds is { Width: > 1 and < 6 } box && Math.Abs(box.Width - box.Height) < 1e-9;
}
