using StudioKit.Planning.Session;
using StudioKit.Sheets.Documents;
using StudioKit.Sheets.Drawings;
using StudioKit.Sheets.Layout;

namespace StudioKit.Sheets.Tests.Documents;

public sealed class PaperLogSheetTests
{
    private static readonly Stamp Stamp = new("Fen edge", "4f3a90c1", null);

    [Theory]
    [InlineData(Paper.A4)]
    [InlineData(Paper.Letter)]
    public void Both_sides_have_rows_for_a_pencil_in_rain_within_the_paper(Paper paper)
    {
        foreach (var page in Pages(paper))
        {
            var lines = page.Marks.OfType<Line>().Where(line => line.From.Y == line.To.Y).Select(line => line.From.Y).Order().ToList();

            lines.Should().HaveCountGreaterThan(9);
            lines.Zip(lines.Skip(1), (upper, lower) => lower - upper).Should().OnlyContain(height => height > 10, "a hand in the field writes no smaller (common practice, no source)");
            page.Marks.Should().OnlyContain(mark => mark.Bounds.Left >= 10 && mark.Bounds.Right <= page.WidthMm - 10 && mark.Bounds.Top >= 10 && mark.Bounds.Bottom <= page.HeightMm - 10);
        }
    }

    [Fact]
    public void Each_side_tells_the_letter_of_every_framing_and_set_up()
    {
        var keys = LetterKeys.Of(SamplePlan.Plan);
        keys.Framings.Should().NotBeEmpty();

        foreach (var page in Pages(Paper.A4))
        {
            var labels = page.Marks.OfType<Label>().Select(label => label.Text).ToList();
            labels.Should().Contain(keys.Framings.Concat(keys.SetUps).SelectMany(key => new[] { key.Letter, key.Name }));
        }
    }

    [Fact]
    public void The_content_that_the_letters_belong_to_stands_on_each_side() =>
        Pages(Paper.A4).Should().OnlyContain(page => page.Marks.OfType<Label>().Any(label => label.Text.Contains("content 4f3a90c1", StringComparison.Ordinal)));

    [Fact]
    public void No_letter_is_read_as_a_figure_and_none_stands_for_two_framings()
    {
        var framing = SamplePlan.Plan.Framings.First(one => one.Reached);
        var plan = SamplePlan.Plan with { Framings = [.. Enumerable.Range(0, 60).Select(i => framing with { Name = $"framing {i}" })] };

        var letters = LetterKeys.Of(plan).Framings.Select(key => key.Letter).ToList();

        letters.Should().OnlyHaveUniqueItems().And.NotContain(letter => letter.Contains('I') || letter.Contains('O'));
        letters.Where(letter => letter.Length == 1).Should().HaveCount(24);
        letters[24].Should().Be("AA");
    }

    private static IReadOnlyList<Page> Pages(Paper paper) => PaperLogSheet.Lay(SamplePlan.Plan, paper, Stamp).Finish(new PageRun(1, 2));
}
