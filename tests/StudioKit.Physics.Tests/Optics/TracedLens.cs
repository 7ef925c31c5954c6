namespace StudioKit.Physics.Tests.Optics;

/// <summary>A published lens focused close: as tabulated, or moved forward as a whole.</summary>
internal sealed record TracedLens
{
    public TracedLens(LensPrescription lens, double extensionInFocalLengths = 0.25)
    {
        var far = new LensTrace(lens);
        var near = new LensTrace(lens, close: true);
        var extension = lens.HasCloseSetting ? near.LastDistance - far.LastDistance : extensionInFocalLengths * far.FocalLength;
        var image = far.BackFocus + extension + near.Length - near.RearPrincipalPlane;
        Magnification = (image / near.FocalLength) - 1;
        FocalLength = far.FocalLength;
        var subject = near.FocalLength * (1 + (1 / Magnification));
        SubjectToSensor = subject + near.Separation + image;
        WorkingDistance = subject - near.FrontPrincipalPlane;
        SubjectToEntrancePupil = WorkingDistance + near.EntrancePupil;
        FrontGlassToSensor = far.Length + far.BackFocus;
        PupilRatio = far.PupilRatio;
        // Half the exit pupil over its distance to the sensor, the stop as wide as at infinity focus.
        var stop = FocalLength / far.EntrancePupilPerStop;
        var exitPupil = near.PupilRatio * near.EntrancePupilPerStop * stop;
        EffectiveOverMarked = near.FocalLength * (Magnification + near.PupilRatio) / exitPupil;
    }

    public double FocalLength { get; }

    public double Magnification { get; }

    public double SubjectToSensor { get; }

    public double WorkingDistance { get; }

    public double SubjectToEntrancePupil { get; }

    public double FrontGlassToSensor { get; }

    public double PupilRatio { get; }

    public double EffectiveOverMarked { get; }
}
