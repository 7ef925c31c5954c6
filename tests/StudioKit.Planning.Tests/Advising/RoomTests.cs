using StudioKit.Planning.Advising;
using StudioKit.Planning.Changes;

namespace StudioKit.Planning.Tests.Advising;

/// <summary>How far one can turn before something else goes wrong.</summary>
public sealed class RoomTests
{
    private const double Same = 1e-6;

    // What can be given away below is what keeps the darkest corner white, never what is left before the brightest point veils; a dial turns in whole clicks.
    [Theory]
    [InlineData(Symptom.WashedOut)]
    [InlineData(Symptom.EatenLegs)]
    public void Less_from_below_has_the_darkest_corners_margin_in_clicks_as_its_room(Symptom seen)
    {
        var (plan, cards) = White();

        foreach (var exposure in cards)
        {
            var step = exposure.Lights[0].DialStep.Value;
            var room = Of(plan, exposure, seen).Room!.Value.Value;
            room.Should().BeInRange(exposure.WhiteMargin!.Value.Value - step + Same, exposure.WhiteMargin.Value.Value + Same);
            (room / step).Should().BeApproximately(Math.Round(room / step), Same);
        }
    }

    [Fact]
    public void More_from_below_has_what_is_left_before_it_veils()
    {
        var (plan, cards) = White();

        foreach (var exposure in cards)
        {
            var step = exposure.Lights[0].DialStep.Value;
            var left = exposure.HighestMargin!.Value.Value - exposure.BrightestMargin!.Value.Value;
            Of(plan, exposure, Symptom.GreyCorners).Room!.Value.Value.Should().BeInRange(Math.Max(0, left - step), Math.Max(0, left) + Same);
        }
    }

    // Where not even the brightest point clips, the flash gives at least that point's margin less than planned.
    [Fact]
    public void Where_nothing_blinks_the_flash_below_makes_up_for_the_brightest_points_margin_and_no_click_too_many()
    {
        var (plan, cards) = White();

        foreach (var exposure in cards)
        {
            var then = Of(plan, exposure, Symptom.NothingBlinks).Advice!.Promise;
            var more = Math.Log2(then.Lights[0].Power.Fraction * then.Iso.Value / exposure.Lights[0].Power.Fraction / exposure.Iso.Value);
            more.Should().BeInRange(exposure.BrightestMargin!.Value.Value - Same, exposure.BrightestMargin.Value.Value + exposure.Lights[0].DialStep.Value);
        }
    }

    private static (Plan Plan, IReadOnlyList<ExposurePlan> Cards) White()
    {
        var plan = KitText.Demo("fen-edge.yaml");
        return (plan, [.. plan.Exposures.Where(exposure => exposure.OnPanel)]);
    }

    private static SymptomAdvice Of(Plan plan, ExposurePlan exposure, Symptom seen) => plan.Advice.Of(exposure).Symptoms.Single(symptom => symptom.Seen == seen);
}
