using StudioKit.Kits.Triggers;
using StudioKit.Physics.Light.Standing;
using UnitsNet;

namespace StudioKit.Kits.SetUps;

/// <summary>One flash at work in a set-up.</summary>
public sealed record LightSpec
{
    /// <summary>Name of the flash.</summary>
    public required string Flash { get; init; }

    /// <summary>What it does.</summary>
    public required LightRole Role { get; init; }

    /// <summary>Name of the modifier before it; bare where the kit gives none.</summary>
    public string? Modifier { get; init; }

    /// <summary>Bright window to panel for a flash below, to the upright sheet for one behind it, to subject for all others.</summary>
    public required Length Distance { get; init; }

    /// <summary>How far right of the panel's centre it stands, as the camera sees it.</summary>
    public Length OffsetRight { get; init; } = Length.Zero;

    /// <summary>How far beyond the panel's centre it stands, away from the camera.</summary>
    public Length OffsetBack { get; init; } = Length.Zero;

    /// <summary>How far above the level of the subject a flash behind an upright sheet stands.</summary>
    public Length OffsetUp { get; init; } = Length.Zero;

    /// <summary>Tilt of its axis from straight up, towards the panel's centre.</summary>
    public Angle Tilt { get; init; } = Angle.Zero;

    /// <summary>Point of the panel that the axis of a flash below is aimed at, right of the flat panel's centre; with <see cref="AimBack"/> it stands in for the tilt.</summary>
    public Length? AimRight { get; init; }

    /// <summary>The same point, beyond the flat panel's centre.</summary>
    public Length? AimBack { get; init; }

    /// <summary>From where it comes as seen from above: 0° from the camera, 90° from its right, −90° from its left, 180° from behind the subject; usual for its role where the kit gives none.</summary>
    public Angle? Azimuth { get; init; }

    /// <summary>How high it stands over the level of the subject; usual for its role where the kit gives none.</summary>
    public Angle? Elevation { get; init; }

    /// <summary>Name of what holds it; whoever has a hand free where the kit names none.</summary>
    public string? Holder { get; init; }

    /// <summary>Name of what fires it; none where the kit does not say.</summary>
    public string? Trigger { get; init; }

    /// <summary>Letter of its group on the radio.</summary>
    public string Group { get; init; } = TriggerGroup.First;

    /// <summary>From where it comes; as the kit says, else as usual for its role. None for a flash below or behind a sheet, which its offsets place.</summary>
    public LightDirection? From => Role.IsBackground() ? null : Directed(UsualDirections.Of(Role));

    /// <summary>Zoom setting, as focal length on a 36 mm × 24 mm sensor; the guide number's own where the kit gives none.</summary>
    public Length? Zoom { get; init; }

    private LightDirection Directed(LightDirection usual) => new(Azimuth ?? usual.Azimuth, Elevation ?? usual.Elevation);
}
