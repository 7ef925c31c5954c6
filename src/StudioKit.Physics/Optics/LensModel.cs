namespace StudioKit.Physics.Optics;

/// <summary>A lens in metres: what was given, what follows from it, and what had to be assumed.</summary>
/// <remarks>
/// Closest focus and magnification are trusted together. A lens that moves as a whole keeps its focal length, so they tell the separation of its
/// principal planes, D = f·(2 + m + 1/m) + i. A lens that focuses inside shortens as far as they ask for with the planes where they usually lie, and
/// never lengthens: beyond that the planes give way.
/// </remarks>
internal readonly record struct LensModel
{
    // Common practice, no source: a prime lens is about as long as its focal length, and hardly any is shorter than this.
    private const double ShortestBarrel = 0.050;
    private const double BarrelUncertainty = 1.0 / 3;

    // Prescriptions of macro lenses shorten to half their focal length at life size; with planes far apart no less than this is believed.
    private const double ShortestShare = 0.3;

    // The same lenses, closest focus unknown: the focal length is kept, and may be shorter by up to this share at life size.
    private const double ShorteningAtLifeSize = 0.5;

    // Three prescriptions of internal-focusing macro lenses, iris untouched, lose 0.1 to 0.5 stops less at life size than pupils that stay as they are. Where
    // the pupil ratio is assumed, its own doubt covers most of that.
    private const double PupilStopsAtLifeSize = 0.5;
    private const double PupilStopsBesideRatio = 0.2;

    // The same prescriptions throw the entrance pupil up to three focal lengths farther back at life size.
    private const double PupilTravelAtLifeSize = 2;

    private readonly bool _pupilRatioIsGiven;

    public LensModel(OpticalStackCase stack, in LensShift shift)
    {
        var lens = stack.Lens;
        var f = Guard.Positive(lens.FocalLength.Meters, nameof(LensOptics.FocalLength));
        var flange = Guard.NonNegative(stack.FlangeDistance.Meters, nameof(OpticalStackCase.FlangeDistance));
        var largest = Guard.NonNegative(lens.LargestMagnification, nameof(LensOptics.LargestMagnification));
        FocalLength = f;
        Barrel = lens.BarrelLength is { } length
            ? Guard.Positive(length.Meters, nameof(LensOptics.BarrelLength))
            : Math.Max(f, ShortestBarrel) * (1 + (shift.Barrel * BarrelUncertainty));
        var excess = WideAngleForm.Excess(f, flange + Barrel);
        var usual = lens.Hiatus is { } given
            ? Guard.Finite(given.Meters, nameof(LensOptics.Hiatus))
            : WideAngleForm.Separation(f, excess) + (shift.Hiatus * WideAngleForm.SeparationUncertainty * f);
        (CloseFocalLength, Hiatus, CloseHiatus) = Focusing(lens, largest, usual, shift);
        if (lens.BarrelLength is null && IsSolved(lens, largest))
        {
            excess = WideAngleForm.ExcessOfSeparation(f, Hiatus);
        }

        _pupilRatioIsGiven = lens.PupilRatio is not null;
        PupilRatio = lens.PupilRatio is { } ratio
            ? Guard.Positive(ratio, nameof(LensOptics.PupilRatio))
            : WideAngleForm.PupilRatio(excess) * (1 + (shift.PupilRatio * WideAngleForm.PupilRatioUncertainty));
    }

    /// <summary>Focal length at infinity focus.</summary>
    public double FocalLength { get; }

    /// <summary>Focal length at closest focus.</summary>
    public double CloseFocalLength { get; }

    /// <summary>Separation of the principal planes at infinity focus.</summary>
    public double Hiatus { get; }

    /// <summary>The same at closest focus.</summary>
    public double CloseHiatus { get; }

    /// <summary>Front glass to mount at infinity focus.</summary>
    public double Barrel { get; }

    /// <summary>Exit over entrance pupil diameter, the right way round.</summary>
    public double PupilRatio { get; }

    /// <summary>Whether it focuses inside and would have to lengthen for its closest focus and magnification.</summary>
    public bool KeepsFocalLength => CloseFocalLength == FocalLength && CloseHiatus > Hiatus + (WideAngleForm.SeparationUncertainty * FocalLength);

    /// <summary>One standard deviation of what the entrance pupil's width costs or saves as the lens focuses inside to a magnification [stops].</summary>
    public double PupilStops(double own) =>
        (_pupilRatioIsGiven ? PupilStopsAtLifeSize : PupilStopsBesideRatio) * Math.Min(1, own) / PupilRatio;

    /// <summary>One standard deviation of how far the entrance pupil then moves [m].</summary>
    public double PupilTravel(double own) => PupilTravelAtLifeSize * Math.Min(1, own) * FocalLength;

    /// <summary>What was assumed, with its uncertainty.</summary>
    public IEnumerable<LensAssumption> Assumptions(LensOptics lens, double own)
    {
        var inside = lens.FocusesInternally && !lens.Reversed && own > 0;
        if (lens.BarrelLength is null)
        {
            yield return new(LensAssumptionKind.FrontGlassToMount, Barrel, Barrel * BarrelUncertainty);
        }

        if (lens.Hiatus is null && !IsSolved(lens, lens.LargestMagnification))
        {
            yield return new(LensAssumptionKind.PrincipalPlanes, Hiatus, WideAngleForm.SeparationUncertainty * FocalLength);
        }

        if (lens.PupilRatio is null)
        {
            yield return new(LensAssumptionKind.PupilRatio, PupilRatio, PupilRatio * WideAngleForm.PupilRatioUncertainty);
        }

        if (inside)
        {
            yield return new(
                LensAssumptionKind.FocalLengthCloseUp, CloseFocalLength, CloseUpUncertainty(lens));
            yield return new(LensAssumptionKind.PupilWhileFocusing, 0, PupilStops(own));
        }
    }

    private double CloseUpUncertainty(LensOptics lens) => FocalLength * (lens.ClosestFocus is null
        ? ShorteningAtLifeSize * Math.Min(1, lens.LargestMagnification) / 2
        : WideAngleForm.SeparationUncertainty / Conjugates(lens.LargestMagnification));

    private static bool IsSolved(LensOptics lens, double largest) => !lens.FocusesInternally && lens.ClosestFocus is not null && largest > 0;

    private static (double Close, double Hiatus, double CloseHiatus) Focusing(LensOptics lens, double largest, double usual, in LensShift shift)
    {
        var f = lens.FocalLength.Meters;
        if (lens.ClosestFocus is not { } closest || largest <= 0)
        {
            var shorter = lens.FocusesInternally ? Math.Min(0, shift.ClosestFocus) * ShorteningAtLifeSize * Math.Min(1, largest) : 0;
            return (f * (1 + shorter), usual, usual);
        }

        var distance = Guard.Positive(closest.Meters, nameof(LensOptics.ClosestFocus))
            * (1 + (shift.ClosestFocus * WideAngleForm.ClosestFocusUncertainty));
        var conjugates = Conjugates(largest);
        if (!lens.FocusesInternally)
        {
            var solved = distance - (f * conjugates);
            return (f, solved, solved);
        }

        var shortest = Math.Min(ShortestShare * f, distance / conjugates);
        var close = Math.Clamp((distance - usual) / conjugates, shortest, f);
        return (close, usual, distance - (close * conjugates));
    }

    private static double Conjugates(double magnification) => 2 + magnification + (1 / magnification);
}
