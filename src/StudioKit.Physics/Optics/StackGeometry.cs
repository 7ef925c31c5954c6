namespace StudioKit.Physics.Optics;

/// <summary>A stack in metres, checked once, ready for any focus setting.</summary>
internal readonly struct StackGeometry
{
    private readonly LensModel _lens;
    private readonly double _flange;
    private readonly bool _internal;

    public StackGeometry(OpticalStackCase stack)
        : this(stack, default)
    {
    }

    public StackGeometry(OpticalStackCase stack, in LensShift shift)
    {
        var lens = stack.Lens;
        _lens = new LensModel(stack, shift);
        _flange = stack.FlangeDistance.Meters;
        _internal = lens.FocusesInternally && !lens.Reversed;
        Reversed = lens.Reversed;
        LargestOwn = Reversed ? 0 : lens.LargestMagnification;
        Aperture = Guard.Positive(stack.Aperture.Value, nameof(OpticalStackCase.Aperture));
        Tubes = Guard.NonNegative(stack.Extension.Meters, nameof(OpticalStackCase.Extension));
        CloseUpPower = Guard.NonNegative(stack.CloseUpPower.InverseMeters, nameof(OpticalStackCase.CloseUpPower));
        Factor = Guard.Between(stack.TeleconverterFactor, 1, double.MaxValue, nameof(OpticalStackCase.TeleconverterFactor));
        ConverterLength = Guard.NonNegative(stack.TeleconverterLength.Meters, nameof(OpticalStackCase.TeleconverterLength));
        ApertureIsEffective = stack.ApertureIsEffective;
        BarrelIsKnown = lens.BarrelLength is not null;
        CloseFocusIsKnown = lens.ClosestFocus is not null;
    }

    public LensModel Lens => _lens;

    public bool Reversed { get; }

    public bool ApertureIsEffective { get; }

    public bool BarrelIsKnown { get; }

    public bool CloseFocusIsKnown { get; }

    public bool FocusesInternally => _internal;

    public double LargestOwn { get; }

    /// <summary>Exit over entrance pupil diameter, the right way round.</summary>
    public double PupilRatio => _lens.PupilRatio;

    /// <summary>Exit over entrance pupil diameter as the lens is mounted.</summary>
    public double MountedPupilRatio => Reversed ? 1 / PupilRatio : PupilRatio;

    public double Aperture { get; }

    public double Tubes { get; }

    public double CloseUpPower { get; }

    public double Factor { get; }

    public double ConverterLength { get; }

    /// <summary>Front glass to sensor at infinity focus, without accessories.</summary>
    public double FrontGlassToSensor => _lens.Barrel + _flange;

    /// <summary>Diameter of the pupil that faces the subject: f/N, and p times that on the other side of a reversed lens.</summary>
    public double PupilDiameter => _lens.FocalLength / Aperture * (Reversed ? PupilRatio : 1);

    /// <summary>Focal length at a focus setting, straight between infinity and closest focus.</summary>
    public double FocalLengthAt(double own) => Between(_lens.FocalLength, _lens.CloseFocalLength, own);

    /// <summary>Separation of the principal planes at a focus setting, straight between infinity and closest focus.</summary>
    public double HiatusAt(double own) => Between(_lens.Hiatus, _lens.CloseHiatus, own);

    /// <summary>Rear principal plane to the plane that the lens focuses on: the sensor, or what the converter takes for it.</summary>
    public double ImageDistanceAt(double own) =>
        Reversed
            ? _flange + Tubes + _lens.Barrel - (_lens.FocalLength - _flange) - _lens.Hiatus
            : (FocalLengthAt(own) * (1 + own)) + Tubes;

    /// <summary>Foremost glass to front principal plane.</summary>
    public double GlassToPrincipalPlaneAt(double own)
    {
        if (Reversed)
        {
            return _lens.FocalLength - _flange;
        }

        if (CloseUpPower > 0 && !BarrelIsKnown)
        {
            // The rules for close-up lenses hold for lenses in contact; a guessed gap would be no better.
            return 0;
        }

        var ownTravel = _internal ? 0 : _lens.FocalLength * own;
        return FrontGlassToSensor + ownTravel - (FocalLengthAt(own) * (1 + own)) - HiatusAt(own);
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

    private double Between(double atInfinity, double atClosest, double own) =>
        LargestOwn > 0 ? atInfinity + ((atClosest - atInfinity) * own / LargestOwn) : atInfinity;
}
