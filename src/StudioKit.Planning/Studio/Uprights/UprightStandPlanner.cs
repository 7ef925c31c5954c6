using StudioKit.Kits;
using StudioKit.Kits.Uprights;
using StudioKit.Physics;
using StudioKit.Physics.Structure;
using StudioKit.Physics.Structure.Frames;
using StudioKit.Physics.Structure.Uprights;
using StudioKit.Planning.Studio.Frames;
using UnitsNet;

namespace StudioKit.Planning.Studio.Uprights;

/// <summary>What holds the upright sheets that set-ups use.</summary>
internal static class UprightStandPlanner
{
    // A turn round the pole, a knot and a slide at the peg (common practice, no source).
    private static readonly Length Knots = Length.FromCentimeters(40);

    /// <summary>One for each upright sheet that a set-up uses and that has a size.</summary>
    /// <param name="kit">The kit.</param>
    /// <param name="uprights">Its upright sheets.</param>
    /// <param name="frame">The frame of the panel; none where none is built.</param>
    public static ValueList<UprightStandPlan> Of(KitSpec kit, IReadOnlyList<UprightPlan> uprights, FrameResult? frame) =>
    [
        .. from sheet in uprights
           where sheet.IsUsed && sheet.Width > Length.Zero && sheet.Height > Length.Zero
           let upright = kit.Uprights.First(one => one.Name == sheet.Name)
           let held = upright.Carrier == UprightCarrier.Frame && frame is not null ? FrameHold.Of(frame, kit.Frame.Pipe.OutsideDiameter, kit.Panel.Thickness) : null
           where upright.Carrier != UprightCarrier.Frame || held is not null
           select Of(kit, upright, sheet, held),
    ];

    private static UprightStandPlan Of(KitSpec kit, UprightSpec upright, UprightPlan sheet, FrameHold? held)
    {
        var bare = CaseOf(kit, upright, sheet, held);
        var cuts = new UprightCuts(kit, upright, UprightStand.PoleOverFoot(bare), held);
        var stand = UprightStand.Of(bare with { FeetMass = cuts.FeetMass, Couplings = cuts.CouplingHeights });
        var spacing = Length.FromMillimeters(Math.Floor(stand.PoleSpacing.Millimeters + 1e-6));
        var wind = WindOf(kit, sheet, held);
        return new UprightStandPlan
        {
            Name = upright.Name,
            Carrier = upright.Carrier,
            Width = sheet.Width,
            Height = sheet.Height,
            LowerEdge = sheet.LowerEdge + Over(held),
            Lean = sheet.Lean,
            Pieces = cuts.Pieces,
            Fittings = cuts.Fittings,
            Sheet = SheetParts.Upright(kit, upright, sheet),
            PipeDiameter = kit.Frame.Pipe.OutsideDiameter,
            ToSubject = bare.ToSubject,
            PoleSpacing = spacing,
            PlayPerEdge = stand.PlayPerEdge + ((stand.PoleSpacing - spacing) / 2),
            PoleLength = cuts.Pole,
            CouplingHeights = cuts.CouplingHeights,
            StakeDepth = upright.Carrier == UprightCarrier.Stakes ? upright.StakeDepth : Length.Zero,
            StakeHold = upright.Carrier == UprightCarrier.Stakes ? upright.StakeHold : Mass.Zero,
            FootLength = upright.Carrier == UprightCarrier.Feet ? upright.FootLength : Length.Zero,
            Ballast = upright.Carrier == UprightCarrier.Feet ? upright.Ballast : Mass.Zero,
            RailHeight = held?.RailHeight,
            BarHeight = held?.BarHeight,

            // Each pole to rail and bar, the bar to two legs.
            PipeClips = held is null ? 0 : 6,
            BarPush = stand.BarPush,
            ClipsPerPole = stand.ClipsPerPole,
            FirstClip = (sheet.Height - ((stand.ClipsPerPole - 1) * stand.ClipSpacing)) / 2,
            ClipSpacing = stand.ClipSpacing,
            ClipPull = stand.ClipPull,
            Cords = upright.CordPegs,
            CordLength = upright.CordPegs > 0 ? (sheet.UpperEdge * Math.Sqrt(2)) + Knots : Length.Zero,
            PegDistance = upright.CordPegs > 0 ? sheet.UpperEdge : Length.Zero,
            PegHold = upright.CordPegs > 0 ? upright.PegHold : Mass.Zero,
            TopLean = stand.TopLean,
            Bow = stand.Bow,
            Wind = wind,
            HighestGust = stand.HighestGust,
            TakeDownFrom = TakeDownFrom(stand.HighestGust / wind.GustOverMean),
            Weakest = stand.Weakest,
            CarrierMass = cuts.Mass,
            SheetMass = sheet.Mass,
            SheetMassOrigin = sheet.MassOrigin,
            Assembly = [.. Steps(upright, cuts)],
            Checks = [.. stand.Checks],
        };
    }

