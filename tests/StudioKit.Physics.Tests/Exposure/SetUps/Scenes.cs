using StudioKit.Physics.Exposure;
using StudioKit.Physics.Exposure.Flashes;
using StudioKit.Physics.Exposure.Series;
using StudioKit.Physics.Exposure.SetUps;
using UnitsNet;

namespace StudioKit.Physics.Tests.Exposure.SetUps;

/// <summary>The scenes that common practice is checked in; what practice leaves open is stated here.</summary>
internal static class Scenes
{
    /// <summary>A small flash of guide number 30 m under 3 mm opal acrylic (T = 0.5), another in a dome at 30 cm, life size, in an open wood (EV 11).</summary>
    public static WhiteBackgroundCase White { get; } = new()
    {
        Camera = new CameraCase
        {
            Aperture = new FNumber(16),
            EffectiveFNumber = new FNumber(32),
            Shutter = new ShutterSpeed(1.0 / 128),
            Iso = new IsoSpeed(500),
        },
        Ambient = new ExposureValue(11),
        Below = new FlashCase
        {
            Name = "flash below",
            GuideNumber = Length.FromMeters(30),
            Distance = Length.FromCentimeters(45),
            HeadWidth = Length.FromMillimeters(60),
            HeadHeight = Length.FromMillimeters(35),
        },
        Transmittance = 0.5,
        Lights = [new SubjectLight(InDome("flash above", 30, 30))],
    };

    /// <summary>A flash of guide number 30 m in a small softbox (2 stops) at 50 cm, a bare one of 20 m behind at 60 cm, half life size, forest interior (EV 9).</summary>
    public static DarkBackgroundCase Dark { get; } = new()
    {
        Camera = new CameraCase
        {
            Aperture = new FNumber(16),
            EffectiveFNumber = new FNumber(24),
            Shutter = new ShutterSpeed(1.0 / 200),
            Iso = new IsoSpeed(640),
        },
        Ambient = new ExposureValue(9),
        Lights =
        [
            new SubjectLight(new FlashCase
            {
                Name = "key",
                GuideNumber = Length.FromMeters(30),
                Modifier = "small softbox",
                ModifierLoss = new Stops(2),
                Distance = Length.FromCentimeters(50),
                HeadWidth = Length.FromMillimeters(150),
                HeadHeight = Length.FromMillimeters(120),
            }),
        ],
        Rims = [new SubjectLight(new FlashCase { Name = "rim", GuideNumber = Length.FromMeters(20), Distance = Length.FromCentimeters(60) })],
        BackgroundDistance = Length.FromMeters(2),
    };

    /// <summary>A 180 mm lens at a quarter life size, f/11, braced for 1/60 s, last hour of light in the open (EV 10), fill at 1 m.</summary>
    public static LowLightFillCase Dusk { get; } = new()
    {
        Camera = new CameraCase
        {
            Aperture = ThirdStopSeries.FromMark(new FNumber(11)),
            EffectiveFNumber = new FNumber(ThirdStopSeries.FromMark(new FNumber(11)).Value * 1.25),
            Shutter = new ShutterSpeed(1.0 / 64),
        },
        Ambient = new ExposureValue(10),
        FillLevel = new Stops(-1.0 / 3),
        Lights = [new SubjectLight(InDome("fill", 30, 100))],
    };

    /// <summary>Bright cloud (EV 13), half life size, two small flashes in softboxes at 30 cm.</summary>
    public static DaylightFillCase Daylight { get; } = new()
    {
        Camera = new CameraCase { Aperture = new FNumber(11.314), EffectiveFNumber = new FNumber(16.97) },
        Ambient = new ExposureValue(13),
        Lights = [new SubjectLight(InDome("left flash", 30, 30)), new SubjectLight(InDome("right flash", 30, 30))],
    };

    private static FlashCase InDome(string name, double guideNumber, double centimetres) => new()
    {
        Name = name,
        GuideNumber = Length.FromMeters(guideNumber),
        Modifier = "dome",
        ModifierLoss = new Stops(1.7),
        Distance = Length.FromCentimeters(centimetres),
        HeadWidth = Length.FromMillimeters(80),
        HeadHeight = Length.FromMillimeters(60),
    };
}
