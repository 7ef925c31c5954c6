using StudioKit.Kits;
using StudioKit.Kits.Studio;
using StudioKit.Kits.Subjects;
using StudioKit.Physics;
using StudioKit.Planning.Cautions;
using StudioKit.Planning.Session;
using StudioKit.Planning.Studio;
using UnitsNet;

namespace StudioKit.Planning.Tests.Cautions;

/// <summary>Which cautions a plan gives cause for; what is expected is the review of a working photographer (common practice, no source).</summary>
public sealed class CautionPlannerTests
{
    private static readonly Plan Fen = KitText.Demo("fen-edge.yaml");

    [Fact]
    public void A_frog_on_the_sheet_warns_of_the_charged_flash_that_lies_under_it()
    {
        var caution = Fen.Cautions.Single(caution => caution.Kind == CautionKind.WetSheetOverFlash);

        caution.Subjects.Should().Equal("common frog");
        caution.Groups.Should().Equal(SubjectGroup.Amphibians);
        caution.Sheets.Should().Contain([CautionSheet.Build, CautionSheet.Session, CautionSheet.Handling]);
        var flash = caution.Flashes.Single();
        (flash.Flash, flash.Support).Should().Be(("sedge", FlashSupport.Ground));
        flash.SetUps.Should().Equal("white");
        flash.BelowPanel.Should().Be(Fen.Frame!.LowerFlashes.Single().BelowPanel);
    }

    [Fact]
    public void A_frog_that_is_never_on_the_sheet_wets_none() =>
        Kinds(Changed(kit => kit with { SetUps = [.. kit.SetUps.Select(setUp => setUp.Name == "white" ? setUp with { Subjects = ["hawk-moth"] } : setUp)] }))
            .Should().NotContain(CautionKind.WetSheetOverFlash);

    [Fact]
    public void A_dry_group_wets_no_sheet_but_a_wet_subject_in_it_does()
    {
        var dry = Changed(kit => kit with { Subjects = [.. kit.Subjects.Where(subject => subject.Group != SubjectGroup.Amphibians)] });
        var wet = dry with { Kit = dry.Kit with { Subjects = [.. dry.Kit.Subjects.Select(subject => subject with { Wet = subject.Name == "raft spider" })] } };

        Kinds(dry).Should().NotContain(CautionKind.WetSheetOverFlash);
        PlanStages.Cautions(wet).Single(caution => caution.Kind == CautionKind.WetSheetOverFlash).Subjects.Should().Equal("raft spider");
    }

    [Fact]
    public void Without_a_frame_the_flash_is_where_the_kit_puts_it() =>
        PlanStages.Cautions(Fen with { Frame = null }).Single(caution => caution.Kind == CautionKind.WetSheetOverFlash)
            .Flashes.Single().BelowPanel.Centimeters.Should().BeApproximately(45, 1e-9);

    [Fact]
    public void Pegs_and_cords_are_told_where_there_are_some()
    {
        var cords = Fen.Cautions.Single(caution => caution.Kind == CautionKind.TripHazards);
        (cords.Pegs, cords.Guys).Should().Be((4, true));

        var pegs = KitText.Demo("heath-ultralight.yaml").Cautions.Single(caution => caution.Kind == CautionKind.TripHazards);
        (pegs.Pegs, pegs.Guys).Should().Be((4, false));

        Kinds(Fen with { Frame = Fen.Frame! with { Pegs = 0 } }).Should().NotContain(CautionKind.TripHazards);
    }

    [Theory]
    [InlineData(SubjectGroup.Scorpions, CautionKind.Venom)]
    [InlineData(SubjectGroup.CentipedesAndMillipedes, CautionKind.Venom)]
    [InlineData(SubjectGroup.Reptiles, CautionKind.Venom)]
    [InlineData(SubjectGroup.SmallMammals, CautionKind.BitesAndDiseases)]
    [InlineData(SubjectGroup.FlyingInsects, CautionKind.Stings)]
    public void What_bites_or_stings_is_warned_of_on_its_card(SubjectGroup group, CautionKind kind)
    {
        var card = Fen.Handling[0] with { Group = group };

        PlanStages.Cautions(Fen with { Handling = [card] }).Single(caution => caution.Kind == kind).Should().Match<PlanCaution>(caution =>
            caution.Groups.Single() == group && caution.Sheets.Contains(CautionSheet.Handling) && caution.Sheets.Contains(CautionSheet.Session));
        PlanStages.Cautions(Fen with { Handling = [card with { Group = SubjectGroup.LifelessThings }] }).Should().NotContain(caution => caution.Kind == kind);
    }

