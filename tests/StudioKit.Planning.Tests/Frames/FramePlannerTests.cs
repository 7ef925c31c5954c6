using StudioKit.Planning.Checks;
using StudioKit.Planning.Studio;
using StudioKit.Planning.Studio.Assembling;
using UnitsNet;

namespace StudioKit.Planning.Tests.Frames;

public sealed class FramePlannerTests
{
    [Theory]
    [InlineData(2)]
    [InlineData(7)]
    public void A_batch_cuts_every_piece_once_for_each_studio(int studios)
    {
        var (one, many) = (PlannedKit.Of().Frame!, PlannedKit.Of(stock: $"studios: {studios}").Frame!);

        Cut(many).Should().BeEquivalentTo(Cut(one).ToDictionary(pair => pair.Key, pair => pair.Value * studios));
        Panels(many).Should().BeEquivalentTo(Panels(one).ToDictionary(pair => pair.Key, pair => pair.Value * studios));
        many.Pieces.Should().BeEquivalentTo(one.Pieces, "pieces are listed for one studio");
        foreach (var line in one.Shopping.Where(line => line.Item.Contains("fittings", StringComparison.Ordinal)))
        {
            many.Shopping.Single(other => other.Item == line.Item).Count.Should().Be(line.Count * studios);
        }
    }

    [Fact]
    public void Panel_and_four_skirts_are_cut_and_cloth_keeps_its_direction()
    {
        var frame = PlannedKit.Of().Frame!;

        frame.SheetParts.Where(part => part.Material == "white cloth").Sum(part => part.Count).Should().Be(4);
        frame.SheetParts.Where(part => part.Material == "white cloth").Should().OnlyContain(part => part.KeepsDirection);
        var panel = frame.SheetParts.Single(part => part.Label == "panel");
        (panel.Width, panel.Height).Should().Be((Length.FromMillimeters(600), frame.Geometry.SheetLength));
        frame.SheetCuts.Complete.Should().BeTrue();
    }

    [Fact]
    public void Ballast_of_the_kit_counts_in_the_wind_and_not_in_the_bag()
    {
        var (bare, heavy) = (PlannedKit.Of(), PlannedKit.Of(frame: "ballast: 5 kg"));

        double Ratio(Plan plan) => plan.Checks.Single(check => check.Kind == PlanCheckKind.Tipping).Ratio!.Value;

        Ratio(heavy).Should().BeLessThan(Ratio(bare) / 2);
        heavy.Frame!.StandingMass.Should().Be(bare.Frame!.StandingMass);
        heavy.Frame.Assembly.OfType<AssemblyStep.HangBallast>().Should().ContainSingle(step => Math.Abs(step.Mass.Kilograms - 5) < 1e-9);
    }

    [Fact]
    public void Offcuts_on_hand_are_cut_before_anything_is_bought()
    {
        var bought = PlannedKit.Of(stock: "lengths: [{length: 2 m, price: 3}]").Frame!;
        var found = PlannedKit.Of(stock: "lengths: [{length: 2 m, price: 3}]\n  offcuts: [1900 mm, 1900 mm, 1900 mm, 1900 mm, 1900 mm]").Frame!;

        bought.PipeCuts.TotalCost.Should().BePositive();
        found.PipeCuts.TotalCost.Should().Be(0);
    }

    /// <summary>Arc length R·φ: 1 m through 30° is 523.6 mm of the sheet.</summary>
    [Fact]
    public void A_sweep_of_one_metre_through_30_degrees_takes_524_mm_of_the_sheet()
    {
        var plan = PlannedKit.Of(frame: "kind: swept-table", panel: "sweep-radius: 1 m\n  sweep-angle: 30°\n  keep-direction: yes");

        plan.Panel.SweptLength.Millimeters.Should().BeApproximately(523.599, 0.001);
    }

    /// <summary>Pyramid frustum worked by hand: head 72 × 42, front 200 × 150, 120 mm apart; half openings 64 and 54 mm.</summary>
    [Fact]
    public void A_folded_softbox_closes()
    {
        var box = new FoldedSoftbox(
            "small", "sedge", Length.FromMillimeters(72), Length.FromMillimeters(42), Length.FromMillimeters(200), Length.FromMillimeters(150),
            Length.FromMillimeters(120), Length.FromMillimeters(12));

        box.UpperSlant.Millimeters.Should().BeApproximately(Math.Sqrt((120 * 120) + (54 * 54)), 1e-9);
        box.SideSlant.Millimeters.Should().BeApproximately(Math.Sqrt((120 * 120) + (64 * 64)), 1e-9);

        // The seam is the edge from a corner of the head to a corner of the front, whichever side it is measured on.
        box.Seam.Millimeters.Should().BeApproximately(Math.Sqrt((120 * 120) + (54 * 54) + (64 * 64)), 1e-9);
    }

    private static Dictionary<string, int> Cut(FramePlan frame) => frame.PipeCuts.Bars.SelectMany(bar => bar.Marks)
        .GroupBy(mark => mark.Label).ToDictionary(group => group.Key, group => group.Count());

    private static Dictionary<string, int> Panels(FramePlan frame) => frame.SheetCuts.Sheets.SelectMany(sheet => sheet.Panels)
        .GroupBy(panel => panel.Label).ToDictionary(group => group.Key, group => group.Count());
}
