using StudioKit.Planning.Cutting;
using UnitsNet;

namespace StudioKit.Planning.Tests.Cutting;

public sealed class FirstFitSheetCutPlannerTests
{
    private static readonly FirstFitSheetCutPlanner Planner = new();

    [Fact]
    public void Every_plan_keeps_every_piece_and_cuts_from_edge_to_edge() =>
        CutJobs.Sheets.Sample(job => CutPlanChecks.Holds(job, Planner.Plan(job)));

    /// <summary>Four quarters of a sheet fit without kerf and no longer with it: plain arithmetic.</summary>
    [Theory]
    [InlineData(0, 1)]
    [InlineData(1, 4)]
    public void Kerf_decides_whether_quarters_fit(double kerf, int sheets)
    {
        var plan = Planner.Plan(Job(kerf, new SheetPiece("Q", Length.FromMillimeters(500), Length.FromMillimeters(250), 4, MayTurn: false)));

        plan.TotalSheets.Should().Be(sheets);
        plan.Proof.ProvenOptimal.Should().Be(sheets == 1);
    }

    [Fact]
    public void Film_side_kept_means_never_turned()
    {
        var plan = Planner.Plan(Job(0, new SheetPiece("F", Length.FromMillimeters(300), Length.FromMillimeters(600), 1, MayTurn: false)));

        plan.Uncut.Should().ContainSingle().Which.Reason.Should().Be(UncutReason.TooLarge);
    }

    /// <summary>Whole tenths of a millimetre are counted up to a kilometre; nobody sells more, not even to order.</summary>
    [Fact]
    public void A_piece_of_over_a_kilometre_is_named_like_any_that_is_too_large()
    {
        var (side, depth) = (Length.FromMillimeters(1_001_012.95), Length.FromMillimeters(300));
        var plan = Planner.Plan(new SheetCutRequest { Pieces = [new SheetPiece("panel", side, depth)], Stock = [new StockSheet("to order", side, depth)] });

        plan.Uncut.Should().ContainSingle().Which.Should().Be(new UncutPiece("panel", Length.FromMillimeters(1_001_013), Length.FromMillimeters(300), 1, UncutReason.TooLarge));
        plan.Sheets.Should().BeEmpty();
    }

    private static SheetCutRequest Job(double kerf, params SheetPiece[] pieces) => new()
    {
        Pieces = pieces,
        Stock = [new StockSheet("S", Length.FromMillimeters(1000), Length.FromMillimeters(500), 10)],
        Kerf = Length.FromMillimeters(kerf),
    };
}
