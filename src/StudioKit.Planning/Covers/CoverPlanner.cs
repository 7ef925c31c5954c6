using StudioKit.Kits;
using StudioKit.Kits.Covers;
using StudioKit.Kits.SetUps;
using StudioKit.Kits.Subjects;
using StudioKit.Physics;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Exposure.Metering;
using StudioKit.Physics.Light.Covers;
using StudioKit.Planning.Framing;
using StudioKit.Planning.SetUps;
using StudioKit.Planning.Studio.Lights;
using UnitsNet;

namespace StudioKit.Planning.Covers;

/// <summary>Covers × set-ups × framings → what they leave room for, show, and for how long.</summary>
internal static class CoverPlanner
{
    // Room for an animal to turn: half as much again as it is long and high (common practice, no source).
    private const double Room = 1.5;

    /// <summary>One for each set-up that has a cover.</summary>
    public static ValueList<CoverPlan> Of(KitSpec kit, PanelPlan panel, IReadOnlyList<PlannedFraming> framings, IReadOnlyList<ExposurePlan> exposures) =>
        [.. kit.SetUps.Select(setUp => kit.CoverOf(setUp) is { } cover ? Of(kit, setUp, cover, panel, framings, [.. exposures.Where(exposure => exposure.SetUp == setUp.Name)]) : null).OfType<CoverPlan>()];

    private static CoverPlan Of(KitSpec kit, SetUpSpec setUp, CoverSpec cover, PanelPlan panel, IReadOnlyList<PlannedFraming> framings, IReadOnlyList<ExposurePlan> exposures)
    {
        var onPanel = SetUpPlanners.Of(setUp).LightsPanel;
        var sheet = CoverOptics.Around(panel);
        var deepest = 2 * UnitMath.Min(sheet.Front, sheet.Back);
        var subjects = kit.SubjectsOf(setUp);
        var (side, high) = (UnitMath.Min(cover.Width, cover.Depth), cover.Shape == CoverShape.Tank ? cover.WaterDepth : cover.Height);
        var warming = cover.Shape == CoverShape.Tank ? null : WarmingOf(kit, setUp, cover, exposures.Count > 0 ? exposures[0].ShelterLoss : default);
        return new CoverPlan
        {
            SetUp = setUp.Name,
            Cover = cover.Name,
            Shape = cover.Shape,
            Lifted = cover.Lifted,
            Water = cover.WaterDepth,
            FootWidth = cover.Case.OuterWidth,
            FootDepth = cover.Case.OuterDepth,
            StandsOnSheet = !onPanel || (cover.Case.OuterWidth <= panel.Width && cover.Case.OuterDepth <= deepest),
            RoomWidth = onPanel ? panel.Width : null,
            RoomDepth = onPanel ? deepest : null,
            LongestAnimal = side / Room,
            HighestAnimal = high / Room,
            Subjects = [.. subjects.Select(subject => Covered(subject, side, high))],
            Stay = CoverStays.Of(kit, setUp)!,
            Warming = warming,
            ShadeStops = warming is { } rise ? Math.Max(0, Math.Log2(rise.Kelvins / CoverPlan.WarmestRise.Kelvins)) : 0,
            Framings = cover.Lifted
                ? []
                : [.. exposures.Select(exposure => new CoverViews(kit, setUp, cover.Case, framings.First(framing => framing.Plan.Name == exposure.Framing.Name), exposure, onPanel).Of())],
        };
    }

    private static CoveredSubject Covered(SubjectSpec subject, Length side, Length high)
    {
        var (length, height) = (subject.Length * Room, SharpnessPlanner.HeightOf(subject) * Room);
        return new CoveredSubject(subject.Name, subject.Length, SharpnessPlanner.HeightOf(subject), length, height, length <= side && height <= high);
    }

    private static TemperatureDelta? WarmingOf(KitSpec kit, SetUpSpec setUp, CoverSpec cover, Stops sheltered)
    {
        var light = setUp.SubjectAmbient ?? setUp.Ambient ?? kit.Site.Ambient;
        return CoverAir.Warming(cover.Case, LightMeter.IlluminanceOf(new ExposureValue(light.AtIso100 - sheltered.Value)));
    }
}
