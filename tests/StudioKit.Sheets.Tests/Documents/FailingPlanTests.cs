using StudioKit.Kits.Cards;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Exposure.SetUps;
using StudioKit.Planning;

namespace StudioKit.Sheets.Tests.Documents;

public sealed class FailingPlanTests
{
    private static readonly SheetOptions Options = new() { Cards = [CardTemplates.Of("A6")] };

    private static readonly ExposurePlan Works = SamplePlan.White(SamplePlan.Framing("55 mm at 1:1", 1));

    private static readonly ExposurePlan Fails = SamplePlan.White(SamplePlan.Framing("90 mm at 1:4", 0.25)) with
    {
        Verdict = new ExposureVerdict { Verdict = Verdict.DoesNotWork, Missed = [new MissedLimit.FlashTooWeak("key flash", new DialMark(FlashPower.Full, PowerStep.Third), new Stops(1.4))] },
    };

    private static readonly Plan Half = SamplePlan.Plan with { Exposures = [Fails, Works] };

    [Fact]
    public void A_card_that_cannot_work_is_printed_on_request_only_and_the_others_keep_their_numbers()
    {
        Text(Half, Options, "cards-A6.pdf").Should().Contain("1 of 1").And.Contain(Works.Framing.Name).And.NotContain(Fails.Framing.Name);
        Text(Half, Options with { EvenIfFailing = true }, "cards-A6.pdf").Should().Contain("1 of 2").And.Contain("2 of 2").And.Contain("does not work").And.Contain(Fails.Framing.Name);
        (Half.CardNumber(Works.SetUp, Works.Framing.Name), Half.CardNumber(Fails.SetUp, Fails.Framing.Name), Half.CardNumber("no such", "card")).Should().Be((1, 2, null));
    }

    [Fact]
    public void What_is_to_be_mended_is_printed_before_everything_else()
    {
        var files = SheetSet.Write(Half, Options);

        files[0].Name.Should().Be("mend-first.pdf");
        Text(Half, Options, "mend-first.pdf").Should().Contain("To be mended first").And.Contain("Cards that cannot work, and are not printed").And.Contain(Fails.Framing.Name).And.Contain("1.4 stops");
        SheetSet.Write(Half with { Checks = [.. Half.Checks.Where(check => check.Passed)] }, Options).Select(file => file.Name).Should().NotContain("mend-first.pdf");
    }

    [Fact]
    public void Without_a_card_that_works_no_cards_are_made()
    {
        var plan = Half with { Exposures = [Fails] };

        SheetSet.Write(plan, Options).Select(file => file.Name).Should().NotContain("cards-A6.pdf").And.Contain("mend-first.pdf");
        SheetSet.Write(plan, Options with { EvenIfFailing = true }).Select(file => file.Name).Should().Contain("cards-A6.pdf");
    }

    private static string Text(Plan plan, SheetOptions options, string name)
    {
        using var document = UglyToad.PdfPig.PdfDocument.Open(SheetSet.Write(plan, options).Single(file => file.Name == name).Content.ToArray());
        return string.Join(' ', document.GetPages().Select(page => page.Text));
    }
}
