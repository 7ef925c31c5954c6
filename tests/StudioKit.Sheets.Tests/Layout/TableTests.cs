using StudioKit.Sheets.Drawings;
using StudioKit.Sheets.Fonts;
using StudioKit.Sheets.Layout;

namespace StudioKit.Sheets.Tests.Layout;

public sealed class TableTests
{
    private static readonly Gen<IReadOnlyList<string>> RowTexts =
        Gen.String[Gen.Char['a', 'z'], 1, 12].Array[1, 40].Select(words => string.Join(' ', words)).Array[1, 120]
            .Select(rows => (IReadOnlyList<string>)rows);

    [Fact]
    public void No_row_is_lost_or_doubled_and_every_page_has_the_head() =>
        RowTexts.Sample(
            rows =>
            {
                var laid = Pages.Lay(Numbered(rows));

                var numbers = laid.Document.Pages.SelectMany(Pages.Labels).Where(text => text.StartsWith('#')).ToList();
                numbers.Should().Equal(rows.Select((_, i) => $"#{i}"));
                laid.Document.Pages.Should().OnlyContain(page => Pages.Labels(page).Count(text => text == "Part") == 1);
                laid.Problems.Should().BeEmpty();
            },
            iter: 30);

    [Fact]
    public void Every_word_of_every_cell_is_printed_and_nothing_leaves_the_page() =>
        RowTexts.Sample(
            rows =>
            {
                var laid = Pages.Lay(Numbered(rows));
                var body = new PageSetup(Paper.A4).Body.Grown(0.01);
                var words = laid.Document.Pages.SelectMany(Pages.Labels).SelectMany(text => text.Split(' ')).ToLookup(word => word);

                rows.SelectMany(row => row.Split(' ')).Should().OnlyContain(word => words.Contains(word));
                laid.Document.Pages.SelectMany(page => page.Marks).OfType<Label>()
                    .Where(label => label.SizePt == 9)
                    .Should().OnlyContain(label => label.Bounds.Right <= body.Right && label.Bounds.Bottom <= body.Bottom);
            },
            iter: 10);

    [Fact]
    public void A_row_that_fits_a_page_is_not_split_but_one_taller_than_a_page_is()
    {
        var tall = string.Join(' ', Enumerable.Range(0, 400).Select(i => $"tall{i}"));
        var giant = string.Join(' ', Enumerable.Range(0, 3000).Select(i => $"giant{i}"));

        var pages = Pages.Lay(Numbered(["short", tall, giant])).Document.Pages;

        PagesWith(pages, "tall").Should().HaveCount(1);
        PagesWith(pages, "giant").Should().HaveCountGreaterThan(1);
        pages.SelectMany(Pages.Labels).SelectMany(text => text.Split(' ')).Where(word => word.StartsWith("giant", StringComparison.Ordinal))
            .Should().Equal(Enumerable.Range(0, 3000).Select(i => $"giant{i}"));
    }

    [Fact]
    public void Long_names_are_broken_before_a_number_is()
    {
        var name = new string('n', 200);
        var table = new Table(
            [new Column("Name"), new Column("Length", ColumnKind.Right), new Column("Other name"), new Column("Mass", ColumnKind.Decimal)],
            [new TableRow([name, "1234.5 mm", name, "1.25 kg"])]);

        var labels = table.Fit(174, 300).Marks.OfType<Label>().ToList();

        labels.Select(label => label.Text).Should().Contain(["1234.5 mm", "1.25 kg", "Length", "Mass"]);
        labels.Should().OnlyContain(label => label.Bounds.Right <= 174.01);
    }

    [Fact]
    public void Decimal_points_stand_under_each_other()
    {
        var table = new Table([new Column("Mass g", ColumnKind.Decimal)], [Row("1250.5"), Row("3.25"), Row("80")]);

        var labels = table.Fit(100, 100).Marks.OfType<Label>().Skip(1).ToList();
        var points = labels.Select(label => label.At.X
            + StudioKit.Sheets.Fonts.TextMeter.Width(label.Text.Split('.')[0], 9, TextWeight.Regular));

        points.Should().AllSatisfy(x => x.Should().BeApproximately(points.First(), 1e-9));
    }

    [Fact]
    public void Columns_share_the_width_exactly_when_words_must_wrap()
    {
        var table = Numbered([string.Join(' ', Enumerable.Repeat("word", 100))]);

        ColumnWidths.Share(table, 120).Sum().Should().BeApproximately(120, 1e-9);
    }

    private static TableRow Row(params string[] cells) => new(cells);

    private static Table Numbered(IReadOnlyList<string> rows) => new(
        [new Column("No", ColumnKind.Right), new Column("Part")], [.. rows.Select((row, i) => Row($"#{i}", row))]);

    private static IEnumerable<Page> PagesWith(IReadOnlyList<Page> pages, string start) =>
        pages.Where(page => Pages.Labels(page).Any(text => text.StartsWith(start, StringComparison.Ordinal)));
}
