using StudioKit.Planning.Covers;
using UnitsNet;

namespace StudioKit.Planning.Checks;

/// <summary>Whether each cover has room for its animals and on the sheet, shows them clear, and stays cool.</summary>
internal static class CoverChecks
{
    /// <summary>The checks of every set-up with a cover.</summary>
    public static IEnumerable<PlanCheck> Of(Plan plan) => plan.Covers.SelectMany(cover => Of(plan, cover));

    private static IEnumerable<PlanCheck> Of(Plan plan, CoverPlan cover)
    {
        if (cover.Subjects.Count > 0)
        {
            yield return Room(cover);
        }

        if (cover is { RoomWidth: { } width, RoomDepth: { } depth })
        {
            yield return Foot(plan, cover, width, depth);
        }

        if (cover.Framings.Count > 0)
        {
            yield return View(cover);
        }

        if (cover.Warming is { } warming)
        {
            yield return Warmth(cover, warming);
        }
    }

    private static PlanCheck Room(CoverPlan cover)
    {
        var (side, high) = (cover.Subjects.Max(subject => subject.Length), cover.Subjects.Max(subject => subject.Height));
        var passed = cover.Subjects.All(subject => subject.Fits);
        return new PlanCheck
        {
            Kind = PlanCheckKind.CoverRoom,
            Parts = [cover.Cover, cover.SetUp],
            Passed = passed,
            Demand = new CheckAmount.TwoSides(side, high),
            Capacity = new CheckAmount.TwoSides(cover.LongestAnimal, cover.HighestAnimal),
            Ratio = Math.Max(side / cover.LongestAnimal, high / cover.HighestAnimal),
            SourceKey = "CommonPractice",
            SourceLocator = "half as much again as the animal, so that it can turn",
            Remedy = passed ? null : new CheckRemedy(CheckRemedyKind.LargerCover)
            {
                Amount = new CheckAmount.TwoSides(cover.Subjects.Max(subject => subject.LeastSide), cover.Subjects.Max(subject => subject.LeastHeight)),
                Parts = [cover.Cover],
                Keys = ["covers.inside", "set-ups.cover"],
            },
        };
    }

    private static PlanCheck Foot(Plan plan, CoverPlan cover, Length width, Length depth) => new()
    {
        Kind = PlanCheckKind.CoverFoot,
        Parts = [cover.Cover, cover.SetUp],
        Passed = cover.StandsOnSheet,
        Demand = new CheckAmount.TwoSides(cover.FootWidth, cover.FootDepth),
        Capacity = new CheckAmount.TwoSides(width, depth),
        Ratio = depth > Length.Zero && width > Length.Zero ? Math.Max(cover.FootWidth / width, cover.FootDepth / depth) : null,
        SourceKey = "Derived",
        SourceLocator = "the subject stands in the middle of the cover and where the panel's plan has it",
        Remedy = cover.StandsOnSheet ? null : new CheckRemedy(CheckRemedyKind.PanelUnderCover)
        {
            Amount = new CheckAmount.TwoSides(UnitMath.Max(plan.Panel.Width, cover.FootWidth), plan.Panel.Depth + UnitMath.Max(Length.Zero, cover.FootDepth - depth)),
            Parts = [cover.Cover],
            Keys = ["panel.width", "panel.depth", "covers.inside"],
        },
    };

    private static PlanCheck View(CoverPlan cover)
    {
        var views = cover.Framings.SelectMany(framing => framing.Views.Select(view => (Framing: framing, View: view))).ToList();
        var spoilt = views.Where(pair => pair.View.Faults.Count > 0).ToList();
        return new PlanCheck
        {
            Kind = PlanCheckKind.CoverView,
            Parts = [cover.Cover, cover.SetUp],
            Passed = spoilt.Count == 0,
            Demand = new CheckAmount.HowMany(views.Count),
            Capacity = new CheckAmount.HowMany(views.Count - spoilt.Count),
            SourceKey = "BornWolf1999",
            SourceLocator = "laws of reflection and refraction, at every wall",
            Findings = [.. spoilt.Select(pair => new CheckFinding.OfCover(cover, pair.Framing, pair.View))],
            Remedy = spoilt.Count == 0 ? null : ClearOf(cover),
        };
    }

    private static CheckRemedy ClearOf(CoverPlan cover) => cover.ClearForAll is { Count: > 0 } clear
        ? new CheckRemedy(CheckRemedyKind.ClearAngle)
        {
            Amount = new CheckAmount.Angles([.. clear]),
            Parts = [cover.SetUp],
            Keys = ["set-ups.camera-pitch", "set-ups.cover"],
        }
        : new CheckRemedy(cover.Water > Length.Zero ? CheckRemedyKind.OtherTank : CheckRemedyKind.LiftCover) { Parts = [cover.Cover], Keys = ["covers.lifted", "covers.inside", "set-ups.camera-pitch", "set-ups.magnifications"] };

    private static PlanCheck Warmth(CoverPlan cover, TemperatureDelta warming) => new()
    {
        Kind = PlanCheckKind.CoverWarmth,
        Parts = [cover.Cover, cover.SetUp],
        Passed = warming.Kelvins <= CoverPlan.WarmestRise.Kelvins,
        Demand = new CheckAmount.Measure(warming),
        Capacity = new CheckAmount.Measure(CoverPlan.WarmestRise),
        Ratio = warming.Kelvins / CoverPlan.WarmestRise.Kelvins,
        SourceKey = "Iso6946",
        SourceLocator = "daylight on its foot against heat through its walls; the limit is common practice",
        Remedy = warming.Kelvins <= CoverPlan.WarmestRise.Kelvins ? null : new CheckRemedy(CheckRemedyKind.ShadeCover)
        {
            Amount = new CheckAmount.Dimmed(cover.ShadeStops),
            Parts = [cover.SetUp],
            Keys = ["set-ups.ambient", "covers.lifted"],
        },
    };
}
