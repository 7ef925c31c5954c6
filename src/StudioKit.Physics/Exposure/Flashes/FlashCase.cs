using UnitsNet;

namespace StudioKit.Physics.Exposure.Flashes;

/// <summary>One flash where it stands, with what is before it.</summary>
public sealed record FlashCase
{
    /// <summary>What sheets call it, e.g. <c>flash below</c>.</summary>
    public string Name { get; init; } = "flash";

    /// <summary>Guide number at ISO 100 and full power for the zoom in use; &gt; 0 m.</summary>
    public required Length GuideNumber { get; init; }

    /// <summary>Zoom in use, as focal length on a 36 mm × 24 mm sensor; none where it is not known.</summary>
    public Length? Zoom { get; init; }

    /// <summary>The listed guide number that the one in use was made from; none where it is listed itself or lies between two that are.</summary>
    public GuideNumber? MadeFrom { get; init; }

    /// <summary>How far the light may lie to either side for want of a guide number for this zoom; 0 stops or more.</summary>
    public Stops ZoomDoubt { get; init; }

    /// <summary>Power setting for which a budget is drawn up.</summary>
    public FlashPower Power { get; init; } = FlashPower.Full;

    /// <summary>Step of its power dial, counted from full power down.</summary>
    public PowerStep PowerStep { get; init; }

    /// <summary>That power as the flash shows it.</summary>
    public DialMark Mark => new(Power, PowerStep);

    /// <summary>Lowest power setting.</summary>
    public FlashPower LowestPower { get; init; } = new(1.0 / 128);

    /// <summary>Highest power setting allowed; less than full where recycling or blur limits it.</summary>
    public FlashPower HighestPower { get; init; } = FlashPower.Full;

    /// <summary>Loss outdoors against the room the guide number was measured in; negative stops, 0 for the bare formula.</summary>
    public Stops OutdoorCorrection { get; init; } = new(-0.5);

    /// <summary>Name of the modifier; none for a bare head.</summary>
    public string? Modifier { get; init; }

    /// <summary>Loss of the modifier on its axis, counted positive.</summary>
    public Stops ModifierLoss { get; init; }

    /// <summary>Loss in the walls of a clear cover, or at a water surface, on the way to the subject, counted positive.</summary>
    public Stops CoverLoss { get; init; }

    /// <summary>What the subject's light loses beyond <see cref="CameraCase.CoverLoss"/> on its way to the lens: what water spreads, less what the sheet's loses more.</summary>
    public Stops SubjectLoss { get; init; }

    /// <summary>What is lost because lens and hood hide part of its face from the subject, counted positive. See <see cref="Light.Standing.LightCover"/>.</summary>
    public Stops LensLoss { get; init; }

    /// <summary>
    /// What is lost because light does not meet the subject head-on as the camera sees it; 0 stops or less. See
    /// <see cref="Light.Standing.MidwayIncidence"/>.
    /// </summary>
    public Stops DirectionLoss { get; init; }

    /// <summary>Bright window to panel or subject; &gt; 0 m.</summary>
    public required Length Distance { get; init; }

    /// <summary>Width of the bright window or modifier front; 0 m treats the head as a point.</summary>
    public Length HeadWidth { get; init; } = Length.Zero;

    /// <summary>Height of the bright window or modifier front; 0 m treats the head as a point.</summary>
    public Length HeadHeight { get; init; } = Length.Zero;

    /// <summary>Flash duration t0.1 at full power; &gt; 0 s.</summary>
    public Duration FullPowerDuration { get; init; } = Duration.FromSeconds(1.0 / 300);

    /// <summary>How well this flash's own numbers are known; as the set-up's where none is given.</summary>
    public LightUncertainty? Uncertainty { get; init; }

    /// <summary>Recycle time after full power; &gt; 0 s.</summary>
    public Duration RecycleTime { get; init; } = Duration.FromSeconds(3);
}
