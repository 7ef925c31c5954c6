using StudioKit.Kits.Studio;
using StudioKit.Kits.Subjects;
using StudioKit.Planning;
using StudioKit.Planning.Cautions;
using StudioKit.Planning.Handling;
using StudioKit.Planning.Studio;
using StudioKit.Sheets.Json;
using StudioKit.Wording;
using UglyToad.PdfPig;
using UnitsNet;

namespace StudioKit.Sheets.Tests.Documents;

/// <summary>Sheets say the cautions that a plan holds for them, once each.</summary>
public sealed class CautionsTests
{
    private static readonly PlanCaution Wet = new()
    {
        Kind = CautionKind.WetSheetOverFlash,
        Sheets = [CautionSheet.Build, CautionSheet.Handling],
        Groups = [SubjectGroup.Amphibians],
        Subjects = ["fen frog", "ditch newt"],
        Flashes = [new FlashUnderSheet("reed", ["white"], Length.FromCentimeters(37), FlashSupport.Ground)],
    };

    private static readonly HandlingCard Frogs = new()
    {
        Group = SubjectGroup.Amphibians,
        Name = "amphibians",
        Subjects = [],
        Lines =
        [
            new HandlingAdvice(HandlingTopic.StopSigns, "Dull skin.", "common practice, no published source", Published: false),
            new HandlingAdvice(HandlingTopic.Hygiene, "What killed a fungus", "A study, 2003", Published: true)
            {
                Disinfectant = new Disinfectant(DisinfectantAgent.Hypochlorite, 0.0012, Duration.FromSeconds(30)),
            },
        ],
    };

    public static TheoryData<CautionKind> EveryKind => [.. Enum.GetValues<CautionKind>()];

    [Theory]
    [MemberData(nameof(EveryKind))]
    public void Every_kind_of_caution_has_words(CautionKind kind)
    {
        var caution = Wet with { Kind = kind, Material = "white opal acrylic", Harms = [.. Enum.GetValues<SheetHarm>()], Day = Duration.FromHours(3), Air = Temperature.FromDegreesCelsius(31) };

        CautionText.Title(caution).Should().NotBeEmpty();
        CautionText.Of(caution).Should().EndWith(".").And.NotContain("  ");
    }

    [Fact]
    public void A_build_sheet_says_which_flash_lies_under_a_wet_sheet_and_how_far()
    {
        var text = Text(SamplePlan.Plan with { Cautions = [Wet] }, "build-sheet.pdf");

        text.Should().Contain(Spaceless("fen frog and ditch newt")).And.Contain(Spaceless("Reed lies on the ground 37 cm under the sheet in white.")).And.Contain(Spaceless("switch the flash off"));
        Times(text, "Wet sheet over a flash").Should().Be(1);
        Text(SamplePlan.Plan, "build-sheet.pdf").Should().NotContain(Spaceless("Wet sheet over a flash"));
    }

    [Fact]
    public void A_handling_card_says_the_cautions_of_its_own_group_alone()
    {
        var snails = Frogs with { Group = SubjectGroup.Snails, Name = "snails", Lines = [Frogs.Lines[0]] };

        var both = Text(SamplePlan.Plan with { Handling = [Frogs, snails], Cautions = [Wet] }, "handling-cards.pdf");
        var other = Text(SamplePlan.Plan with { Handling = [snails], Cautions = [Wet] }, "handling-cards.pdf");

        Times(both, "Wet sheet over a flash").Should().Be(1);
        other.Should().NotContain(Spaceless("Wet sheet over a flash"));
        both.Should().Contain(Spaceless("Stop when")).And.Contain(Spaceless("Dull skin."));
        both.Should().Contain(Spaceless("What killed a fungus: 0.12 % sodium hypochlorite, wet for 30 s or longer. [1]"));
    }

    [Fact]
    public void A_sheet_that_is_held_bent_is_said_to_be_so_and_alcohol_kept_off_it()
    {
        var caution = new PlanCaution { Kind = CautionKind.SheetCleaning, Sheets = [CautionSheet.Build], Material = "white opal acrylic", Harms = [SheetHarm.Alcohol], Bent = true };

        CautionText.Of(caution).Should().StartWith("White opal acrylic held bent crazes or clouds from alcohol").And.Contain("none of it on the sheet").And.Contain("rinse");
        CautionText.Of(caution with { Bent = false, Harms = [SheetHarm.Alcohol, SheetHarm.Alkalis] }).Should().NotContain("bent").And.Contain("alkaline bleach").And.Contain("none of them");
    }

    [Fact]
    public void A_cover_asks_whether_it_is_protected_before_anything_else()
    {
        var plan = SamplePlan.Plan with { Cautions = [new PlanCaution { Kind = CautionKind.ProtectedHere, Sheets = [CautionSheet.FieldBook] }] };

        using var book = PdfDocument.Open(SheetSet.WriteBook(plan, new SheetOptions())[^1].Content.ToArray());

        Letters(book.GetPage(1)).Should().Contain(Spaceless("is it protected here?")).And.Contain(Spaceless("Test on an object of the animal's size first."));
    }

    [Fact]
    public void A_long_guide_goes_on_to_a_second_card()
    {
        var line = Frogs.Lines[0] with { Text = string.Concat(Enumerable.Repeat("Keep it in the shade. ", 12)) };
        HandlingTopic[] topics = [.. Enum.GetValues<HandlingTopic>()];
        var plan = SamplePlan.Plan with { Handling = [Frogs with { Lines = [.. topics.Select(topic => line with { Topic = topic })] }] };

        var file = SheetSet.Write(plan, new SheetOptions()).Single(file => file.Name == "handling-cards.pdf");

        file.Problems.Should().BeEmpty();
        var text = Text(plan, "handling-cards.pdf");
        text.Should().Contain(Spaceless("Handling: amphibians 1 of 1, more"));
        Times(text, "Keep it in the shade.").Should().Be(12 * topics.Length);
    }

    [Fact]
    public void The_JSON_of_a_plan_holds_its_cautions_with_their_parts()
    {
        var json = System.Text.Json.JsonDocument.Parse(PlanJson.Write(SamplePlan.Plan with { Frame = null, Cautions = [Wet] })).RootElement.GetProperty("cautions")[0];

        json.GetProperty("kind").GetString().Should().Be("wet-sheet-over-flash");
        json.GetProperty("flashes")[0].GetProperty("belowPanelMm").GetDouble().Should().BeApproximately(370, 1e-9);
        json.GetProperty("text").GetString().Should().Contain("switch the flash off");
    }

    private static string Text(Plan plan, string name)
    {
        using var document = PdfDocument.Open(SheetSet.Write(plan, new SheetOptions()).Single(file => file.Name == name).Content.ToArray());
        return string.Concat(document.GetPages().Select(Letters));
    }

    // Cards lie turned on the page, so letters are taken as they were drawn; and as lines break anywhere, without the spaces.
    private static string Letters(UglyToad.PdfPig.Content.Page page) => Spaceless(string.Concat(page.Letters.Select(letter => letter.Value)));

    private static string Spaceless(string text) => text.Replace(" ", "", StringComparison.Ordinal);

    private static int Times(string text, string words) => text.Split(Spaceless(words)).Length - 1;
}
