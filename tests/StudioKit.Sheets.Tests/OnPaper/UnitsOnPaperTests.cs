using System.Text;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using StudioKit.Planning;
using StudioKit.Planning.Studio.Hardware;

namespace StudioKit.Sheets.Tests.OnPaper;

/// <summary>Every page and drawing in inches and pounds: no metric measure but those that the trade knows so, each named here with its reason.</summary>
public sealed partial class UnitsOnPaperTests
{
    // Each stands for words that keep their millimetres whatever the units.
    private static readonly Regex[] Metric =
    [
        Zoom(), PrintedScale(), Defaults(), SoldInMetric(), SensorExample(), HeadsUnderEachOther(),
    ];

    // The first is in metric all along and has an upright sheet, the second is written in feet.
    public static TheoryData<string> Kits => ["fen-edge", "tall-stand", "pond-edge"];

    [Theory]
    [MemberData(nameof(Kits))]
    public void In_inches_no_measure_is_metric_but_what_the_trade_knows_so(string kit)
    {
        string.Join('\n', Pages(kit, TextUnits.Inches).SelectMany(page => Measure().Matches(page.Text).Select(match => Around(page, match)))).Should().BeEmpty();
    }

    [Theory]
    [InlineData("tall-stand")]
    [InlineData("pond-edge")]
    public void In_both_units_inches_stand_behind_every_metric_length(string kit)
    {
        string.Join('\n', Pages(kit, TextUnits.Both).SelectMany(page => Alone().Matches(page.Text).Select(match => Around(page, match)))).Should().BeEmpty();
    }

    /// <summary>The kit buys tubes of 6 and 8 feet and a sheet of 4 feet square.</summary>
    [Fact]
    public void Stock_that_a_kit_has_in_feet_is_named_in_feet_in_all_units()
    {
        foreach (var units in Enum.GetValues<TextUnits>())
        {
            var build = string.Join(' ', Pages("tall-stand", units, "build-sheet").Select(page => page.Text));

            build.Should().ContainAll("length of 6 ft", "length of 8 ft", units == TextUnits.Inches ? "4 ft x 4 ft" : "4 ft (1219 mm) x 4 ft");
        }
    }

    [Fact]
    public void Tables_have_their_columns_in_the_units_that_are_asked_for()
    {
        string[] Head(TextUnits units, string name) => Table(units, name).Split("\r\n")[0].Split(',');

        Head(TextUnits.Metric, "pipe-cuts.csv").Should().Contain("lengthMm").And.NotContain("lengthIn");
        Head(TextUnits.Inches, "pipe-cuts.csv").Should().Contain("lengthIn").And.NotContain("lengthMm");
        Head(TextUnits.Both, "pipe-cuts.csv").Should().ContainInConsecutiveOrder("lengthMm", "lengthIn");
        Head(TextUnits.Both, "pack-list.csv").Should().ContainInOrder("massG", "massOz", "massFrom", "lengthMm", "lengthIn");
        foreach (var name in new[] { "pipe-cuts.csv", "sheet-cuts.csv", "pack-list.csv", "light-places.csv" })
        {
            Head(TextUnits.Inches, name).Should().NotContain(head => head.EndsWith("Mm", StringComparison.Ordinal) || head == "massG", name);
        }
    }

    /// <summary>An inch is 25.4 mm and an ounce 28.349523125 g by definition; a cell in inches is off by half a thousandth at most, one in ounces by half a hundredth.</summary>
    [Theory]
    [InlineData("pipe-cuts.csv", "lengthMm", "lengthIn", 25.4, 0.0005)]
    [InlineData("sheet-cuts.csv", "widthMm", "widthIn", 25.4, 0.0005)]
    [InlineData("pack-list.csv", "massG", "massOz", 28.349523125, 0.005)]
    [InlineData("light-places.csv", "distanceMm", "distanceIn", 25.4, 0.0005)]
    public void A_row_says_the_same_in_both_units(string table, string metric, string other, double size, double error)
    {
        var rows = StudioKit.Planning.Tables.CsvText.Read(Table(TextUnits.Both, table));
        var heads = rows[0].Select(field => field.Text).ToList();
        var (first, second) = (heads.IndexOf(metric), heads.IndexOf(other));

        rows.Should().HaveCountGreaterThan(1).And.OnlyContain(row => row.Count == heads.Count);
        foreach (var row in rows.Skip(1))
        {
            // What stands in metric is rounded itself, to a two-hundredth at most.
            Number(row[second].Text).Should().BeApproximately(Number(row[first].Text) / size, error + (0.005 / size) + 1e-9);
        }

        static double Number(string text) => double.Parse(text, System.Globalization.CultureInfo.InvariantCulture);
    }

