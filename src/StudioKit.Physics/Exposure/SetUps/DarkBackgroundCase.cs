using StudioKit.Physics.Exposure.Flashes;
using UnitsNet;

namespace StudioKit.Physics.Exposure.SetUps;

/// <summary>A subject lit by a key and a rim light before a background left black.</summary>
public sealed record DarkBackgroundCase : SetUpCase
{
    /// <summary>Rim lights from behind, each with its level against correct exposure.</summary>
    public IReadOnlyList<SubjectLight> Rims { get; init; } = [];

    /// <summary>
    /// How far the background must stay under its metered exposure, by daylight and by flash each for itself; 0 stops or more.
    /// </summary>
    public Stops BackgroundUnder { get; init; } = new(4);

    /// <summary>Subject to background; ≥ 0 m.</summary>
    public Length BackgroundDistance { get; init; } = Length.FromMeters(1);

    internal override IReadOnlyList<FlashCase> Flashes => [.. base.Flashes, .. Rims.Select(rim => rim.Flash)];

    internal override SetUpCase WithFlashes(Func<FlashCase, FlashCase> change) =>
        ((DarkBackgroundCase)base.WithFlashes(change)) with
        {
            Rims = [.. Rims.Select(rim => rim with { Flash = change(rim.Flash) })],
        };
}
