using StudioKit.Physics.Sources;

namespace StudioKit.Physics.Exposure.Series;

/// <summary>The third-stop dials of cameras and flashes: exact values for calculation, rounded marks on paper.</summary>
/// <remarks>
/// Click k is f-number 2^(k/6), time 2^(k/3) s, speed 100·2^(k/3) and power 2^(−k/3); powers have half-stop and whole-stop dials besides. Marks are rounded by custom: f/11 stands
/// for 11.31,
/// 1/60 s for 1/64 s. A number that is no mark, such as f/6.7 of a half-stop dial, is taken as it is written.
/// </remarks>
[Source("CommonPractice", "third-stop dial marks; the exact series is arithmetic")]
public static class ThirdStopSeries
{
    internal static readonly DialScale FNumbers = new(1, 6, -3,
    [
        0.7, 0.8, 0.9, 1, 1.1, 1.2, 1.4, 1.6, 1.8, 2, 2.2, 2.5, 2.8, 3.2, 3.5, 4, 4.5, 5, 5.6, 6.3, 7.1, 8, 9, 10, 11, 13, 14, 16, 18,
        20, 22, 25, 29, 32, 36, 40, 45, 51, 57, 64, 72, 80, 90,
    ]);

    internal static readonly DialScale Times = new(1, 3, -39,
    [
        1.0 / 8000, 1.0 / 6400, 1.0 / 5000, 1.0 / 4000, 1.0 / 3200, 1.0 / 2500, 1.0 / 2000, 1.0 / 1600, 1.0 / 1250, 1.0 / 1000,
        1.0 / 800, 1.0 / 640, 1.0 / 500, 1.0 / 400, 1.0 / 320, 1.0 / 250, 1.0 / 200, 1.0 / 160, 1.0 / 125, 1.0 / 100, 1.0 / 80,
        1.0 / 60, 1.0 / 50, 1.0 / 40, 1.0 / 30, 1.0 / 25, 1.0 / 20, 1.0 / 15, 1.0 / 13, 1.0 / 10, 1.0 / 8, 1.0 / 6, 1.0 / 5, 1.0 / 4,
        0.3, 0.4, 0.5, 0.6, 0.8, 1, 1.3, 1.6, 2, 2.5, 3.2, 4, 5, 6, 8, 10, 13, 15, 20, 25, 30,
    ]);

    internal static readonly DialScale Speeds = new(100, 3, -12,
    [
        6, 8, 10, 12, 16, 20, 25, 32, 40, 50, 64, 80, 100, 125, 160, 200, 250, 320, 400, 500, 640, 800, 1000, 1250, 1600, 2000, 2500, 3200,
        4000, 5000, 6400, 8000, 10000, 12800, 16000, 20000, 25600, 32000, 40000, 51200, 64000, 80000, 102400,
    ]);

    internal static readonly DialScale Powers = new(1, -3, 0,
    [
        1, 1 / 1.3, 1 / 1.6, 1.0 / 2, 1 / 2.5, 1 / 3.2, 1.0 / 4, 1.0 / 5, 1 / 6.4, 1.0 / 8, 1.0 / 10, 1.0 / 13, 1.0 / 16, 1.0 / 20,
        1.0 / 25, 1.0 / 32, 1.0 / 40, 1.0 / 50, 1.0 / 64, 1.0 / 80, 1.0 / 100, 1.0 / 128, 1.0 / 160, 1.0 / 200, 1.0 / 256, 1.0 / 320,
        1.0 / 400, 1.0 / 512,
    ]);

    private static readonly DialScale PowersInHalves = new(1, -2, 0,
    [
        1, 1 / 1.4, 1.0 / 2, 1 / 2.8, 1.0 / 4, 1 / 5.6, 1.0 / 8, 1.0 / 11, 1.0 / 16, 1.0 / 22, 1.0 / 32, 1.0 / 45, 1.0 / 64, 1.0 / 90,
        1.0 / 128, 1.0 / 180, 1.0 / 256, 1.0 / 360, 1.0 / 512,
    ]);

    private static readonly DialScale PowersInWholeStops = new(1, -1, 0,
    [
        1, 1.0 / 2, 1.0 / 4, 1.0 / 8, 1.0 / 16, 1.0 / 32, 1.0 / 64, 1.0 / 128, 1.0 / 256, 1.0 / 512,
    ]);

    /// <summary>The exact f-number behind an engraved one, so that f/11 computes as 11.31.</summary>
    public static FNumber FromMark(FNumber marked) => new(FNumbers.FromMark(marked.Value));

    /// <summary>The exact time behind an engraved one, so that 1/60 s computes as 1/64 s.</summary>
    public static ShutterSpeed FromMark(ShutterSpeed marked) => new(Times.FromMark(marked.Seconds));

    /// <summary>The exact speed behind an engraved one, so that ISO 500 computes as 503.97.</summary>
    public static IsoSpeed FromMark(IsoSpeed marked) => new(Speeds.FromMark(marked.Value));

    /// <summary>The exact share behind an engraved one, so that 1/6.4 computes as 2^(−8/3), and 1/11 of a half-stop dial as 2^(−7/2).</summary>
    public static FlashPower FromMark(FlashPower marked) => new(PowersInHalves.FromMark(Powers.FromMark(marked.Fraction)));

    /// <summary>The click nearest to an f-number.</summary>
    public static FNumber Nearest(FNumber fNumber) => new(FNumbers.Exact(FNumbers.NearestIndex(fNumber.Value)));

    /// <summary>The click nearest to a time.</summary>
    public static ShutterSpeed Nearest(ShutterSpeed shutter) => new(Times.Exact(Times.NearestIndex(shutter.Seconds)));

    /// <summary>The click nearest to a speed.</summary>
    public static IsoSpeed Nearest(IsoSpeed iso) => new(Speeds.Exact(Speeds.NearestIndex(iso.Value)));

    /// <summary>The next click that lets more light in: a smaller f-number.</summary>
    public static FNumber Brighter(FNumber fNumber) => new(FNumbers.Exact(FNumbers.IndexBelow(fNumber.Value)));

    /// <summary>The next click that lets more light in: a longer time.</summary>
    public static ShutterSpeed Brighter(ShutterSpeed shutter) => new(Times.Exact(Times.IndexAbove(shutter.Seconds)));

    /// <summary>The next click that renders brighter: a higher speed.</summary>
    public static IsoSpeed Brighter(IsoSpeed iso) => new(Speeds.Exact(Speeds.IndexAbove(iso.Value)));

    /// <summary>The next click that lets less light in: a larger f-number.</summary>
    public static FNumber Darker(FNumber fNumber) => new(FNumbers.Exact(FNumbers.IndexAbove(fNumber.Value)));

    /// <summary>The next click that lets less light in: a shorter time.</summary>
    public static ShutterSpeed Darker(ShutterSpeed shutter) => new(Times.Exact(Times.IndexBelow(shutter.Seconds)));

    /// <summary>The next click that renders darker: a lower speed.</summary>
    public static IsoSpeed Darker(IsoSpeed iso) => new(Speeds.Exact(Speeds.IndexBelow(iso.Value)));

    /// <summary>Powers on the dial of one step.</summary>
    internal static DialScale PowersIn(PowerStep step) => step switch
    {
        PowerStep.Half => PowersInHalves,
        PowerStep.Whole => PowersInWholeStops,
        _ => Powers,
    };
}
