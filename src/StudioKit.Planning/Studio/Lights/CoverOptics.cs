using StudioKit.Kits;
using StudioKit.Kits.Covers;
using StudioKit.Kits.SetUps;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Light;
using StudioKit.Physics.Light.Covers;
using StudioKit.Planning.Framing;
using StudioKit.Planning.Studio.Panels;
using UnitsNet;

namespace StudioKit.Planning.Studio.Lights;

/// <summary>What a cover takes of the light of one set-up at one framing.</summary>
/// <param name="Cover">The cover.</param>
/// <param name="Sights">What each camera angle has between lens and subject.</param>
/// <param name="Aim">The point looked at.</param>
internal sealed record CoverOptics(CoverCase Cover, IReadOnlyList<(PanelSight View, CoverSight Seen)> Sights, Position Aim)
{
    /// <summary>Light of the sheet lost on its way to the lens, at the angle and place where most is lost.</summary>
    public Stops ToLens { get; } = new(Sights.Max(sight => sight.Seen.SheetLoss.Value));

    /// <summary>How much less is lost where least is lost.</summary>
    public Stops Spread => ToLens - new Stops(Sights.Min(sight => sight.Seen.LeastSheetLoss.Value));

    /// <summary>What the subject's light loses beyond that of the sheet.</summary>
    public Stops Subject => new Stops(Sights.Max(sight => sight.Seen.SubjectLoss.Value)) - ToLens;

    /// <summary>What daylight on the subject loses on its way in, and beyond that of the sheet on its way out.</summary>
    public Stops Daylight => CoverLighting.DiffuseLoss(Cover) + Subject;

    /// <summary>Share of the sheet's light that the walls throw to the lens over the subject, at the angle where they throw most [1].</summary>
    public double SheetMirrored => Sights.Max(sight => sight.Seen.SheetMirrored);

    /// <summary>The cover that a set-up is photographed through; none where it has none, or it is lifted.</summary>
    public static CoverSpec? LookedThrough(KitSpec kit, SetUpSpec setUp) => kit.CoverOf(setUp) is { Lifted: false } cover ? cover : null;

    /// <summary>The flat sheet about the subject.</summary>
    public static SheetAround Around(PanelPlan panel) => new(
        panel.Width / 2, panel.SubjectFromFront, UnitMath.Max(Length.Zero, panel.Depth - panel.SweptLength - panel.SubjectFromFront));

    /// <summary>What the cover of a set-up does at a framing; none where nothing is looked through.</summary>
    public static CoverOptics? Of(KitSpec kit, SetUpSpec setUp, PlannedFraming framing, SheetAround? sheet = null)
    {
        if (LookedThrough(kit, setUp)?.Case is not { } cover)
        {
            return null;
        }

        var sights = PanelSight.Of(kit.Subjects, setUp, framing).Select(view => (view, CoverView.Of(cover, view.ViewAt(Length.Zero), sheet))).ToList();
        return new CoverOptics(cover, sights, new Position(0, 0, sights[0].view.ViewAt(Length.Zero).SubjectHeight.Meters));
    }

    /// <summary>How unsure it is what is lost on the way to the lens; nothing through clean water.</summary>
    public Stops DoubtToLens => Sights.Any(sight => sight.Seen.Face != CoverFace.Water) ? CoverDoubt.OfWall(Cover.RefractiveIndex) : default;

    /// <summary>How unsure it is what a lamp's light loses on its way to the subject.</summary>
    public Stops DoubtToSubject(LightSpec light) => CoverDoubt.Between(Cover, LampPlaces.Of(light), Aim);

    /// <summary>Light of a lamp lost on its way to the subject.</summary>
    public Stops ToSubject(LightSpec light) => CoverLighting.LossToSubject(Cover, LampPlaces.Of(light), Aim);
}
