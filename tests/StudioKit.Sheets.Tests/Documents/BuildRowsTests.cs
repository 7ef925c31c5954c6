using StudioKit.Sheets.Documents.BuildSections;
using StudioKit.Sheets.Layout;

namespace StudioKit.Sheets.Tests.Documents;

/// <summary>What stands beside each other on the build sheet, and what is drawn once for several set-ups.</summary>
public sealed class BuildRowsTests
{
    [Fact]
    public void A_flash_that_lies_in_one_place_for_several_set_ups_is_drawn_once_and_named_after_all_of_them()
    {
        var plan = DemoBooks.Plan("pond-edge");
        var lit = plan.PanelLights.Where(light => light.Flashes.Count > 0).ToList();
        var places = lit.Select(light => string.Join(';', light.Flashes.Select(flash => (flash.Flash, flash.FromLeft, flash.FromFront, flash.Distance)))).Distinct().ToList();

        var drawn = FlashesBelowSection.Places(plan).OfType<DrawingBlock>().ToList();

        lit.Should().HaveCountGreaterThan(places.Count);
        drawn.Should().HaveCount(places.Count);
        drawn[0].Caption.Should().ContainAll(lit.Select(light => light.SetUp));
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(5)]
    public void Steps_stand_two_abreast_in_their_order_and_the_last_keeps_its_width(int count)
    {
        var steps = Enumerable.Range(1, count).Select(number => StepBlock.Of(number, "Step", "What to do.")).ToList();

        var rows = SideBySide.Rows(steps).Cast<SideBySide>().ToList();

        rows.SelectMany(row => row.Columns).Where(column => column.Block is not Spacer).Select(column => column.Block).Should().Equal(steps);
        rows.Should().OnlyContain(row => row.Columns.Count == 2 && row.Columns[0].Share == row.Columns[1].Share);
    }
}
