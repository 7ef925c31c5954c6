using StudioKit.Planning;
using StudioKit.Planning.Session;
using StudioKit.Sheets.Documents.Outdoors;
using StudioKit.Sheets.Layout;
using StudioKit.Wording;

namespace StudioKit.Sheets.Tests.Documents.Outdoors;

public sealed class FieldPackTests
{
    [Theory]
    [MemberData(nameof(DemoBooks.Kits), MemberType = typeof(DemoBooks))]
    public void It_is_two_sheets_at_most_with_the_log_on_its_last_side(string kit)
    {
        foreach (var paper in Enum.GetValues<Paper>())
        {
            var laid = FieldPack.Lay(DemoBooks.Plan(kit), paper, Pages.Stamp).Alone(Pages.Stamp);
            laid.Problems.Should().BeEmpty();
            laid.Document.Pages.Count.Should().BeLessThanOrEqualTo(4);
            Pages.Labels(laid.Document.Pages[^1]).Should().Contain("frames").And.Contain("released");
        }
    }

    [Theory]
    [MemberData(nameof(DemoBooks.Kits), MemberType = typeof(DemoBooks))]
    public void It_has_what_is_needed_outdoors_cautions_first(string kit)
    {
        var plan = DemoBooks.Plan(kit);
        var text = Text(plan);

        var order = new[] { "Before anything else", "Stop at once", "Which card for which animal", "Rounds 1", "released" }.Select(word => text.IndexOf(word, StringComparison.Ordinal)).ToList();
        order.Should().NotContain(-1).And.BeInAscendingOrder();
        text.Should().ContainAll(plan.Session!.Blocks.SelectMany(block => block.SetUps.Select(setUp => setUp.SetUp)).Distinct());
        if (plan.Frame is not null)
        {
            text.Should().ContainAll("Setting up", "Packing down", "TAKE IT DOWN", WindSigns.Seen(plan.Frame.Wind!.Beaufort));
        }
    }

    [Fact]
    public void A_step_has_a_box_for_each_round_that_it_is_done_in()
    {
        var plan = DemoBooks.Plan("fen-edge");
        var block = plan.Session!.Blocks.First(one => one is { Following: not null, Rounds: > 2 });

        var table = RoundsTable.Steps(plan, block, 7, TypeScale.Small);

        foreach (var ((part, step), row) in block.Parts.Zip(table.Rows))
        {
            var boxes = table.Columns.Zip(row.Cells).Count(cell => cell.First.Kind == ColumnKind.TickBox && cell.Second.Length > 0);
            boxes.Should().Be(part switch { RoundPart.First => 1, RoundPart.Following => block.Rounds - 1, _ => block.Rounds }, SessionStepText.Of(step));
            row.Cells[2].Should().Be((1 + plan.Ring.TakeWhile(exposure => exposure.SetUp != step.SetUp || exposure.Framing.Name != step.Framing).Count()).ToString(System.Globalization.CultureInfo.InvariantCulture));
        }

        table.Rows.Select(row => row.Cells[0]).Should().Equal(Enumerable.Range(7, table.Rows.Count).Select(number => number.ToString(System.Globalization.CultureInfo.InvariantCulture)));
        RoundsTable.Lines(block, TypeScale.Small).Rows.Should().HaveCount(block.Rounds);
    }

    [Fact]
    public void A_test_is_told_in_words_once_a_session_and_by_the_number_of_that_step_after()
    {
        var session = DemoBooks.Plan("fen-edge").Session!;
        var told = RoundsTable.FirstTests(session);
        var steps = session.Blocks.SelectMany(block => block.Parts).Select(part => part.Step).ToList();
        var rows = new List<TableRow>();
        foreach (var block in session.Blocks)
        {
            rows.AddRange(RoundsTable.Steps(DemoBooks.Plan("fen-edge"), block, rows.Count + 1, TypeScale.Small, told).Rows);
        }

        var tests = steps.Zip(rows).Where(pair => TestStepText.Of(pair.First.Tests).Length > 0).ToList();

        tests.Should().HaveCountGreaterThan(told.Count(test => test.Key.Length > 0), "some tests come again");
        foreach (var (step, row) in tests)
        {
            var words = TestStepText.Of(step.Tests);
            var first = 1 + steps.FindIndex(one => TestStepText.Of(one.Tests) == words);
            var here = row.Cells[0] == first.ToString(System.Globalization.CultureInfo.InvariantCulture);
            row.Cells[1].Should().EndWith(here ? words : FormattableString.Invariant($"Check as at step {first}."));
        }
    }

    // World Meteorological Organization, Manual on Codes (WMO-No. 306), volume I.1, part A, section E: what is seen on land.
    [Theory]
    [InlineData(0, "smoke")]
    [InlineData(2, "face")]
    [InlineData(3, "flag")]
    [InlineData(4, "dust")]
    [InlineData(5, "small trees")]
    [InlineData(6, "umbrella")]
    [InlineData(7, "whole trees")]
    [InlineData(8, "twigs break")]
    public void The_wind_is_told_by_the_signs_that_the_scale_is_defined_by(int force, string sign) => WindSigns.Seen(force).Should().Contain(sign);

    [Fact]
    public void A_studio_comes_down_from_the_first_force_that_it_was_not_checked_for()
    {
        var plan = DemoBooks.Plan("fen-edge");
        var table = WindTable.Of(plan, TypeScale.Small).OfType<Table>().Single();
        table.Rows.First(row => row.Cells[3] == "TAKE IT DOWN").Cells[0].Should().Be((plan.Frame!.Wind!.Beaufort + 1).ToString(System.Globalization.CultureInfo.InvariantCulture));
        table.Rows.Count(row => row.Cells[3] == "stands").Should().Be(plan.Frame.Wind.Beaufort + 1);
    }

    [Fact]
    public void A_day_with_more_steps_than_two_sheets_hold_sends_to_the_session_plan_and_keeps_to_two_sheets()
    {
        var plan = DemoBooks.Plan("fen-edge");
        var crowded = plan with { Session = plan.Session! with { Blocks = [.. Enumerable.Repeat(plan.Session.Blocks[1], 12)] } };

        var laid = FieldPack.Lay(crowded, Paper.A4, Pages.Stamp).Alone(Pages.Stamp);

        laid.Document.Pages.Count.Should().BeLessThanOrEqualTo(4);
        string.Join(' ', laid.Document.Pages.SelectMany(Pages.Labels)).Should().Contain("take the session plan along");
    }

    private static string Text(Plan plan) => string.Join(' ', FieldPack.Lay(plan, Paper.A4, Pages.Stamp).Alone(Pages.Stamp).Document.Pages.SelectMany(Pages.Labels));
}
