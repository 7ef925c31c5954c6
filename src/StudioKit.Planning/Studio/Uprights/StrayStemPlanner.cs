using StudioKit.Kits;
using StudioKit.Kits.SetUps;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Light.Views;
using StudioKit.Physics.Optics;
using StudioKit.Planning.Framing;
using UnitsNet;

namespace StudioKit.Planning.Studio.Uprights;

/// <summary>Margin of the sheet and pencils of rays → stems that vanish before it.</summary>
internal static class StrayStemPlanner
{
    // A hair, a grass, a stem.
    private static readonly Length[] Widths = [Length.FromMillimeters(0.5), Length.FromMillimeters(1), Length.FromMillimeters(2)];

    // As UprightPlanner has it: a flat sheet without end.
    private static readonly Length Endless = Length.FromMeters(1000);

    /// <summary>Stems before the upright sheet of a set-up; none where it has none.</summary>
    /// <param name="kit">The kit.</param>
    /// <param name="setUp">The set-up.</param>
    /// <param name="framing">The framing.</param>
    /// <param name="effective">Effective f-number.</param>
    /// <param name="margin">Least stops by which the visible sheet lies above clipping.</param>
    public static StrayStemPlan? Of(KitSpec kit, SetUpSpec setUp, PlannedFraming framing, FNumber effective, Stops? margin)
    {
        var sights = UprightSight.Of(kit, setUp, [framing]).ToList();
        if (margin is not { } white || sights.Count == 0)
        {
            return null;
        }

        var (magnification, toSheet) = (framing.Plan.Magnification.Value, sights.Min(AlongSight));
        Length Pencil(Length offset) => StrayStem.PencilWidth(offset, magnification, effective.Value);
        var seen = PanelCoverage.TrySmallest([.. sights.Select(sight => sight.ViewAt(Length.Zero))], Length.Zero, Endless, Endless, Length.Zero);
        var beside = Pencil(sights.Max(AlongSight));
        return new StrayStemPlan
        {
            ToSheet = toSheet,
            WidestAtSheet = StrayStem.WidestVanishing(white, Pencil(toSheet)),
            WidestHalfWay = StrayStem.WidestVanishing(white, Pencil(toSheet / 2)),
            Stems = [.. Widths.Select(width => new VanishingStem(width, Before(toSheet, StrayStem.VanishesFrom(width, white, magnification, effective.Value))))],
            ClearWidth = seen is { NeedsSweep: false } ? seen.Width + beside : null,
            ClearHeight = seen is { NeedsSweep: false } ? seen.Depth + beside : null,
        };
    }

    private static Length? Before(Length sheet, Length? from) => from <= sheet ? from : null;

    // From the point in focus, straight on to the sheet.
    private static Length AlongSight(UprightSight sight)
    {
        var view = sight.ViewAt(Length.Zero);
        return view.SubjectHeight / Math.Sin(view.Pitch.Radians);
    }
}
