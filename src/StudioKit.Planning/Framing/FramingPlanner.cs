using StudioKit.Kits;
using StudioKit.Kits.Cameras;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Optics;
using UnitsNet;

namespace StudioKit.Planning.Framing;

/// <summary>Lenses and accessories of a kit → framings.</summary>
internal static class FramingPlanner
{
    // The stack is focused at a marked aperture only to learn the ratio of effective to marked f-number, which does not depend on it.
    public static readonly FNumber AnyAperture = new(16);

    /// <summary>Every framing that the kit asks for, smallest magnification first.</summary>
    public static IReadOnlyList<PlannedFraming> Plan(KitSpec kit) =>
        Named([.. kit.Lenses
            .SelectMany(lens => Magnifications(lens).Select(magnification => Frame(kit, lens, magnification)))
            .DistinctBy(framing => (framing.Plan.Lens, framing.Plan.Magnification))
            .OrderBy(framing => framing.Plan.Magnification.Value)
            .ThenBy(framing => framing.Plan.Name, StringComparer.Ordinal)]);

    // Two wishes may round to one ratio; a card must still say which is which.
    private static IReadOnlyList<PlannedFraming> Named(IReadOnlyList<PlannedFraming> framings)
    {
        var shared = framings.GroupBy(framing => framing.Plan.Name).Where(group => group.Count() > 1).Select(group => group.Key).ToHashSet(StringComparer.Ordinal);
        return [.. framings.Select(framing => shared.Contains(framing.Plan.Name)
            ? framing with { Plan = framing.Plan with { Name = FormattableString.Invariant($"{framing.Plan.Name} ({framing.Plan.Magnification.Value:R})") } }
            : framing)];
    }

    private static IEnumerable<Magnification> Magnifications(LensSpec lens) =>
        lens.Magnifications.Count > 0 ? lens.Magnifications.Distinct() : [lens.LargestMagnification];

    /// <summary>A lens at a magnification, with what is on hand.</summary>
    public static PlannedFraming Frame(KitSpec kit, LensSpec lens, Magnification magnification)
    {
        var reach = FramingReach.Find(BareStack(kit.Camera, lens), kit.Accessories, magnification);
        var focused = reach.Stack;
        var actual = reach.Limit is null ? focused.Magnification : magnification;
        var plan = new FramingPlan
        {
            Name = $"{lens.Name} at {actual.Nominal}",
            Lens = lens.Name,
            Magnification = actual,
            Accessories = reach.Combination is { } combination ? [.. Names(kit.Accessories, combination)] : [],
            OtherCombinations = [.. reach.Others.Select(other => string.Join(" + ", Names(kit.Accessories, other)))],
            Limit = reach.Limit,
            Extension = focused.Extension,
            FocalLength = focused.FocalLength,
            SubjectToSensor = focused.SubjectToSensor,
            WorkingDistance = focused.WorkingDistance,
            WorkingDistanceUncertainty = focused.WorkingDistanceUncertainty,
            SubjectToEntrancePupil = LookingFrom(focused),
            EffectiveApertureFactor = focused.EffectiveFNumber.Value / AnyAperture.Value,
            ExposureUncertainty = focused.ExposureUncertainty,
            PupilRatio = focused.PupilRatio,
            Assumptions = focused.Assumptions,
            FieldWidth = focused.FieldWidth,
            FieldHeight = focused.FieldHeight,
            Caveats = [.. reach.Caveats, .. focused.Caveats],
        };
        return new PlannedFraming(plan, focused, lens);
    }

    private static OpticalStackCase BareStack(CameraSpec camera, LensSpec lens) => new()
    {
        Lens = new LensOptics
        {
            FocalLength = lens.FocalLength,
            LargestMagnification = lens.LargestMagnification.Value,
            FocusesInternally = lens.Focusing == LensFocusing.Internal,
            ClosestFocus = lens.ClosestFocus,
            PupilRatio = lens.PupilRatio,
            BarrelLength = lens.Length,
            Reversed = lens.Reversed,
            WidestAperture = lens.WidestAperture,
            SmallestAperture = lens.SmallestAperture,
        },
        SensorWidth = camera.SensorWidth,
        SensorHeight = camera.SensorHeight,
        Aperture = AnyAperture,
        FlangeDistance = camera.FlangeDistance,
        ApertureIsEffective = camera.ReportsEffectiveFNumber,
    };

    private static IEnumerable<string> Names(AccessoriesSpec accessories, AccessoryCombination combination) =>
    [
        .. combination.Teleconverter is { } place ? new[] { accessories.Teleconverters[place].Name } : [],
        .. combination.Tubes.Select(tube => accessories.ExtensionTubes[tube].Name),
        .. combination.CloseUps.Select(lens => accessories.CloseUpLenses[lens].Name),
    ];

    private static Length LookingFrom(OpticalStackResult stack) =>
        stack.SubjectToEntrancePupil is { } distance && distance > Length.Zero ? distance : stack.ObjectDistance;
}
