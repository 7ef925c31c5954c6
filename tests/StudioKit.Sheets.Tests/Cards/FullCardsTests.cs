using StudioKit.Kits.Cards;
using StudioKit.Sheets.Documents;
using StudioKit.Sheets.Layout;

namespace StudioKit.Sheets.Tests.Cards;

/// <summary>Cards that have more to say than their sides were made for.</summary>
public sealed class FullCardsTests
{
    /// <remarks>One of its cards has a table of symptoms that its front has no room for beside all else; the back that took it had no room for grey patches and code, which stood alone on a further card.</remarks>
    [Fact]
    public void A_table_that_leaves_a_full_front_changes_places_with_a_block_of_the_back_before_a_further_card_is_begun()
    {
        var plan = DemoBooks.Plan("fen-edge");
        var chapter = ExposureCards.Lay(plan, CardTemplates.Of("A6"), Paper.A4, Pages.Stamp);

        var labels = chapter.Finish(new PageRun(1, chapter.PageCount)).SelectMany(Pages.Labels).ToList();

        labels.Should().NotContain(label => label.EndsWith(", more", StringComparison.Ordinal));
        foreach (var once in new[] { "10 mm each, as printed", "Light, EV", "Check" })
        {
            labels.Count(label => label == once).Should().Be(plan.Ring.Count, $"'{once}' stands on every card once");
        }
    }
}
