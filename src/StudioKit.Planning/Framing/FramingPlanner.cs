using StudioKit.Kits;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Optics;
using UnitsNet;

namespace StudioKit.Planning.Framing;

/// <summary>Lenses and accessories of a kit → framings.</summary>
internal static class FramingPlanner
{
    // The stack is focused at a marked aperture only to learn the ratio of effective to marked f-number, which does not depend on it.
    private static readonly FNumber AnyAperture = new(16);

    /// <summary>Every framing that the kit asks for, smallest magnification first.</summary>
    public static IReadOnlyList<PlannedFraming> Plan(KitSpec kit) =>
        [.. kit.Lenses
            .SelectMany(lens => Magnifications(lens).Select(magnification => Frame(kit, lens, magnification)))
            .OrderBy(framing => framing.Plan.Magnification.Value)
            .ThenBy(framing => framing.Plan.Name, StringComparer.Ordinal)];

    private static IEnumerable<Magnification> Magnifications(LensSpec lens) =>
        lens.Magnifications.Count > 0 ? lens.Magnifications.Distinct() : [lens.LargestMagnification];

    private static PlannedFraming Frame(KitSpec kit, LensSpec lens, Magnification magnification)
    {
        var bare = BareStack(kit.Camera, lens);
        var onHand = OnHand(kit.Accessories);
        var reach = ReachingMagnification.With(bare, onHand, magnification);
        var combination = reach.Covering.Count > 0 ? reach.Covering[0] : null;
        var focused = combination is null
            ? AsIfReached(bare, reach)
            : OpticalStack.AtMagnification(combination.Stack, magnification).Stack!;
        var plan = new FramingPlan
        {
            Name = $"{lens.Name} at {magnification.Nominal}",
            Lens = lens.Name,
            Magnification = magnification,
            Accessories = combination is null ? [] : [.. Names(kit.Accessories, combination)],
            OtherCombinations = [.. reach.Covering.Skip(1).Take(3).Select(other => string.Join(" + ", Names(kit.Accessories, other)))],
            Limit = combination is null ? Sentence(reach) : null,
            Extension = focused.Extension,
            FocalLength = focused.FocalLength,
            SubjectToSensor = focused.SubjectToSensor,
            WorkingDistance = focused.WorkingDistance,
            SubjectToEntrancePupil = LookingFrom(focused),
            EffectiveApertureFactor = focused.EffectiveFNumber.Value / AnyAperture.Value,
            PupilRatio = lens.PupilRatio,
            FieldWidth = focused.FieldWidth,
            FieldHeight = focused.FieldHeight,
            Caveats = focused.Caveats,
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

    private static AccessoriesOnHand OnHand(AccessoriesSpec accessories) => new()
    {
        ExtensionTubes = [.. accessories.ExtensionTubes.Select(tube => tube.Length)],
        CloseUpLenses = [.. accessories.CloseUpLenses.Select(lens => lens.Power)],
        Teleconverters = [.. accessories.Teleconverters.Select(converter => new TeleconverterOptics(converter.Factor, converter.Length))],
    };

    private static IEnumerable<string> Names(AccessoriesSpec accessories, AccessoryCombination combination) =>
    [
        .. combination.Teleconverter is { } place ? new[] { accessories.Teleconverters[place].Name } : [],
        .. combination.Tubes.Select(tube => accessories.ExtensionTubes[tube].Name),
        .. combination.CloseUps.Select(lens => accessories.CloseUpLenses[lens].Name),
    ];

    // Out of reach: the numbers shown are those that a tube of the missing length would give.
    private static OpticalStackResult AsIfReached(OpticalStackCase bare, MagnificationReach reach)
    {
        var withTube = bare with { Extension = reach.LeastExtension };
        return OpticalStack.AtMagnification(withTube, reach.Wanted).Stack
            ?? OpticalStack.FromExtension(
                bare.Lens.FocalLength, bare.Lens.FocalLength * reach.Wanted.Value, AnyAperture, bare.SensorWidth, bare.SensorHeight, bare.Lens.PupilRatio);
    }

    private static string Sentence(MagnificationReach reach) =>
        reach.LeastExtension > Length.Zero
            ? $"{reach.Limit} {PlanFormat.Millimetres(reach.LeastExtension)} of extension tube would reach it."
            : reach.Limit ?? "";

    private static Length LookingFrom(OpticalStackResult stack) =>
        stack.SubjectToEntrancePupil is { } distance && distance > Length.Zero ? distance : stack.ObjectDistance;
}
