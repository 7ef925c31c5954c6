using StudioKit.Physics.Exposure.Flashes;

namespace StudioKit.Physics.Exposure.SetUps;

/// <summary>A subject on a translucent panel with a flash below and flashes above.</summary>
public sealed record WhiteBackgroundCase : SetUpCase
{
    /// <summary>The flash below, or behind a sheet that stands alone; its distance is counted to the sheet.</summary>
    public required FlashCase Below { get; init; }

    /// <summary>Total transmittance of the panel [1]; above 0, at most 1.</summary>
    public required double Transmittance { get; init; }

    /// <summary>Darkest visible point against the point straight above a bare flash, from the light map.</summary>
    public Stops DarkestPoint { get; init; }

    /// <summary>Brightest visible point against the same.</summary>
    public Stops BrightestPoint { get; init; }

    /// <summary>A sheet that stands behind the subject on the panel, with its own flash; none where the panel alone is seen.</summary>
    public BackgroundSheet? Behind { get; init; }

    /// <summary>White margin wanted at the darkest visible point.</summary>
    public Stops TargetWhiteMargin { get; init; } = new(1.0 / 3);

    /// <summary>Lift of a mid-tone by veiling glare that is still accepted.</summary>
    public Stops VeilLimit { get; init; } = new(0.7);

    /// <summary>Veiling glare index of lens and camera [1]; 0 to 1.</summary>
    public double GlareIndex { get; init; } = 0.02;

    /// <summary>Share of the picture that the background fills [1]; 0 to 1.</summary>
    public double BackgroundShare { get; init; } = 1;

    /// <summary>How far daylight must stay under the flash on the subject; 0 stops or more.</summary>
    public Stops AmbientBelowFlash { get; init; } = new(3);

    /// <summary>The sheets in the picture, the panel first.</summary>
    internal IReadOnlyList<BackgroundSheet> Sheets =>
    [
        new() { Flash = Below, Transmittance = Transmittance, DarkestPoint = DarkestPoint, BrightestPoint = BrightestPoint },
        .. Behind is { } behind ? [behind] : (BackgroundSheet[])[],
    ];

    internal override IReadOnlyList<FlashCase> Flashes => [.. Sheets.Select(sheet => sheet.Flash), .. base.Flashes];

    internal override SetUpCase WithFlashes(Func<FlashCase, FlashCase> change) =>
        ((WhiteBackgroundCase)base.WithFlashes(change)) with
        {
            Below = change(Below),
            Behind = Behind is { } behind ? behind with { Flash = change(behind.Flash) } : null,
        };
}
