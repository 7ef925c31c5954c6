namespace StudioKit.Physics.Optics;

/// <summary>A stack in metres, checked once, ready for any focus setting.</summary>
internal readonly struct StackGeometry
{
    // Common practice, no source: a prime lens is about as long as its focal length, and hardly any is shorter than this.
    private const double ShortestBarrel = 0.050;

    private readonly double _focalLength;
    private readonly double _closeFocalLength;
    private readonly double _hiatus;
    private readonly double _flange;
    private readonly bool _internal;

    public StackGeometry(OpticalStackCase stack)
    {
        var lens = stack.Lens;
        _focalLength = Guard.Positive(lens.FocalLength.Meters, nameof(LensOptics.FocalLength));
        _hiatus = Guard.Finite(lens.Hiatus.Meters, nameof(LensOptics.Hiatus));
        _flange = Guard.NonNegative(stack.FlangeDistance.Meters, nameof(OpticalStackCase.FlangeDistance));
        _internal = lens.FocusesInternally && !lens.Reversed;
        Reversed = lens.Reversed;
        var ownLargest = Guard.NonNegative(lens.LargestMagnification, nameof(LensOptics.LargestMagnification));
        LargestOwn = Reversed ? 0 : ownLargest;
        PupilRatio = Guard.Positive(lens.PupilRatio, nameof(LensOptics.PupilRatio));
        Aperture = Guard.Positive(stack.Aperture.Value, nameof(OpticalStackCase.Aperture));
        Tubes = Guard.NonNegative(stack.Extension.Meters, nameof(OpticalStackCase.Extension));
        CloseUpPower = Guard.NonNegative(stack.CloseUpPower.InverseMeters, nameof(OpticalStackCase.CloseUpPower));
        Factor = Guard.Between(stack.TeleconverterFactor, 1, double.MaxValue, nameof(OpticalStackCase.TeleconverterFactor));
        ConverterLength = Guard.NonNegative(stack.TeleconverterLength.Meters, nameof(OpticalStackCase.TeleconverterLength));
        ApertureIsEffective = stack.ApertureIsEffective;
        BarrelIsKnown = lens.BarrelLength is not null;
        Barrel = lens.BarrelLength is { } length
            ? Guard.Positive(length.Meters, nameof(LensOptics.BarrelLength))
            : Math.Max(_focalLength, ShortestBarrel);
        CloseFocusIsKnown = lens.ClosestFocus is not null;
        _closeFocalLength = _internal && LargestOwn > 0 && lens.ClosestFocus is { } closest
            ? ThinLens.FocalLengthAtFocus(closest.Meters, LargestOwn, _hiatus)
            : _focalLength;
    }

    public bool Reversed { get; }

    public bool ApertureIsEffective { get; }

    public bool BarrelIsKnown { get; }

    public bool CloseFocusIsKnown { get; }

    public bool FocusesInternally => _internal;

    public double LargestOwn { get; }

    /// <summary>Exit over entrance pupil diameter, the right way round.</summary>
    public double PupilRatio { get; }

    /// <summary>Exit over entrance pupil diameter as the lens is mounted.</summary>
    public double MountedPupilRatio => Reversed ? 1 / PupilRatio : PupilRatio;

    public double Aperture { get; }

    public double Tubes { get; }

    public double CloseUpPower { get; }

    public double Factor { get; }

    public double ConverterLength { get; }

    public double Barrel { get; }

    public double Hiatus => _hiatus;

    /// <summary>Diameter of the pupil that faces the subject: f/N, and p times that on the other side of a reversed lens.</summary>
    public double PupilDiameter => _focalLength / Aperture * (Reversed ? PupilRatio : 1);

    /// <summary>Focal length at a focus setting, straight between infinity and closest focus.</summary>
    public double FocalLengthAt(double own) =>
        LargestOwn > 0 ? _focalLength + ((_closeFocalLength - _focalLength) * own / LargestOwn) : _focalLength;

    /// <summary>Rear principal plane to the plane that the lens focuses on: the sensor, or what the converter takes for it.</summary>
    public double ImageDistanceAt(double own) =>
        Reversed
            ? _flange + Tubes + Barrel - (_focalLength - _flange) - _hiatus
            : (FocalLengthAt(own) * (1 + own)) + Tubes;

    /// <summary>Foremost glass to front principal plane.</summary>
    public double GlassToPrincipalPlaneAt(double own)
    {
        if (Reversed)
        {
            return _focalLength - _flange;
        }

        if (CloseUpPower > 0 && !BarrelIsKnown)
        {
            // The rules for close-up lenses hold for lenses in contact; a guessed gap would be no better.
            return 0;
        }

        var ownTravel = _internal ? 0 : _focalLength * own;
        return Barrel + _flange + ownTravel - (FocalLengthAt(own) * (1 + own)) - _hiatus;
    }

    /// <summary>From the foremost glass to the sensor.</summary>
    public RayTransfer ToSensor(double own) =>
        ToPrincipalPlane(own)
            .Then(RayTransfer.Lens(1 / FocalLengthAt(own)))
            .Then(RayTransfer.Gap(ImageDistanceAt(own)))
            .Then(RayTransfer.Relay(Factor));

    /// <summary>From the foremost glass, close-up lens included, to the front principal plane of the lens.</summary>
    public RayTransfer ToPrincipalPlane(double own) =>
        RayTransfer.Lens(CloseUpPower).Then(RayTransfer.Gap(GlassToPrincipalPlaneAt(own)));

    /// <summary>Magnification on the sensor; zero at infinity focus, negative where no real subject comes to focus.</summary>
    public double MagnificationAt(double own) => -ToSensor(own).A;
}
