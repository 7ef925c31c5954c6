using StudioKit.Physics.Exposure;
using StudioKit.Physics.Sources;
using UnitsNet;

namespace StudioKit.Physics.Optics;

/// <summary>Lens and accessories as one chain of paraxial elements.</summary>
public static class OpticalStack
{
    // The curve is nearly straight: false position takes six to ten looks, and never comes near this bound.
    private const int MostLooks = 60;
    private const double MagnificationTolerance = 1e-13;

    // Under this vergence the entrance pupil lies more than a kilometre away, which is infinity to a close-up.
    private const double FlatVergence = 1e-3;

    /// <summary>Magnifications within reach of the lens's own focusing with these accessories.</summary>
    /// <param name="stack">Lens and accessories.</param>
    /// <returns>Magnification at infinity focus and at closest focus of the lens [1].</returns>
    /// <exception cref="ArgumentOutOfRangeException">A field is outside the range that the record gives.</exception>
    [Source("GerrardBurch1975", "system matrix: magnification of conjugate planes")]
    public static MagnificationRange Range(OpticalStackCase stack)
    {
        ArgumentNullException.ThrowIfNull(stack);
        return RangeOf(new StackGeometry(stack));
    }

    /// <summary>The stack with the lens's focusing ring at a setting.</summary>
    /// <param name="stack">Lens and accessories.</param>
    /// <param name="ownMagnification">Magnification that the lens alone would have there [1]; from 0 to its largest.</param>
    /// <returns>Distances, brightness and field.</returns>
    /// <remarks>
    /// With M the matrix from the foremost glass to the sensor: m = −M.A, and the subject lies M.B/m before that glass. A ray from the subject
    /// through the edge of the entrance pupil, f·(1/p − 1) behind the front principal plane, reaches the sensor at slope 1/(2·N_e).
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">
    /// A field is outside the range that the record gives, or the stack is focused at infinity or beyond.
    /// </exception>
    [Source("GerrardBurch1975", "system matrix; pupils")]
    [Source("Greivenkamp2004", "working f-number with pupil magnification")]
    public static OpticalStackResult At(OpticalStackCase stack, double ownMagnification)
    {
        ArgumentNullException.ThrowIfNull(stack);
        var geometry = new StackGeometry(stack);
        Guard.Between(ownMagnification, 0, geometry.LargestOwn);
        Guard.Positive(geometry.MagnificationAt(ownMagnification), nameof(ownMagnification));
        return Focused(stack, geometry, ownMagnification);
    }

    /// <summary>The stack focused to a wanted magnification by the lens's own ring.</summary>
    /// <param name="stack">Lens and accessories.</param>
    /// <param name="magnification">Magnification wanted on the sensor.</param>
    /// <returns>The focused stack, or what keeps the magnification out of reach.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A field is outside the range that the record gives.</exception>
    [Source("GerrardBurch1975", "system matrix: magnification of conjugate planes")]
    public static FocusResult AtMagnification(OpticalStackCase stack, Magnification magnification)
    {
        ArgumentNullException.ThrowIfNull(stack);
        var geometry = new StackGeometry(stack);
        var range = RangeOf(geometry);
        var wanted = Guard.Positive(magnification.Value, nameof(magnification));
        return range.Covers(magnification)
            ? new FocusResult(Focused(stack, geometry, OwnMagnificationFor(geometry, wanted)), range)
            : new FocusResult(null, range);
    }

    /// <summary>A lens on a known extension, for a question asked without a kit.</summary>
    /// <param name="focalLength">Focal length f; &gt; 0 m.</param>
    /// <param name="extension">Extension beyond infinity focus e; &gt; 0 m.</param>
    /// <param name="aperture">Marked f-number.</param>
    /// <param name="sensorWidth">Longer side of the sensor; &gt; 0 m.</param>
    /// <param name="sensorHeight">Shorter side of the sensor; &gt; 0 m.</param>
    /// <param name="pupilRatio">Exit over entrance pupil diameter p [1]; &gt; 0, none where it is unknown.</param>
    /// <returns>Distances, brightness and field at m = e/f.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or not finite.</exception>
    [Source("ExtensionTubes", "m = x/f")]
    public static OpticalStackResult FromExtension(
        Length focalLength, Length extension, FNumber aperture, Length sensorWidth, Length sensorHeight, double? pupilRatio = null)
    {
        Guard.Positive(extension.Meters, nameof(extension));
        return At(
            new OpticalStackCase
            {
                Lens = new LensOptics { FocalLength = focalLength, PupilRatio = pupilRatio },
                Extension = extension,
                Aperture = aperture,
                SensorWidth = sensorWidth,
                SensorHeight = sensorHeight,
            },
            0);
    }

    private static MagnificationRange RangeOf(in StackGeometry geometry)
    {
        var atInfinity = geometry.MagnificationAt(0);
        var atClosest = geometry.MagnificationAt(geometry.LargestOwn);
        return new MagnificationRange(Math.Min(atInfinity, atClosest), Math.Max(atInfinity, atClosest));
    }

    internal static double OwnMagnificationFor(in StackGeometry geometry, double wanted)
    {
        double low = 0, high = geometry.LargestOwn;
        var belowBy = geometry.MagnificationAt(low) - wanted;
        var aboveBy = geometry.MagnificationAt(high) - wanted;
        if (high <= 0 || Math.Sign(belowBy) == Math.Sign(aboveBy))
        {
            // One focus setting only, or a wish within rounding of an end of the range.
            return Math.Abs(belowBy) < Math.Abs(aboveBy) ? low : high;
        }

        return geometry.FocusesInternally
            ? FalsePosition(geometry, wanted, (low, belowBy), (high, aboveBy))
            // A lens that moves as a whole magnifies in a straight line with its travel.
            : high * belowBy / (belowBy - aboveBy);
    }

