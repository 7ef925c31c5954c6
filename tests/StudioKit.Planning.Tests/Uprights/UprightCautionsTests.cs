using StudioKit.Planning.Cautions;

namespace StudioKit.Planning.Tests.Uprights;

public sealed class UprightCautionsTests
{
    [Fact]
    public void Stakes_give_cause_to_ask_what_lies_in_the_ground()
    {
        Kinds("width: 400 mm, height: 300 mm").Should().Contain([CautionKind.SheetInWind, CautionKind.DrivingIntoGround, CautionKind.SheetEdges]).And.NotContain(CautionKind.TripHazards);
        Kinds("carrier: feet, width: 400 mm, height: 300 mm").Should().NotContain(CautionKind.DrivingIntoGround);
    }

    [Fact]
    public void Cords_are_fallen_over_and_their_pegs_go_into_the_ground() =>
        Kinds("carrier: feet, width: 400 mm, height: 300 mm, cord-pegs: 4, peg-hold: 3 kg").Should().Contain([CautionKind.TripHazards, CautionKind.DrivingIntoGround]);

    [Fact]
    public void A_sheet_with_no_panel_beside_it_is_cleaned_with_care_too() => Kinds("width: 400 mm, height: 300 mm").Should().Contain(CautionKind.SheetCleaning);

    [Fact]
    public void A_sheet_that_no_set_up_uses_gives_no_cause() =>
        KitText.Plan(StandKit.Text("  - {name: screen, width: 400 mm, height: 300 mm}\n  - {name: other, width: 300 mm, height: 300 mm}", StandKit.Growing("screen")))
            .Cautions.Single(caution => caution.Kind == CautionKind.SheetInWind).Uprights.Select(upright => upright.Name).Should().Equal("screen");

    private static IEnumerable<CautionKind> Kinds(string upright) =>
        KitText.Plan(StandKit.Text($"  - {{name: screen, {upright}}}", StandKit.Growing("screen"))).Cautions.Select(caution => caution.Kind);
}