    /// <summary>The lowest force whose strongest mean is over a mean; the strongest of the scale where none is.</summary>
    public static int TakeDownFrom(Speed mean) =>
        Enumerable.Range(0, Beaufort.Strongest + 1).FirstOrDefault(force => Beaufort.HighestMean(force) > mean.MetersPerSecond + 1e-6, Beaufort.Strongest + 1);

    private static UprightCase CaseOf(KitSpec kit, UprightSpec upright, UprightPlan sheet, FrameHold? held) => new()
    {
        Footing = upright.Carrier switch
        {
            UprightCarrier.Stakes => UprightFooting.Stakes,
            UprightCarrier.Feet => UprightFooting.Feet,
            _ => UprightFooting.Frame,
        },
        Sheet = FrameLoads.SheetOf(upright.Sheet),
        Pipe = FrameDesign.PipeOf(kit.Frame.Pipe),
        Width = sheet.Width,
        Height = sheet.Height,
        LowerEdge = sheet.LowerEdge + Over(held),
        Lean = sheet.Lean,
        SheetMass = sheet.Mass,
        ToSubject = sheet.Places.Min(place => place.FromSubject),
        Gust = WindOf(kit, sheet, held).Gust,
        Air = kit.Site.Temperature,
        SunWarming = kit.Site.SunWarming,
        StakeDepth = upright.StakeDepth,
        StakeHold = Weight(upright.StakeHold),
        FootLength = upright.FootLength,
        Ballast = upright.Ballast,
        Friction = kit.Site.GroundFriction,
        Slope = kit.Site.Slope,
        JointStiffness = kit.Frame.JointStiffness,
        RailToBar = held?.RailToBar ?? Length.Zero,
        Cords = upright.CordPegs,
        PegHold = Weight(upright.PegHold),
    };

    private static IEnumerable<UprightStep> Steps(UprightSpec upright, UprightCuts cuts)
    {
        if (cuts.Fittings.Any(fitting => fitting.Kind == FittingKind.Coupling))
        {
            yield return UprightStep.JoinPoles;
        }

        yield return UprightStep.MarkClips;
        if (upright.Carrier != UprightCarrier.Frame)
        {
            yield return UprightStep.LookOver;
        }

        UprightStep[] footing = upright.Carrier switch
        {
            UprightCarrier.Stakes => [UprightStep.DriveStakes, UprightStep.PullStake],
            UprightCarrier.Feet => upright.Ballast > Mass.Zero ? [UprightStep.StandFeet, UprightStep.LayBallast] : [UprightStep.StandFeet],
            _ => [UprightStep.ClipBar, UprightStep.ClipPoles],
        };
        foreach (var step in footing)
        {
            yield return step;
        }

        yield return UprightStep.HangSheet;
        if (upright.CordPegs > 0)
        {
            yield return UprightStep.TieCords;
        }

        yield return UprightStep.CheckOver;
    }

    // Behind what all its set-ups have put up against the wind, if that is as high as the sheet.
    private static SiteWind WindOf(KitSpec kit, UprightPlan sheet, FrameHold? held) => FrameLoads.WindOf(
        kit, [.. kit.SetUps.Where(setUp => setUp.Upright == sheet.Name)], sheet.Width, sheet.UpperEdge + (held is null ? Length.Zero : held.RailHeight + held.PanelOverRail));

    private static Length Over(FrameHold? held) => held?.PanelOverRail ?? Length.Zero;

    private static Force Weight(Mass mass) => Force.FromNewtons(mass.Kilograms * PanelSag.Gravity);
}
