using System.Globalization;
using StudioKit.Kits;
using StudioKit.Planning.Cutting;
using StudioKit.Planning.Tests.Hardware;
using UnitsNet;

namespace StudioKit.Planning.Tests.Cutting;

/// <summary>Pieces of pipe for a steel rule in inches: an inch is 25.4 mm exactly (yard and pound agreement of 1959), and the rule has thirty-seconds of it.</summary>
public sealed class InchMarksTests
{
    private const double ThirtySecond = 25.4 / 32;
    private const double Hair = 1e-4;

    /// <remarks>Whatever the words say is read back from them, as it would be off the paper.</remarks>
    [Fact]
    public void Every_piece_in_inches_is_a_whole_thirty_second_and_leaves_every_socket_its_gap() => OfRandomFrames((_, frame) =>
    {
        foreach (var piece in frame.Pieces.Where(piece => piece.Rounded.Millimeters > ThirtySecond))
        {
            var gap = frame.Geometry.Members.Single(member => member.Label == piece.Members[0]).InsertionGap.Millimeters;

            var told = Read(piece.Rounded);

            (told / ThirtySecond).Should().BeApproximately(Math.Round(told / ThirtySecond), Hair);
            ((2 * gap) + piece.Exact.Millimeters - told).Should().BeGreaterThan(-0.002, "a piece that is pushed home stops before the bottom of both sockets");
            (piece.Rounded.Millimeters - told).Should().BeInRange(-Hair, ThirtySecond, "the rule says by how much it is short");
        }
    });

    [Fact]
    public void Marks_in_inches_are_whole_thirty_seconds_and_the_pieces_between_them_fit_their_bar_and_are_never_long() => OfRandomFrames((kit, frame) =>
    {
        foreach (var bar in frame.PipeCuts.Bars)
        {
            var (sawn, left) = (0.0, bar.StockLength.Millimeters - bar.Trim.Millimeters);
            foreach (var (mark, inches) in bar.Marks.Zip(bar.InchMarks))
            {
                var end = inches.End.Millimeters;
                (end / ThirtySecond).Should().BeApproximately(Math.Round(end / ThirtySecond), Hair);

                // From where the saw left off, a kerf behind the mark before.
                var piece = end - sawn - (sawn > 0 ? kit.Stock.Kerf.Millimeters : 0);
                (mark.Length.Millimeters - piece).Should().BeInRange(-Hair, ThirtySecond + Hair, $"{mark.Label} is cut to its length or less than a thirty-second short");
                sawn = end;
            }

            bar.InchMarks.Should().HaveSameCount(bar.Marks);
            sawn.Should().BeLessThanOrEqualTo(left + Hair);
        }
    });

    /// <summary>By hand: a bar of three pieces of 500 mm, kerf 2 mm. 500 mm are 19.685 in, so 19 21/32 (499.27 mm); 502 mm on are 39.420 in, so 39 13/32 (1000.92 mm); 502 mm on 59.170 in, so 59 5/32.</summary>
    [Fact]
    public void Marks_do_not_add_what_each_piece_is_short()
    {
        var bar = new FirstFitBarCutPlanner().Plan(new BarCutRequest
        {
            Pieces = [new BarPiece("A", Length.FromMillimeters(500), 3)],
            Stock = [new StockBar("pipe", Length.FromMillimeters(1504), 1m)],
            Kerf = Length.FromMillimeters(2),
            Trim = Length.Zero,
        }).Bars.Single();

        var told = new PlanUnits(TextUnits.Inches, WrittenLengths.None).Tell(() => bar.Marks.Zip(bar.InchMarks, CutFormat.MarkFigure).ToList());

        told.Should().Equal("19 21/32", "39 13/32", "59 5/32");
    }

    private static double Read(Length piece)
    {
        var words = new PlanUnits(TextUnits.Inches, WrittenLengths.None).Tell(() => CutFormat.PieceFigure(piece)).Split(' ');
        return 25.4 * words.Sum(word => word.Split('/') is [var over, var under] ? Number(over) / Number(under) : Number(word));

        static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
    }

    private static void OfRandomFrames(Action<KitSpec, FramePlan> check) => FrameKits.Any.Sample(
        kit =>
        {
            if (FrameKits.FrameOf(kit) is { Geometry.GoesTogether: true } frame)
            {
                check(kit, frame);
            }
        },
        iter: FrameKits.Count);
}