    // Halving the error kept at an end that stays twice (the Illinois rule) stops the other end from creeping.
    private static double FalsePosition(
        in StackGeometry geometry, double wanted, (double Own, double Error) left, (double Own, double Error) right)
    {
        for (var look = 0; look < MostLooks; look++)
        {
            var own = ((left.Own * right.Error) - (right.Own * left.Error)) / (right.Error - left.Error);
            var error = geometry.MagnificationAt(own) - wanted;
            if (Math.Abs(error) <= MagnificationTolerance * wanted)
            {
                return own;
            }

            left = Math.Sign(error) == Math.Sign(right.Error) ? (left.Own, left.Error / 2) : right;
            right = (own, error);
        }

        return right.Own;
    }

    private static OpticalStackResult Focused(OpticalStackCase stack, in StackGeometry geometry, double own)
    {
        var matrix = geometry.ToSensor(own);
        var focalLength = geometry.FocalLengthAt(own);
        var m = -matrix.A;
        var workingDistance = matrix.B / m;
        var toPlane = geometry.GlassToPrincipalPlaneAt(own);
        var known = StackUncertainty.Of(stack, geometry, own);
        var lensMagnification = (geometry.ImageDistanceAt(own) / focalLength) - 1;
        var effective = EffectiveFNumber(geometry, own, workingDistance, m);
        var estimated = !geometry.BarrelIsKnown && !geometry.Reversed && geometry.CloseUpPower <= 0;
        return new OpticalStackResult
        {
            Magnification = new Magnification(m),
            OwnMagnification = own,
            FocalLength = Length.FromMeters(focalLength),
            StackFocalLength = Length.FromMeters(-1 / matrix.C),
            Extension = Length.FromMeters(focalLength * lensMagnification),
            ObjectDistance = Length.FromMeters(workingDistance + toPlane),
            SubjectToSensor = Length.FromMeters(
                workingDistance + toPlane + geometry.HiatusAt(own) + geometry.ImageDistanceAt(own) + geometry.ConverterLength),
            WorkingDistance = Length.FromMeters(workingDistance),
            WorkingDistanceIsEstimated = estimated,
            WorkingDistanceUncertainty = Length.FromMeters(known.WorkingDistance),
            EffectiveFNumber = new FNumber(effective),
            ExposureLossStops = 2 * Math.Log2(effective / geometry.Aperture),
            ExposureUncertainty = new Stops(known.Stops),
            FieldWidth = Length.FromMeters(Guard.Positive(stack.SensorWidth.Meters, nameof(stack.SensorWidth)) / m),
            FieldHeight = Length.FromMeters(Guard.Positive(stack.SensorHeight.Meters, nameof(stack.SensorHeight)) / m),
            SubjectToEntrancePupil = SubjectToEntrancePupil(geometry, own, workingDistance),
            EntrancePupilUncertainty = Length.FromMeters(known.EntrancePupil),
            PupilRatio = geometry.PupilRatio,
            ExitPupilToSensor = Length.FromMeters(
                geometry.Factor * geometry.Factor * focalLength * (lensMagnification + geometry.MountedPupilRatio)),
            Assumptions = [.. geometry.Lens.Assumptions(stack.Lens, own)],
            Caveats = StackCaveats.Of(geometry, workingDistance, estimated),
        };
    }

    internal static double EffectiveFNumber(in StackGeometry geometry, double own, double subjectToGlass, double magnification)
    {
        // A strong close-up lens may throw the pupil before the subject; the cone is as wide all the same.
        var slope = geometry.PupilDiameter / 2 / Math.Abs(HeightAtPupil(geometry, own, subjectToGlass));
        var effective = magnification / (2 * slope);
        return geometry.ApertureIsEffective ? effective / OwnLoss(geometry, own) : effective;
    }

    // Height at the entrance pupil of a ray that leaves the subject on the axis with slope 1.
    private static double HeightAtPupil(in StackGeometry geometry, double own, double subjectToGlass) =>
        RayTransfer.Gap(subjectToGlass).Then(ToPupil(geometry, own)).B;

    private static RayTransfer ToPupil(in StackGeometry geometry, double own) =>
        geometry.ToPrincipalPlane(own)
            .Then(RayTransfer.Gap(geometry.FocalLengthAt(own) * ((1 / geometry.MountedPupilRatio) - 1)));

    // What the lens's own focusing and the converter cost, which a camera that shows the effective f-number has counted already.
    private static double OwnLoss(in StackGeometry geometry, double own) =>
        geometry.Factor * geometry.FocalLengthAt(own) / geometry.FocalLengthAt(0) * (1 + (own / geometry.PupilRatio));

    internal static Length? SubjectToEntrancePupil(in StackGeometry geometry, double own, double subjectToGlass)
    {
        var toPupil = ToPupil(geometry, own);
        var fromSubject = RayTransfer.Gap(subjectToGlass).Then(toPupil);
        return Math.Abs(toPupil.A / fromSubject.B) < FlatVergence ? null : Length.FromMeters(fromSubject.B / toPupil.A);
    }
}
