using StudioKit.Planning.Studio.Hardware;
using StudioKit.Sheets.Building;
using StudioKit.Sheets.Building.Hardware;
using StudioKit.Sheets.Drawings;
using StudioKit.Sheets.Fonts;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Core;
using UnitsNet;

namespace StudioKit.Sheets.Tests.Building;

/// <summary>What is bought, drilled and cut, as it is printed.</summary>
public sealed class HardwareSectionTests
{
    private static readonly Lazy<(IReadOnlyList<(double Width, double Height)> Boxes, string Words)> Printed = new(Read);

    /// <summary>Worked by hand for pipe of 20 mm, whose bore is 17 mm: a pin of 4 × 40 mm whose end is half round; of M8 two nuts 15.01 mm across and 6.8 mm high, a washer of 16 × 1.6 mm, a head 5.3 mm high (ISO 4017, 4032, 7089, from memory). A PDF keeps three decimals of a point; what is filled and edged is drawn twice in one place.</summary>
    [Theory]
    [InlineData(38, 4, 1)]
    [InlineData(15.011, 6.8, 2)]
    [InlineData(15.011, 5.3, 1)]
    [InlineData(16, 1.6, 1)]
    public void Small_parts_are_printed_at_full_size(double width, double height, int count) =>
        Printed.Value.Boxes.Count(box => Math.Abs(box.Width - width) < 0.005 && Math.Abs(box.Height - height) < 0.005).Should().Be(count);

    [Fact]
    public void A_rule_of_100_mm_stands_beside_them() => Printed.Value.Boxes.Should().Contain(box => Math.Abs(box.Width - 100) < 0.005 && box.Height < 0.005);

    [Fact]
    public void Every_part_and_tool_is_named_with_its_number_where_it_is_used()
    {
        foreach (var (line, i) in BuiltKit.Table.Workshop!.Hardware.Select((line, i) => (line, i)))
        {
            Printed.Value.Words.Should().Contain(Close(FormattableString.Invariant($"{i + 1}. {HardwareText.Name(line)}"))).And.Contain(Close($"Where: {HardwareText.Where(line)}"));
        }

        foreach (var tool in BuiltKit.Table.Workshop.Tools)
        {
            Printed.Value.Words.Should().Contain(Close(ToolText.Name(tool)));
        }
    }

    /// <summary>Running sums from the squared end, each with one kerf more, to the half millimetre of a saw.</summary>
    [Fact]
    public void The_order_of_cutting_gives_the_mark_of_every_piece()
    {
        var plan = BuiltKit.Table;
        foreach (var bar in plan.Workshop!.PipeCuts.Bars)
        {
            var at = 0.0;
            foreach (var (mark, i) in bar.Marks.Select((mark, i) => (mark, i)))
            {
                at += mark.Length.Millimeters;
                var row = FormattableString.Invariant($"{i + 1}{mark.Label}{Half(mark.Length.Millimeters)}{Half(at)}");
                Printed.Value.Words.Should().Contain(Close(row));
                at += plan.Kit.Stock.Kerf.Millimeters;
            }
        }
    }

    [Fact]
    public void Take_off_and_gap_are_two_measures_and_neither_is_added_in_silence()
    {
        var frame = BuiltKit.Table.Frame!;
        var tee = TakeOffDrawing.Shown(frame) with { TakeOff = Length.FromMillimeters(13.5), ToPipeEnd = Length.FromMillimeters(14.5), ToMark = Length.FromMillimeters(31.5) };

        var measures = TakeOffDrawing.Of(frame, tee).Marks.OfType<Dimension>().ToList();

        measures.Should().Contain(measure => measure.Text == "take-off 13.5 mm" && Math.Abs(measure.From.DistanceTo(measure.To) - 13.5) < 1e-9)
            .And.Contain(measure => measure.Text == "with the gap 14.5 mm" && Math.Abs(measure.From.DistanceTo(measure.To) - 14.5) < 1e-9);
    }

    /// <summary>Along the axis from the leg down as the parts are put on: nut in the cap, the cap's floor, washer, nut, head, tip.</summary>
    [Fact]
    public void A_foot_is_drawn_apart_in_the_order_of_its_parts()
    {
        var foot = BuiltKit.Table.Workshop!.Hardware.Single(line => line.Kind == HardwareKind.Foot);

        var names = HardwareDrawing.Of(foot)!.Marks.OfType<Label>().OrderBy(label => label.At.Y).Select(label => label.Text.Split(' ')[0]);

        names.Should().Equal("nut", "the", "washer", "nut", "head", "rubber");
    }

    private static string Half(double millimetres) => (Math.Round(millimetres * 2, MidpointRounding.AwayFromZero) / 2).ToString("0.#", System.Globalization.CultureInfo.InvariantCulture);

    private static string Close(string words) => words.Replace(" ", "", StringComparison.Ordinal);

    private static (IReadOnlyList<(double Width, double Height)> Boxes, string Words) Read()
    {
        using var document = PdfDocument.Open(BuiltKit.TableFiles.Single(file => file.Name == "build-sheet.pdf").Content.ToArray());
        var pages = document.GetPages().TakeWhile(page => !page.Text.Contains("Panel and sheet goods", StringComparison.Ordinal)).ToList();
        var boxes = pages.SelectMany(page => page.Paths).Select(path => path.GetBoundingRectangle()).OfType<PdfRectangle>()
            .DistinctBy(box => (Math.Round(box.Left, 2), Math.Round(box.Bottom, 2), Math.Round(box.Right, 2), Math.Round(box.Top, 2)))
            .Select(box => (box.Width * TextMeter.MillimetresPerPoint, box.Height * TextMeter.MillimetresPerPoint)).ToList();
        return (boxes, Close(string.Concat(document.GetPages().Select(page => page.Text))));
    }
}
