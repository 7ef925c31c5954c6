using StudioKit.Planning.Cutting;
using StudioKit.Planning.Tests.Cutting;
using UnitsNet;

namespace StudioKit.Cutting.Tests;

public sealed class OptimalSheetCutPlannerTests
{
    private static readonly OptimalSheetCutPlanner Planner = new();

    /// <summary>Most equal panels a sheet yields by edge-to-edge cuts, counted by an exact search over all cuts of the enlarged sheet.</summary>
    [Theory]
    [InlineData(2440, 1220, 600, 400, 0, true, 12)]
    [InlineData(2440, 1220, 600, 400, 3, true, 12)]
    [InlineData(2440, 1220, 600, 400, 3, false, 12)]
    [InlineData(2440, 1220, 610, 405, 0, true, 12)]
    [InlineData(2440, 1220, 610, 405, 3, true, 8)]
    [InlineData(2440, 1220, 610, 405, 3, false, 6)]
    [InlineData(1830, 1220, 610, 405, 0, true, 9)]
    [InlineData(1830, 1220, 610, 405, 3, true, 6)]
    [InlineData(1830, 1220, 610, 405, 3, false, 4)]
    [InlineData(1000, 500, 330, 250, 0, true, 6)]
    [InlineData(1000, 500, 330, 250, 3, true, 3)]
    [InlineData(1000, 500, 330, 250, 3, false, 3)]
    [InlineData(1220, 610, 600, 400, 3, true, 3)]
    [InlineData(1220, 610, 600, 400, 3, false, 2)]
    [InlineData(3050, 2050, 600, 400, 0, true, 25)]
    [InlineData(3050, 2050, 600, 400, 4, true, 25)]
    [InlineData(3050, 2050, 600, 400, 4, false, 25)]
    public void A_sheet_yields_as_many_equal_panels_as_can_be_cut(
        double width, double height, double w, double h, double kerf, bool turn, int most)
    {
        SheetCutRequest Job(int count) => new()
        {
            Pieces = [new SheetPiece("panel", Length.FromMillimeters(w), Length.FromMillimeters(h), count, turn)],
            Stock = [new StockSheet("sheet", Length.FromMillimeters(width), Length.FromMillimeters(height), 1)],
            Kerf = Length.FromMillimeters(kerf),
        };
        var fits = Planner.Plan(Job(most));
        var oneTooMany = Planner.Plan(Job(most + 1));

        fits.TotalSheets.Should().Be(1);
        oneTooMany.TotalSheets.Should().Be(2);
        oneTooMany.Proof.ProvenOptimal.Should().BeTrue();
        CutPlanChecks.Holds(Job(most + 1), oneTooMany).Should().BeTrue();
    }

    [Fact]
    public void Small_random_jobs_take_as_few_sheets_as_trying_everything_says() =>
        SmallSheets.Sample(
            small =>
            {
                var plan = Planner.Plan(Request(small));
                var fewest = new TriedSheets(small.Pieces, small.Kerf).Fewest(small.Width, small.Height);
                return plan.TotalSheets == fewest && plan.Proof.ProvenOptimal && CutPlanChecks.Holds(Request(small), plan);
            },
            iter: 60);

    [Fact]
    public void Random_jobs_are_whole_and_never_dearer_than_first_fit() =>
        CutJobs.Sheets.Sample(
            job =>
            {
                var plan = Planner.Plan(job);
                var quick = new FirstFitSheetCutPlanner().Plan(job);
                return CutPlanChecks.Holds(job, plan)
                    && (!quick.Complete || (plan.Complete && plan.Proof.Value <= quick.Proof.Value))
                    && (!quick.Complete || quick.Proof.LowerBound <= plan.Proof.Value);
            },
            iter: 40);

    [Fact]
    public void A_remnant_on_hand_is_cut_before_a_sheet_is_bought()
    {
        var plan = Planner.Plan(new SheetCutRequest
        {
            Pieces = [new SheetPiece("skirt", Length.FromMillimeters(400), Length.FromMillimeters(120), 4)],
            Stock =
            [
                new StockSheet("new", Length.FromMillimeters(1000), Length.FromMillimeters(500), 38),
                new StockSheet("remnant", Length.FromMillimeters(420), Length.FromMillimeters(490), 0, 1),
            ],
            Kerf = Length.FromMillimeters(3),
        });

        plan.Sheets.Should().ContainSingle().Which.StockLabel.Should().Be("remnant");
        plan.StockForNextTime.Should().BeEmpty();
    }

    private static readonly Gen<(int Width, int Height, int Kerf, (int Width, int Height, bool MayTurn)[] Pieces)> SmallSheets =
        from width in Gen.Int[7, 14]
        from height in Gen.Int[7, 14]
        from kerf in Gen.Int[0, 2]
        from pieces in Gen.Select(Gen.Int[1, 7], Gen.Int[1, 7], Gen.Bool).Array[1, 6]
        select (width, height, kerf, pieces);

    private static SheetCutRequest Request((int Width, int Height, int Kerf, (int Width, int Height, bool MayTurn)[] Pieces) small) => new()
    {
        Pieces =
        [
            .. small.Pieces.Select((piece, i) =>
                new SheetPiece($"P{i}", Length.FromMillimeters(piece.Width), Length.FromMillimeters(piece.Height), 1, piece.MayTurn)),
        ],
        Stock = [new StockSheet("sheet", Length.FromMillimeters(small.Width), Length.FromMillimeters(small.Height), 1)],
        Kerf = Length.FromMillimeters(small.Kerf),
    };
}