    [Fact]
    public void One_person_is_alone_and_two_are_not()
    {
        var alone = KitText.Demo("heath-ultralight.yaml");

        alone.Cautions.Single(caution => caution.Kind == CautionKind.LoneWork).Day!.Value.Seconds
            .Should().BeApproximately(alone.Session!.Blocks.Sum(block => block.First.Time.Seconds + ((alone.Session.Rounds - 1) * (block.Following?.Time.Seconds ?? 0))), 1e-6, "each round is counted once");
        Kinds(Fen).Should().NotContain(CautionKind.LoneWork);
        Kinds(Changed(kit => kit with { Pack = kit.Pack with { People = [.. kit.Pack.People.Take(1)] } })).Should().Contain(CautionKind.LoneWork);
    }

    [Theory]
    [InlineData(12, 4, false)]
    [InlineData(22, 1, false)]
    [InlineData(22, 10, true)]
    [InlineData(30, 1, true)]
    public void Heat_comes_of_temperature_and_of_a_long_day(double celsius, int rounds, bool hot)
    {
        var plan = Changed(kit => kit with { Site = kit.Site with { Temperature = Temperature.FromDegreesCelsius(celsius) } });
        ValueList<SessionBlock> blocks = [.. plan.Session!.Blocks.Select(block => block with { Rounds = rounds })];

        Kinds(plan with { Session = plan.Session with { Blocks = blocks } }).Contains(CautionKind.Heat).Should().Be(hot);
    }

    [Fact]
    public void A_kit_without_living_things_panel_or_session_gives_no_cause()
    {
        KitText.Plan(KitText.Bare).Cautions.Should().BeEmpty();
        Fen.Cautions.Select(caution => caution.Kind).Should().BeInAscendingOrder().And.OnlyHaveUniqueItems();
    }

    [Fact]
    public void Stings_are_told_with_flying_insects_alone_and_dangers_of_disinfectants_with_the_guides_that_name_them()
    {
        Kinds(Fen).Should().Contain([CautionKind.ProtectedHere, CautionKind.Stings, CautionKind.Bleach, CautionKind.FlammableDisinfectant, CautionKind.EyesOverLowerFlash, CautionKind.Ticks]);
        Fen.Cautions.Where(caution => caution.Kind is CautionKind.Bleach or CautionKind.FlammableDisinfectant)
            .Should().OnlyContain(caution => caution.Groups.Single() == SubjectGroup.Amphibians);
        Kinds(KitText.Demo("tall-stand.yaml")).Should().NotContain(
            [CautionKind.Stings, CautionKind.Bleach, CautionKind.FlammableDisinfectant, CautionKind.WetSheetOverFlash]);
        Kinds(Fen with { Frame = null, Kit = Fen.Kit with { SetUps = [.. Fen.Kit.SetUps.Where(setUp => setUp.Name != "white")] } })
            .Should().NotContain([CautionKind.EyesOverLowerFlash, CautionKind.SheetCleaning, CautionKind.WetSheetOverFlash]);
    }

    /// <summary>Acrylic and polycarbonate both craze in alcohols (Journal of Materials Science 37, 5115, abstract); polycarbonate bears no alkaline solutions (a published table of its resistance).</summary>
    [Theory]
    [InlineData("opal-acrylic-3", false)]
    [InlineData("opal-polycarbonate-3", true)]
    public void What_the_sheet_is_made_of_decides_what_harms_it(string part, bool alkalis)
    {
        var kit = KitText.Read(KitText.Bare + $"panel: {{part: {part}}}\n").Kit!;
        var caution = PlanStages.Cautions(Fen with { Kit = Fen.Kit with { Panel = kit.Panel } }).Single(caution => caution.Kind == CautionKind.SheetCleaning);

        caution.Harms.Should().Contain([SheetHarm.Alcohol, SheetHarm.Solvents]);
        caution.Harms.Contains(SheetHarm.Alkalis).Should().Be(alkalis);
        caution.Sources.Should().HaveCount(alkalis ? 2 : 1);
        caution.Bent.Should().BeFalse();
    }

    private static Plan Changed(Func<KitSpec, KitSpec> change) => Fen with { Kit = change(Fen.Kit) };

    private static IEnumerable<CautionKind> Kinds(Plan plan) => PlanStages.Cautions(plan).Select(caution => caution.Kind);
}
