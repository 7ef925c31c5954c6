using StudioKit.Physics.Exposure;
using StudioKit.Physics.Light;
using StudioKit.Physics.Light.Views;

namespace StudioKit.Planning.Studio.Lights;

/// <summary>Light on the panel for one framing, over all its camera angles.</summary>
public sealed record FramingLightPlan
{
    private readonly Lazy<MarginGrid> _grid;

    internal FramingLightPlan(Func<MarginGrid> grid) => _grid = new Lazy<MarginGrid>(grid);

    /// <summary>Name of the framing.</summary>
    public required string Framing { get; init; }

    /// <summary>Power of every flash below that the margins are for.</summary>
    public required FlashPower Power { get; init; }

    /// <summary>Step of the power dial of the flash below.</summary>
    public PowerStep PowerStep { get; init; }

    /// <summary>That power as the flash's dial shows it.</summary>
    public DialMark Mark => new(Power, PowerStep);

    /// <summary>Whether the exposure works at that power, if only at the edge.</summary>
    public required bool IsUsable { get; init; }

    /// <summary>The view that holds the darkest visible point; it decides the power.</summary>
    public required ViewLightPlan DarkestView { get; init; }

    /// <summary>The view that holds the brightest visible point; it decides the veil.</summary>
    public required ViewLightPlan BrightestView { get; init; }

    /// <summary>Darkest visible point over all camera angles.</summary>
    public MarginPoint Darkest => DarkestView.Darkest!;

    /// <summary>Brightest visible point over all camera angles.</summary>
    public MarginPoint Brightest => BrightestView.Brightest!;

    /// <summary>Unevenness of what the camera sees.</summary>
    public Stops Spread => Brightest.Margin - Darkest.Margin;

    /// <summary>Share of the frame that clips, at the camera angle where it is least [1]; 0 to 1.</summary>
    public required double ClippedFraction { get; init; }

    /// <summary>Margin above which veiling glare washes out the subject.</summary>
    public Stops? HighestMargin { get; init; }

    /// <summary>Shadow lift by veiling glare on a mid-tone, taken from the brightest point and so an upper bound.</summary>
    public Stops? Veil { get; init; }

    /// <summary>Light that the panel throws up on the subject's underside against the lights above; none where nothing shines from above.</summary>
    public Stops? UplightAgainstKey { get; init; }

    /// <summary>What is seen at each camera angle.</summary>
    public required IReadOnlyList<ViewLightPlan> Views { get; init; }

    /// <summary>Outline around everything that is seen at any camera angle.</summary>
    public required IReadOnlyList<PanelPlace> Outline { get; init; }

    /// <summary>Margins over the whole panel, as seen in the darkest view; worked out when they are asked for.</summary>
    public MarginGrid Grid
    {
        get => _grid.Value;
        init => _grid = new Lazy<MarginGrid>(value);
    }
}
