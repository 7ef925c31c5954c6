using StudioKit.Kits;
using StudioKit.Kits.SetUps;
using StudioKit.Kits.Studio;
using StudioKit.Physics.Light;
using StudioKit.Physics.Light.Views;
using StudioKit.Physics.Packing;
using StudioKit.Planning.Framing;
using StudioKit.Planning.Studio.Frames;
using UnitsNet;

namespace StudioKit.Planning.Studio.Panels;

/// <summary>Framings and camera pitches → the panel that fills every frame.</summary>
internal static class PanelPlanner
{
    // A longer flat sheet would neither fit a bag nor stay flat; lower angles then ask for a sweep (common practice, no source).
    private static readonly Length DeepestFlat = Length.FromMeters(1);

    // Room for the subject to stand on the flat before the sheet bends up (common practice, no source).
    private static readonly Length FlatBehindSubject = Length.FromMillimeters(100);

    private static readonly Length RoundedTo = Length.FromMillimeters(10);

    /// <summary>Sizes the panel.</summary>
    /// <param name="kit">The kit.</param>
    /// <param name="onPanel">Its set-ups that light a panel from below.</param>
    /// <param name="framings">Its framings.</param>
    public static PanelPlan Plan(KitSpec kit, IReadOnlyList<SetUpSpec> onPanel, IReadOnlyList<PlannedFraming> framings)
    {
        var all = onPanel.SelectMany(setUp => PanelSight.Of(kit.Subjects, setUp, framings)).ToList();
        var sights = Fillable(kit, all);
        var unfilled = all.Except(sights).Select(sight => $"{sight.Framing.Plan.Name} at {MeasureFormat.Degrees(sight.Pitch)}").Distinct(StringComparer.Ordinal).ToList();
        if (sights.Count == 0)
        {
            return Finish(kit, Length.Zero, Length.Zero, null) with
            {
                Unfilled = unfilled,
                FlatFrom = FlatFrom(kit, all),
                Caveats = ["No framing of a white-background set-up sees the panel."],
            };
        }

        var coverage = Cover(kit, Views(sights))!;
        var largest = sights.MaxBy(sight => Alone(kit, sight))!;
        return Finish(kit, RoundUp(coverage.Width), RoundUp(coverage.Depth), coverage) with
        {
            LargestFraming = largest.Framing.Plan.Name,
            LargestPitch = largest.Pitch,
            Unfilled = unfilled,
            FlatFrom = coverage.NeedsSweep || unfilled.Count > 0 ? FlatFrom(kit, all) : null,
            Caveats = coverage.Caveats,
        };
    }

    // Mostly one panel fills every frame; where none does, framings are left out one by one.
    private static IReadOnlyList<PanelSight> Fillable(KitSpec kit, IReadOnlyList<PanelSight> sights)
    {
        if (Cover(kit, Views(sights)) is not null)
        {
            return sights;
        }

        var kept = new List<PanelSight>();
        foreach (var sight in sights)
        {
            kept.Add(sight);
            if (Cover(kit, Views(kept)) is null)
            {
                kept.Remove(sight);
            }
        }

        return kept;
    }

    // Where the sheet ends as the camera is lowered, found from below: only the views that look lower are raised.
    private static Angle? FlatFrom(KitSpec kit, IReadOnlyList<PanelSight> all)
    {
        for (var degrees = 1; degrees <= 90; degrees++)
        {
            var raised = all.Select(sight => sight.Pitch.Degrees < degrees ? sight with { Pitch = Angle.FromDegrees(degrees) } : sight).ToList();
            if (Cover(kit, Views(raised)) is { NeedsSweep: false })
            {
                return Angle.FromDegrees(degrees);
            }
        }

        return null;
    }

    private static IReadOnlyList<CameraView> Views(IReadOnlyList<PanelSight> sights) => [.. sights.Select(sight => sight.ViewAt(Length.Zero))];

    private static PanelPlan Finish(KitSpec kit, Length requiredWidth, Length requiredDepth, PanelCoverageResult? coverage)
    {
        var panel = kit.Panel;
        var width = panel.Width ?? requiredWidth;
        var radius = panel.SweepRadius ?? coverage?.SweepRadius ?? (IsSwept(kit) ? panel.Thickness * panel.ColdBendRatio : null);
        var swept = SweptLength(kit, radius, coverage);
        var depth = panel.Depth ?? (requiredDepth + (coverage?.NeedsSweep == true ? Length.Zero : swept));
        var mass = MassOf(panel, width, depth);
        return new PanelPlan
        {
            RequiredWidth = requiredWidth,
            RequiredDepth = requiredDepth,
            Width = width,
            Depth = depth,
            SizeGiven = panel.Width is not null && panel.Depth is not null,
            SubjectFromFront = SubjectFromFront(depth - swept, coverage),
            SweepRadius = radius,
            SweptLength = swept,
            Material = panel.Material,
            Thickness = panel.Thickness,
            Mass = mass.Mass,
            MassOrigin = mass.Origin,
        };
    }

    // A kit that lights no panel from below and gives no size has no sheet to weigh.
    private static MassStatement MassOf(PanelSpec panel, Length width, Length depth) =>
        width > Length.Zero && depth > Length.Zero
            ? StudioMass.Of(FrameLoads.SheetOf(panel), width, depth, panel.Mass)
            : new MassStatement(panel.Mass ?? Mass.Zero, panel.Mass is null ? MassOrigin.FromGeometry : MassOrigin.Weighed);

    private static bool IsSwept(KitSpec kit) => kit.Frame.Kind == FrameKind.SweptTable;

    // The kit's angle, else what the framings need; a swept table that no framing needs still turns up an eighth of a circle.
    private static Length SweptLength(KitSpec kit, Length? radius, PanelCoverageResult? coverage)
    {
        if (radius is not { } bend || !(IsSwept(kit) || coverage?.NeedsSweep == true))
        {
            return Length.Zero;
        }

        return kit.Panel.SweepAngle is { } angle ? bend * angle.Radians
            : coverage?.NeedsSweep == true ? coverage.SweptLength
            : bend * (Math.PI / 4);
    }

    // What the flat part is deeper than needed goes to both sides of the subject, which never stands on the arc.
    private static Length SubjectFromFront(Length flat, PanelCoverageResult? coverage)
    {
        var flatNeeded = coverage is null ? Length.Zero : coverage.Depth - coverage.SweptLength;
        var wanted = coverage is null ? flat / 2 : coverage.SubjectFromFront + ((flat - flatNeeded) / 2);
        return UnitMath.Max(Length.Zero, UnitMath.Min(wanted, flat));
    }

    private static double Alone(KitSpec kit, PanelSight sight)
    {
        var coverage = Cover(kit, [sight.ViewAt(Length.Zero)])!;
        return coverage.Width.Meters * coverage.Depth.Meters;
    }

    private static PanelCoverageResult? Cover(KitSpec kit, IReadOnlyList<CameraView> views) => PanelCoverage.TrySmallest(
        views, kit.Panel.Margin, DeepestFlat, kit.Panel.SweepRadius ?? (kit.Panel.Thickness * kit.Panel.ColdBendRatio), FlatBehindSubject);

    /// <summary>A side as it is cut: in whole centimetres, and not under what is needed.</summary>
    internal static Length RoundUp(Length length) => RoundedTo * Math.Ceiling((length / RoundedTo) - 1e-9);
}
