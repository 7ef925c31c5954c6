using BenchmarkDotNet.Attributes;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Exposure.Flashes;
using StudioKit.Physics.Exposure.SetUps;
using UnitsNet;

namespace StudioKit.Benchmarks;

/// <summary>Ten thousand framings in set-ups, from deep shade to full sun, so that many are out of reach and must say why.</summary>
[MemoryDiagnoser]
public class ExposureBenchmarks
{
    private const int Solutions = 10_000;

    private static readonly FlashCase Flash = new()
    {
        Name = "flash",
        GuideNumber = Length.FromMeters(30),
        Distance = Length.FromCentimeters(45),
        HeadWidth = Length.FromMillimeters(60),
        HeadHeight = Length.FromMillimeters(35),
    };

    private static readonly CameraCase Camera = new() { Aperture = new FNumber(16), EffectiveFNumber = new FNumber(32), Iso = new IsoSpeed(500) };

    /// <summary>A flash below and one above, each place in turn.</summary>
    [Benchmark]
    public int WhiteBackgrounds()
    {
        var works = 0;
        for (var i = 0; i < Solutions; i++)
        {
            var solved = WhiteBackgroundSetUp.Solve(new WhiteBackgroundCase
            {
                Camera = Camera,
                Ambient = PlaceOf(i),
                Below = Flash,
                Transmittance = 0.5,
                Lights = [new SubjectLight(Flash)],
            });
            works += solved.Works ? 1 : 0;
        }

        return works;
    }

    /// <summary>A key and a rim light, each place in turn.</summary>
    [Benchmark]
    public int DarkBackgrounds()
    {
        var works = 0;
        for (var i = 0; i < Solutions; i++)
        {
            var solved = DarkBackgroundSetUp.Solve(new DarkBackgroundCase
            {
                Camera = Camera,
                Ambient = PlaceOf(i),
                Lights = [new SubjectLight(Flash)],
                Rims = [new SubjectLight(Flash)],
            });
            works += solved.Works ? 1 : 0;
        }

        return works;
    }

    private static ExposureValue PlaceOf(int index) => new(3 + (index % 130 / 10.0));
}
