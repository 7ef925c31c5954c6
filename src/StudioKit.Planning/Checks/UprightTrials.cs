using StudioKit.Kits;
using StudioKit.Kits.Uprights;
using StudioKit.Physics.Structure;
using StudioKit.Planning.Changes;
using UnitsNet;

namespace StudioKit.Planning.Checks;

/// <summary>Changes worth trying for an upright sheet that does not stand, the least trouble first.</summary>
internal static class UprightTrials
{
    private const int MostPegs = 8;
    private const int PegStep = 4;

    // Water for a day in bottles; who has to carry more takes longer feet or cords (common practice, no source).
    private const double MostBallast = 12;
    private const double BallastStep = 0.5;

    // What a tent peg holds in firm ground, as a spring balance reads (common practice, no source).
    private const double MostPegHold = 15;
    private const double PegHoldStep = 0.5;

    private static readonly Length LongestFoot = Length.FromMeters(1);
    private static readonly Length FootStep = Length.FromCentimeters(10);

    public static IEnumerable<KitChange> For(PlanCheckKind kind, UprightSpec upright, UprightPlan sheet, KitSpec kit) => kind switch
    {
        PlanCheckKind.UprightTipping => [.. Straightened(upright), .. Weighted(upright), .. LongerFeet(upright), .. Smaller(upright, sheet), .. Corded(upright, kit)],
        PlanCheckKind.UprightSliding => [.. Weighted(upright), .. Smaller(upright, sheet), .. Corded(upright, kit)],
        PlanCheckKind.UprightPoles => [.. Straightened(upright), .. Smaller(upright, sheet), .. Corded(upright, kit), .. Pipes(kit)],
        PlanCheckKind.UprightSheetLeaning => [.. Straightened(upright), .. Thicker(upright)],
        PlanCheckKind.UprightSheet => [.. Thicker(upright), .. Smaller(upright, sheet)],
        PlanCheckKind.UprightReach => [.. Thicker(upright), .. Corded(upright, kit), .. Smaller(upright, sheet), .. Pipes(kit)],
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "Not a check of an upright sheet."),
    };

    private static IEnumerable<KitChange> Straightened(UprightSpec upright) => upright.Lean > Angle.Zero ? [new KitChange.Restand(upright.Name) { Straight = true }] : [];

    private static IEnumerable<KitChange> Thicker(UprightSpec upright) =>
        SoldThickness.Over(upright.Sheet.Thickness).Select(thickness => new KitChange.Restand(upright.Name) { Thickness = thickness });

    private static IEnumerable<KitChange> Weighted(UprightSpec upright) => upright.Carrier != UprightCarrier.Feet
        ? []
        : Enumerable.Range(1, (int)(MostBallast / BallastStep)).Select(step => Mass.FromKilograms(step * BallastStep)).Where(mass => mass > upright.Ballast)
            .Select(mass => new KitChange.Restand(upright.Name) { Ballast = mass });

    private static IEnumerable<KitChange> LongerFeet(UprightSpec upright)
    {
        for (var length = upright.FootLength + FootStep; upright.Carrier == UprightCarrier.Feet && length <= LongestFoot; length += FootStep)
        {
            yield return new KitChange.Restand(upright.Name) { FootLength = length };
        }
    }

    // A sheet that the kit has larger than its views need.
    private static IEnumerable<KitChange> Smaller(UprightSpec upright, UprightPlan sheet)
    {
        var (width, height) = (WholeLengths.UpToCentimetre(sheet.RequiredWidth), WholeLengths.UpToCentimetre(sheet.RequiredHeight));
        if (sheet.RequiredWidth > Length.Zero && (width < sheet.Width || height < sheet.Height))
        {
            yield return new KitChange.Restand(upright.Name)
            {
                Width = width < sheet.Width ? width : null,
                Height = height < sheet.Height ? height : null,
            };
        }
    }

    // Pegs of a hold that was measured here or at the frame; where nothing was, as much as they have to hold.
    private static IEnumerable<KitChange> Corded(UprightSpec upright, KitSpec kit)
    {
        if (upright.Carrier == UprightCarrier.Frame)
        {
            return [];
        }

        var measured = upright.PegHold > Mass.Zero ? upright.PegHold : kit.Frame.Pegs.Hold;
        var counts = Enumerable.Range(1, MostPegs / PegStep).Select(each => each * PegStep).ToList();
        return measured > Mass.Zero
            ? counts.Where(count => count > upright.CordPegs).Select(count => new KitChange.Restand(upright.Name) { CordPegs = count, PegHold = upright.PegHold > Mass.Zero ? null : measured })
            : Enumerable.Range(1, (int)(MostPegHold / PegHoldStep))
                .SelectMany(step => counts.Select(count => new KitChange.Restand(upright.Name) { CordPegs = count, PegHold = Mass.FromKilograms(step * PegHoldStep) }));
    }

    private static IEnumerable<KitChange> Pipes(KitSpec kit) => StockedPipe.Embedded
        .Where(stocked => stocked.Pipe != kit.Frame.Pipe && stocked.Pipe.OutsideDiameter >= kit.Frame.Pipe.OutsideDiameter)
        .OrderBy(stocked => PipeMass.PerMetre(Studio.Frames.FrameDesign.PipeOf(stocked.Pipe)))
        .Select(stocked => new KitChange.Strengthen(new StructuralChange.OtherPipe(stocked)));
}
