using StudioKit.Kits.Lighting;
using StudioKit.Kits.SetUps;
using StudioKit.Kits.Shelters;
using StudioKit.Physics.Daylight;
using StudioKit.Planning.SetUps;
using StudioKit.Planning.Sheltering;
using UnitsNet;

namespace StudioKit.Planning.Checks;

/// <summary>Whether what is put up against sun and wind covers what it is for, stands in the wind, and has a hand that holds it.</summary>
internal static class ShelterChecks
{
    private const string Practice = "CommonPractice";

    // The sun is half a degree across, and only where all of it is hidden is there shade.
    private const double SunAcross = 0.53 * Math.PI / 180;

    private const int HandsOfOne = 2;

    /// <summary>The checks of every set-up that puts something up.</summary>
    public static IEnumerable<PlanCheck> Of(Plan plan)
    {
        foreach (var setUp in plan.Kit.SetUps.Where(setUp => plan.Exposures.Any(exposure => exposure.SetUp == setUp.Name)))
        {
            var shelters = Shade.Of(plan.Kit, setUp).ToList();
            foreach (var shelter in shelters)
            {
                yield return Size(plan, setUp, shelter);
                yield return Wind(plan, setUp, shelter, shelters);
            }

            if (shelters.Exists(shelter => shelter.Held))
            {
                yield return Hands(plan, setUp, shelters.Count(shelter => shelter.Held));
            }
        }
    }

    private static PlanCheck Size(Plan plan, SetUpSpec setUp, ShelterSpec shelter)
    {
        var (wide, deep, high) = Behind(plan, setUp);
        var (first, second) = shelter.Shades ? Shaded(plan, setUp, shelter, wide, deep, high) : WindScreens.Needed(shelter, wide, high);
        var passed = shelter.Width >= first && shelter.Height >= second;
        return new PlanCheck
        {
            Kind = PlanCheckKind.ShelterSize,
            Parts = [shelter.Name, setUp.Name],
            Passed = passed,
            Demand = new CheckAmount.TwoSides(first, second),
            Capacity = new CheckAmount.TwoSides(shelter.Width, shelter.Height),
            Ratio = Math.Max(first / shelter.Width, second / shelter.Height),
            SourceKey = shelter.Shades ? "Derived" : Practice,
            SourceLocator = shelter.Shades ? "a level shade throws its own shape; the sun is half a degree across" : "as high as what stands behind it, and wider by what the wind swings",
            Remedy = passed ? null : new CheckRemedy(CheckRemedyKind.LargerShelter) { Amount = new CheckAmount.TwoSides(first, second), Parts = [shelter.Name], Keys = ["shelters.size", "shelters.distance", "set-ups.shelters"] },
        };
    }

    // Sheet and subject, or the subject alone with room for its own length about it.
    private static (Length Wide, Length Deep, Length High) Behind(Plan plan, SetUpSpec setUp)
    {
        var subjects = plan.Kit.SubjectsOf(setUp).Select(subject => subject.Length).DefaultIfEmpty(Length.FromCentimeters(5)).ToList();
        var longest = subjects.Max();
        return SetUpPlanners.Of(setUp).LightsPanel
            ? (plan.Panel.Width, plan.Panel.Depth, plan.Kit.Frame.Height)
            : (longest, longest, setUp.HeightOverGround + longest);
    }

    // What stands up from the sheet throws its own shade further; a round one must hold the corners.
    private static (Length Wide, Length Deep) Shaded(Plan plan, SetUpSpec setUp, ShelterSpec shade, Length wide, Length deep, Length high)
    {
        var sun = Shade.Share(plan.Kit, setUp) > 0 ? PlaceSun.Height(plan.Kit, setUp) : null;
        var tallest = plan.Kit.SubjectsOf(setUp).Select(Framing.SharpnessPlanner.HeightOf).DefaultIfEmpty(Length.Zero).Max();
        var more = (sun is { } height && height > Angle.Zero ? UnitMath.Min(tallest * SunShadow.LengthOverHeight(height), high) : Length.Zero) + (shade.Away * SunAcross);
        var (across, along) = (wide + more, deep + more);
        var corners = Length.FromMeters(double.Hypot(across.Meters, along.Meters));
        return shade.Kind == ShelterKind.Umbrella ? (corners, corners) : (across, along);
    }

    private static PlanCheck Wind(Plan plan, SetUpSpec setUp, ShelterSpec shelter, IReadOnlyList<ShelterSpec> all)
    {
        // A shade stands behind the set-up's own wind-break, as far up as that goes.
        var (wide, _, high) = Behind(plan, setUp);
        var left = shelter.Shades ? all.Select(other => WindScreens.Left(other, UnitMath.Max(wide, shelter.Width), high + shelter.Away)).Min() : 1;
        var wind = plan.Kit.Site.Wind * left;
        var passed = wind <= shelter.HighestWind;
        return new PlanCheck
        {
            Kind = PlanCheckKind.ShelterWind,
            Parts = [shelter.Name, setUp.Name],
            Passed = passed,
            Demand = new CheckAmount.Measure(wind),
            Capacity = new CheckAmount.Measure(shelter.HighestWind),
            Ratio = shelter.HighestWind > Speed.Zero ? wind / shelter.HighestWind : null,
            SourceKey = Practice,
            SourceLocator = "the kit's highest wind for it, else usual for its kind",
            Remedy = passed ? null : new CheckRemedy(CheckRemedyKind.LeaveFolded) { Parts = [shelter.Name], Keys = ["shelters.highest-wind", "site.wind", "set-ups.shelters"] },
        };
    }

    // One for the camera, one for each light that nothing else holds, one for each shade that is held.
    private static PlanCheck Hands(Plan plan, SetUpSpec setUp, int held)
    {
        var lights = setUp.Lights.Count(light => !light.Role.IsBackground() && plan.Kit.Holders.FirstOrDefault(holder => holder.Name == light.Holder) is null or { Kind: HolderKind.Hand });
        var (needed, there) = (1 + lights + held, HandsOfOne * Math.Max(1, plan.Kit.Pack.People.Count));
        return new PlanCheck
        {
            Kind = PlanCheckKind.Hands,
            Parts = [setUp.Name],
            Passed = needed <= there,
            Demand = new CheckAmount.HowMany(needed),
            Capacity = new CheckAmount.HowMany(there),
            Ratio = (double)needed / there,
            SourceKey = Practice,
            SourceLocator = "a hand for the camera, each light and each shade that nothing else holds; two to each person of the kit",
            Remedy = needed <= there ? null : new CheckRemedy(CheckRemedyKind.MoreHands) { Amount = new CheckAmount.HowMany(needed - there), Keys = ["shelters.held", "set-ups.lights.holder", "pack.people"] },
        };
    }
}
