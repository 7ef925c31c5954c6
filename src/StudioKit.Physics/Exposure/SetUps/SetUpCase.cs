using StudioKit.Physics.Exposure.Flashes;

namespace StudioKit.Physics.Exposure.SetUps;

/// <summary>What every set-up is solved from.</summary>
public abstract record SetUpCase
{
    /// <summary>Camera and lens; ISO and shutter are where the search starts.</summary>
    public required CameraCase Camera { get; init; }

    /// <summary>f-numbers to choose from, the favourite first; the camera's own where none is given.</summary>
    public IReadOnlyList<FNumber> Apertures { get; init; } = [];

    /// <summary>What the settings must keep within.</summary>
    public SetUpLimits Limits { get; init; } = new();

    /// <summary>Ambient light of the place.</summary>
    public required ExposureValue Ambient { get; init; }

    /// <summary>Ambient light on the subject's side towards the camera against <see cref="Ambient"/>.</summary>
    public Stops SubjectShade { get; init; }

    /// <summary>
    /// ISO speed to stay near where the exposure follows the ambient light: the shutter gives way first, within its limits. None where the
    /// shutter comes first.
    /// </summary>
    public IsoSpeed? FavouriteIso { get; init; }

    /// <summary>Flashes on the subject, the main one first.</summary>
    public required IReadOnlyList<SubjectLight> Lights { get; init; }

    /// <summary>How well the inputs are known.</summary>
    public LightUncertainty Uncertainty { get; init; } = LightUncertainty.Usual;

    internal virtual IReadOnlyList<FlashCase> Flashes => [.. Lights.Select(light => light.Flash)];

    internal virtual SetUpCase WithFlashes(Func<FlashCase, FlashCase> change) =>
        this with { Lights = [.. Lights.Select(light => light with { Flash = change(light.Flash) })] };
}
