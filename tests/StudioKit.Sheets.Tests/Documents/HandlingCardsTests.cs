using StudioKit.Kits.Subjects;
using StudioKit.Planning;
using StudioKit.Planning.Handling;
using UglyToad.PdfPig;
using UnitsNet;

namespace StudioKit.Sheets.Tests.Documents;

public sealed class HandlingCardsTests
{
    private static readonly HandlingCard Card = new()
    {
        Group = SubjectGroup.Amphibians,
        Name = "amphibians",
        HoldLimit = Duration.FromMinutes(5),
        Subjects = [new HeldSubject("fen frog", Duration.FromMinutes(4))],
        Lines =
        [
            new HandlingAdvice(HandlingTopic.LocalRules, "Rules of the place come first.", "common practice, no published source", Published: false),
            new HandlingAdvice(HandlingTopic.Holding, "Wet hands.", "A code of practice, 2001", Published: true),
        ],
    };

    [Fact]
    public void A_card_names_its_subjects_limits_and_the_source_of_every_published_line()
    {
        var text = Text(SamplePlan.Plan with { Handling = [Card] });

        text.Should().Contain("fen frog: at most 4 min").And.Contain("Wet hands. [1]").And.Contain("[1] A code of practice, 2001.");
        text.Should().Contain("Rules of the place come first.").And.Contain("Lines without a number are common practice, no published source.");
    }

    [Fact]
    public void A_guide_too_long_for_both_sides_says_so()
    {
        var line = Card.Lines[1] with { Text = string.Concat(Enumerable.Repeat("Keep it in the shade. ", 15)) };

        var file = File(SamplePlan.Plan with { Handling = [Card with { Lines = [.. Enumerable.Repeat(line, 40)] }] });

        file.Problems.Should().ContainSingle().Which.Should().Contain("handling card for amphibians");
    }

    private static SheetFile File(Plan plan) =>
        SheetSet.Write(plan, new SheetOptions()).Single(file => file.Name == "handling-cards.pdf");

    private static string Text(Plan plan)
    {
        using var document = PdfDocument.Open(File(plan).Content.ToArray());

        // Cards lie turned on the page, where words are not found by their places: take the letters as they were drawn.
        return string.Concat(document.GetPages().SelectMany(page => page.Letters).Select(letter => letter.Value));
    }
}
