namespace StudioKit.Physics.Optics;

/// <summary>How far what was assumed of a lens may put a stack's numbers off: one standard deviation each.</summary>
/// <param name="WorkingDistance">Of the working distance [m].</param>
/// <param name="Stops">Of the exposure loss [stops].</param>
/// <param name="EntrancePupil">Of the distance from subject to entrance pupil [m].</param>
internal readonly record struct StackUncertainty(double WorkingDistance, double Stops, double EntrancePupil)
{
    /// <summary>Each assumption is moved by its uncertainty either way with the magnification kept; the effects add in quadrature.</summary>
    public static StackUncertainty Of(OpticalStackCase stack, in StackGeometry geometry, double own)
    {
        var middle = Numbers.Of(geometry, own);
        var spread = default(StackUncertainty);
        foreach (var (less, more) in LensShift.OneByOne)
        {
            spread = spread.With(HalfSpread(middle, Shifted(stack, less, geometry, own), Shifted(stack, more, geometry, own)));
        }

        return geometry.FocusesInternally ? spread.With(Pupil(geometry, own)) : spread;
    }

    // What the camera reports holds whatever the pupil's width does.
    private static StackUncertainty Pupil(in StackGeometry geometry, double own) =>
        new(0, geometry.ApertureIsEffective ? 0 : geometry.Lens.PupilStops(own), geometry.Lens.PupilTravel(own));

    // None where the shifted lens comes to no focus on a real subject.
    private static Numbers? Shifted(OpticalStackCase stack, in LensShift shift, in StackGeometry geometry, double own)
    {
        var other = new StackGeometry(stack, shift);
        var same = geometry.LargestOwn > 0 ? OpticalStack.OwnMagnificationFor(other, geometry.MagnificationAt(own)) : own;
        same = Math.Clamp(same, 0, geometry.LargestOwn);
        return other.MagnificationAt(same) > 0 ? Numbers.Of(other, same) : null;
    }

    private static StackUncertainty HalfSpread(in Numbers middle, Numbers? less, Numbers? more)
    {
        var (one, other) = (middle.To(less ?? middle), middle.To(more ?? middle));
        return new(
            (one.WorkingDistance + other.WorkingDistance) / 2, (one.Stops + other.Stops) / 2, (one.EntrancePupil + other.EntrancePupil) / 2);
    }

    private StackUncertainty With(in StackUncertainty other) => new(
        double.Hypot(WorkingDistance, other.WorkingDistance), double.Hypot(Stops, other.Stops), double.Hypot(EntrancePupil, other.EntrancePupil));

    private readonly record struct Numbers(double WorkingDistance, double Stops, double EntrancePupil)
    {
        public StackUncertainty To(in Numbers other) => new(
            Math.Abs(other.WorkingDistance - WorkingDistance), Math.Abs(other.Stops - Stops), Math.Abs(other.EntrancePupil - EntrancePupil));

        public static Numbers Of(in StackGeometry geometry, double own)
        {
            var matrix = geometry.ToSensor(own);
            var m = -matrix.A;
            var distance = matrix.B / m;
            return new(
                distance,
                2 * Math.Log2(OpticalStack.EffectiveFNumber(geometry, own, distance, m)),
                OpticalStack.SubjectToEntrancePupil(geometry, own, distance)?.Meters ?? 0);
        }
    }
}
