using System.Globalization;
using StudioKit.Kits;
using StudioKit.Kits.SetUps;
using StudioKit.Physics.Exposure;
using StudioKit.Planning.Tests.Frames;

namespace StudioKit.Planning.Tests.Plans;

/// <summary>Whatever a kit file may hold, the plan says something true of it.</summary>
public sealed class AnyKitTests
{
    // A whole night may draw more of them: STUDIOKIT_RANDOM_KITS=5000.
    private static readonly int Kits = int.TryParse(Environment.GetEnvironmentVariable("STUDIOKIT_RANDOM_KITS"), CultureInfo.InvariantCulture, out var kits) ? kits : 40;

    [Fact]
    public void Any_readable_kit_is_planned_without_a_number_that_is_none() =>
        RandomKits.Any.Sample(
            kit =>
            {
                var plan = PlanOf(kit);
                PlanNumbers.NotFinite(plan).Should().BeEmpty();
                if (plan.Frame is { } frame)
                {
                    AssemblyFaults.Of(frame).Should().BeEmpty();
                }
            },
            iter: Kits,
            threads: 1);

    [Fact]
    public void What_works_keeps_every_limit_that_a_camera_and_a_flash_have_and_what_does_not_says_why() =>
        LikelyKits.Any.Sample(kit =>
        {
            foreach (var exposure in PlanOf(kit).Exposures)
            {
                if (exposure.Verdict.Verdict == Verdict.Works)
                {
                    KeepsTheCamera(kit, exposure);
                    KeepsTheFlashes(kit, exposure);
                }
                else if (!exposure.IsUsable)
                {
                    exposure.Verdict.Missed.Should().NotBeEmpty();
                }
            }
        }, iter: Kits, threads: 1);

    private static Plan PlanOf(KitSpec kit) => KitPlanner.Plan(new KitReadResult(kit, [], [], new()));

    // Clicks of a dial are rounded marks, so a third of a stop is the play that each limit has.
    private static void KeepsTheCamera(KitSpec kit, ExposurePlan exposure)
    {
        const double click = 1.27;
        var lens = kit.Lenses.Single(lens => lens.Name == exposure.Framing.Lens);
        exposure.Iso.Value.Should().BeInRange(kit.Camera.LowestIso.Value / click, kit.Camera.HighestIso.Value * click);
        exposure.Aperture.Value.Should().BeInRange(lens.WidestAperture.Value / 1.13, lens.SmallestAperture.Value * 1.13);
        exposure.Shutter.Seconds.Should().BeGreaterThan(kit.Camera.FlashSync.Seconds / click);
        exposure.Framing.Reached.Should().BeTrue();
    }

    private static void KeepsTheFlashes(KitSpec kit, ExposurePlan exposure)
    {
        var setUp = kit.SetUps.Single(setUp => setUp.Name == exposure.SetUp);
        foreach (var light in exposure.Lights)
        {
            var flash = kit.Flashes.Single(flash => flash.Name == light.Flash);
            light.Power.Fraction.Should().BeInRange(flash.LowestPower.Fraction / 1.27, 1);
            var clicks = light.Power.StopsBelowFull * flash.PowerStep switch { PowerStep.Whole => 1, PowerStep.Half => 2, _ => 3 };
            clicks.Should().BeApproximately(Math.Round(clicks), 1e-6, $"{light.Flash} has a dial of {flash.PowerStep} stops");
        }

        if (exposure.Kind == SetUpKind.WhiteBackground)
        {
            // The account re-evaluated line by line, not the number that the solver returned.
            exposure.Lights[0].Budget.Total.Value.Should().BeGreaterThanOrEqualTo(setUp.TargetWhiteMargin.Value - 1e-6);
            exposure.BrightestMargin!.Value.Value.Should().BeLessThanOrEqualTo(exposure.HighestMargin!.Value.Value + 1e-6);
            exposure.AmbientLevel.Value.Should().BeLessThanOrEqualTo(-setUp.AmbientBelowFlash.Value + 1e-6);
        }
        else if (exposure.Kind == SetUpKind.DarkBackground)
        {
            exposure.AmbientLevel.Value.Should().BeLessThanOrEqualTo(-setUp.AmbientUnder.Value + 1e-6);
        }
    }
}