    private static string Table(TextUnits units, string name) => Encoding.UTF8.GetString(
        SheetSet.Groups(DemoBooks.Plan("fen-edge"), new SheetOptions { Units = units }).Single(group => group.Kind == SheetGroupKind.Tables).Write().Single(file => file.Name == name).Content.Span);

    // The words of each page in their order, what may be metric left out.
    private static IEnumerable<(string Page, string Text)> Pages(string kit, TextUnits units, string group = "")
    {
        var plan = DemoBooks.Plan(kit);
        var named = Named(plan).Where(name => name.AsSpan().ContainsAnyInRange('0', '9')).OrderByDescending(name => name.Length).ToList();
        return SheetSet.Groups(plan, new SheetOptions { Units = units })
            .Where(made => made.Name.StartsWith(group, StringComparison.Ordinal)).SelectMany(made => made.Pages()).Select(file => (file.Name, Text(file)));

        string Text(SheetFile file)
        {
            var words = XDocument.Parse(Encoding.UTF8.GetString(file.Content.Span)).Descendants().Where(element => element.Name.LocalName is "text" or "title" or "desc").Select(element => element.Value);
            var text = named.Aggregate(Spaces().Replace(string.Join(' ', words), " "), (rest, name) => rest.Replace(name, "~", StringComparison.Ordinal));
            return Metric.Aggregate(text, (rest, allowed) => allowed.Replace(rest, "~"));
        }
    }

    // Names as the kit has them, and screws by their ISO thread, whose length is drawn beside them.
    private static IEnumerable<string> Named(Plan plan) =>
    [
        plan.Workshop!.PipeName, plan.Workshop.FittingsName,
        .. plan.Kit.Lenses.Select(lens => lens.Name),
        .. plan.Workshop.Hardware.Where(line => line.Kind == HardwareKind.Foot).SelectMany(line => (string[])[HardwareText.Screw(line), PlanFormat.GearMillimetres(line.Length!.Value)]),
    ];

    private static string Around((string Name, string Text) page, Match match) =>
        $"{page.Name}: {page.Text[Math.Max(0, match.Index - 50)..Math.Min(page.Text.Length, match.Index + match.Length + 20)]}";

    [GeneratedRegex(@"\d ?(mm|cm|m|kg|g|N|m/s|°C)(?![\w²/·³])", RegexOptions.ExplicitCapture, 2000)]
    private static partial Regex Measure();

    [GeneratedRegex(@"(?<!(in|ft|yd) \([\d. ×]*|distance \([\d /]+ in\) )(?<![\d.])[\d.]+ (mm|cm|m)(?![\w²/·³])(?! \()(?! ±)", RegexOptions.ExplicitCapture, 2000)]
    private static partial Regex Alone();

    [GeneratedRegex(@"\s+", RegexOptions.ExplicitCapture, 2000)]
    private static partial Regex Spaces();

    // A focal length for which a flash's head is set.
    [GeneratedRegex(@"zoom \d+ mm", RegexOptions.ExplicitCapture, 2000)]
    private static partial Regex Zoom();

    // What is printed to check the printer's scale, and to measure by, has its length in millimetres.
    [GeneratedRegex(@"10 mm each, as printed|100 mm by 100 mm|100 mm: measure it|[Aa] (rule|square) of \d+ mm|white square of 10 mm|80 90 100 100 mm|mm 10 20 30", RegexOptions.ExplicitCapture, 2000)]
    private static partial Regex PrintedScale();

    // The values that a kit's keys have where it leaves them out, as they are written into it.
    [GeneratedRegex(@"([a-z][\w-]*(\[\d+\])?\.)+[a-z-]+: [\d.]+ ?(mm|cm|m/s|m|g|kg|N)( x [\d.]+ ?mm)*", RegexOptions.ExplicitCapture, 2000)]
    private static partial Regex Defaults();

    // What is sold in metric sizes is asked for so, its inches behind it.
    [GeneratedRegex(@"[\d.]+ mm \((\d+ )?[\d./]+ in\)", RegexOptions.ExplicitCapture, 2000)]
    private static partial Regex SoldInMetric();

    // The heads of a card's lines of distances: centimetres, inches under them, power under both.
    [GeneratedRegex(@"cm in power", RegexOptions.ExplicitCapture, 2000)]
    private static partial Regex HeadsUnderEachOther();

    // On the sensor, which is made in millimetres.
    [GeneratedRegex(@"a 20 mm beetle is 10 mm long on the sensor", RegexOptions.ExplicitCapture, 2000)]
    private static partial Regex SensorExample();
}
