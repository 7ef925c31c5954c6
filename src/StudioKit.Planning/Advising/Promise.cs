using StudioKit.Physics;
using StudioKit.Physics.Exposure;

namespace StudioKit.Planning.Advising;

/// <summary>What is set and what comes of it when a piece of advice is followed, as the plan of the changed kit has it.</summary>
/// <remarks>A card has some fifty of them and whole exposures are large: a promise keeps what somebody reads.</remarks>
public sealed record Promise
{
    /// <summary>The framing.</summary>
    public required FramingPlan Framing { get; init; }

    /// <summary>f-number to set on the lens.</summary>
    public required FNumber Aperture { get; init; }

    /// <summary>Shutter speed to set.</summary>
    public required ShutterSpeed Shutter { get; init; }

    /// <summary>ISO speed to set.</summary>
    public required IsoSpeed Iso { get; init; }

    /// <summary>Filter before the lens; none where there is none.</summary>
    public string? Filter { get; init; }

    /// <summary>The flashes, those below first.</summary>
    public required ValueList<PromisedLight> Lights { get; init; }

    /// <summary>Least stops by which the visible panel lies above clipping; white-background only.</summary>
    public Stops? WhiteMargin { get; init; }

    /// <summary>Margin at the brightest visible point; white-background only.</summary>
    public Stops? BrightestMargin { get; init; }

    /// <summary>Margin above which veiling glare washes out the subject; white-background only.</summary>
    public Stops? HighestMargin { get; init; }

    /// <summary>Shadow lift by veiling glare on a mid-tone; white-background only.</summary>
    public Stops? Veil { get; init; }

    /// <summary>Ambient light on the subject against a correct exposure, negative under it.</summary>
    public required Stops AmbientLevel { get; init; }

    /// <summary>Daylight and flash together on the background against correct exposure; dark background only.</summary>
    public Stops? BackgroundLevel { get; init; }

    /// <summary>Light that the panel throws up on the subject's underside against the lights above; none where nothing shines from above.</summary>
    public Stops? Uplight { get; init; }

    /// <summary>Light that the sheet behind the subject throws round the edge that it lights most, against the light on the subject; none without such a sheet.</summary>
    public Stops? EdgeSpill { get; init; }

    /// <summary>Smear of the subject, in pixels [1].</summary>
    public required double SmearPixels { get; init; }

    /// <summary>Whether it works, what it misses, and how likely the first frame is right.</summary>
    public required ExposureVerdict Verdict { get; init; }

    /// <summary>Whether it works, if only at the edge.</summary>
    public bool IsUsable => Verdict.Verdict != Planning.Verdict.DoesNotWork;

    /// <summary>What of a planned exposure is promised.</summary>
    /// <param name="planned">The exposure.</param>
    public static Promise Of(ExposurePlan planned)
    {
        ArgumentNullException.ThrowIfNull(planned);
        return new Promise
        {
            Framing = planned.Framing,
            Aperture = planned.Aperture,
            Shutter = planned.Shutter,
            Iso = planned.Iso,
            Filter = planned.Filter,
            Lights = [.. planned.Lights.Select(PromisedLight.Of)],
            WhiteMargin = planned.WhiteMargin,
            BrightestMargin = planned.BrightestMargin,
            HighestMargin = planned.HighestMargin,
            Veil = planned.Veil,
            AmbientLevel = planned.AmbientLevel,
            BackgroundLevel = planned.BackgroundLevel,
            Uplight = planned.Uplight,
            EdgeSpill = planned.EdgeSpill?.Strongest.AgainstKey,
            SmearPixels = planned.Sharpness.SmearPixels,
            Verdict = planned.Verdict,
        };
    }

    /// <summary>Whether another one is set just like this one: camera, distances and powers.</summary>
    /// <param name="other">The other one.</param>
    public bool IsSetLike(Promise other)
    {
        ArgumentNullException.ThrowIfNull(other);
        return Aperture == other.Aperture && Shutter == other.Shutter && Iso == other.Iso && Filter == other.Filter && Framing.Name == other.Framing.Name
            && Lights.Select(light => (light.Power, light.Distance)).SequenceEqual(other.Lights.Select(light => (light.Power, light.Distance)));
    }
}
