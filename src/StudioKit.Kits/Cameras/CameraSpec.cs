using StudioKit.Physics.Exposure;
using UnitsNet;

namespace StudioKit.Kits.Cameras;

/// <summary>The camera body.</summary>
public sealed record CameraSpec
{
    /// <summary>Name on the sheets.</summary>
    public required string Name { get; init; }

    /// <summary>Longer side of the sensor; with <see cref="SensorHeight"/> the file's <c>sensor: 36 mm x 24 mm</c>.</summary>
    public required Length SensorWidth { get; init; }

    /// <summary>Shorter side of the sensor.</summary>
    public required Length SensorHeight { get; init; }

    /// <summary>Pixels along the longer side [1]; with <see cref="PixelsHigh"/> the file's <c>pixels: 8192 x 5464</c>.</summary>
    public int PixelsWide { get; init; } = 6000;

    /// <summary>Pixels along the shorter side [1].</summary>
    public int PixelsHigh { get; init; } = 4000;

    /// <summary>Shortest shutter speed at which a flash lights the whole frame; key <c>flash-sync</c>.</summary>
    public ShutterSpeed FlashSync { get; init; } = new(1.0 / 200);

    /// <summary>Lowest ISO speed.</summary>
    public IsoSpeed LowestIso { get; init; } = new(100);

    /// <summary>Highest ISO speed that the photographer accepts.</summary>
    public IsoSpeed HighestIso { get; init; } = new(3200);

    /// <summary>Whether the camera already shows the effective f-number, which then must not be corrected again.</summary>
    public bool ReportsEffectiveFNumber { get; init; }

    /// <summary>How far the camera's own clipping lies above ISO 12232 saturation, 78/S; calibration replaces it.</summary>
    public Stops ClipPoint { get; init; } = new(0);

    /// <summary>Greatest blur spot that passes for sharp on the sensor; a 1500th of the diagonal where the kit gives none.</summary>
    public Length? CircleOfConfusion { get; init; }

    /// <summary>Lens mount to sensor.</summary>
    public Length FlangeDistance { get; init; } = Length.FromMillimeters(44);

    /// <summary>Glare inside the camera and lens as a share of a uniform bright field (veiling glare index) [1]; 0 to 1.</summary>
    public double VeilingGlare { get; init; } = 0.02;

    /// <summary>Mass with its battery; none where it was not given.</summary>
    public Mass? Mass { get; init; }
}
