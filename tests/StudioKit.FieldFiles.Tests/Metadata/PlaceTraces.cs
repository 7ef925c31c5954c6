using System.Buffers.Binary;
using System.Globalization;
using System.Text;

namespace StudioKit.FieldFiles.Tests.Metadata;

/// <summary>Looks for one exact place in any bytes, in every notation that it is usually written in.</summary>
internal sealed class PlaceTraces
{
    private readonly List<(string What, byte[] Bytes)> _traces = [];

    public PlaceTraces(double latitude, double longitude, params string[] words)
    {
        foreach (var angle in new[] { Math.Abs(latitude), Math.Abs(longitude) })
        {
            Text("decimal degrees", angle.ToString("0.00000", CultureInfo.InvariantCulture)[..^2]);
            Text("decimal degrees with a comma", angle.ToString("0.00000", CultureInfo.InvariantCulture)[..^2].Replace('.', ','));
            Sexagesimal(angle);
            Binary(angle);
            Binary(-angle);
        }

        var (east, north) = Projected(latitude, longitude);
        Text("grid east", east.ToString("0", CultureInfo.InvariantCulture)[..^1]);
        Text("grid north", north.ToString("0", CultureInfo.InvariantCulture)[..^1]);
        foreach (var word in words)
        {
            Text("a name", word);
            _traces.Add(("a name in UTF-16", Encoding.Unicode.GetBytes(word)));
        }
    }

    /// <summary>What of the place stands in some bytes; empty where nothing does.</summary>
    public IReadOnlyList<string> In(byte[] bytes) =>
        [.. _traces.Where(trace => Holds(bytes, trace.Bytes)).Select(trace => $"{trace.What}: {Encoding.UTF8.GetString(trace.Bytes)}")];

    private static bool Holds(ReadOnlySpan<byte> bytes, ReadOnlySpan<byte> trace) => bytes.IndexOf(trace) >= 0;

    private void Text(string what, string text) => _traces.Add((what, Encoding.UTF8.GetBytes(text)));

    // Degrees, minutes, seconds: as written and as the three ratios of Exif, in both byte orders.
    private void Sexagesimal(double angle)
    {
        var (degrees, minutes) = ((uint)angle, (uint)(angle % 1 * 60));
        var seconds = (uint)(angle * 60 % 1 * 60);
        foreach (var form in new[] { "{0}°{1}'{2}", "{0}° {1}' {2}", "{0} {1} {2}", "{0}°{1}′{2}", "{0}d{1}m{2}", "{0},{1},{2}", "{0}:{1}:{2}" })
        {
            Text("degrees, minutes, seconds", string.Format(CultureInfo.InvariantCulture, form, degrees, minutes.ToString("00", CultureInfo.InvariantCulture), seconds.ToString("00", CultureInfo.InvariantCulture)));
            Text("degrees, minutes, seconds", string.Format(CultureInfo.InvariantCulture, form, degrees, minutes, seconds));
        }

        Text("degrees and minutes of XMP", string.Create(CultureInfo.InvariantCulture, $"{degrees},{angle % 1 * 60:0.00}")[..^1]);
        foreach (var big in new[] { true, false })
        {
            _traces.Add(("ratios of Exif", [.. U32(degrees, big), .. U32(1, big), .. U32(minutes, big), .. U32(1, big)]));
            _traces.Add(("a ratio of a hundred thousandth", U32((uint)Math.Round(angle * 100_000), big)));
        }
    }

    private void Binary(double angle)
    {
        var bits = BitConverter.DoubleToInt64Bits(angle);
        _traces.Add(("a double", BitConverter.GetBytes(bits)));
        _traces.Add(("a double", BitConverter.GetBytes(BinaryPrimitives.ReverseEndianness(bits))));
    }

    private static byte[] U32(uint value, bool big) => BitConverter.GetBytes(big ? BinaryPrimitives.ReverseEndianness(value) : value);

    // Universal transverse Mercator on WGS 84, by the series of Snyder, Map Projections (USGS PP 1395), equations 8-9 to 8-15: good to a metre.
    private static (double East, double North) Projected(double latitude, double longitude)
    {
        const double A = 6_378_137, E2 = 0.00669438, Scale = 0.9996;
        var phi = latitude * Math.PI / 180;
        var middle = (Math.Floor((longitude + 180) / 6) * 6) - 180 + 3;
        var ep2 = E2 / (1 - E2);
        var (n, t, c) = (A / Math.Sqrt(1 - (E2 * Math.Pow(Math.Sin(phi), 2))), Math.Pow(Math.Tan(phi), 2), ep2 * Math.Pow(Math.Cos(phi), 2));
        var a = (longitude - middle) * Math.PI / 180 * Math.Cos(phi);
        var m = A * (((1 - (E2 / 4) - (3 * E2 * E2 / 64) - (5 * Math.Pow(E2, 3) / 256)) * phi)
            - (((3 * E2 / 8) + (3 * E2 * E2 / 32) + (45 * Math.Pow(E2, 3) / 1024)) * Math.Sin(2 * phi))
            + (((15 * E2 * E2 / 256) + (45 * Math.Pow(E2, 3) / 1024)) * Math.Sin(4 * phi)) - (35 * Math.Pow(E2, 3) / 3072 * Math.Sin(6 * phi)));
        var east = 500_000 + (Scale * n * (a + ((1 - t + c) * Math.Pow(a, 3) / 6) + ((5 - (18 * t) + (t * t) + (72 * c) - (58 * ep2)) * Math.Pow(a, 5) / 120)));
        var north = Scale * (m + (n * Math.Tan(phi) * ((a * a / 2) + ((5 - t + (9 * c) + (4 * c * c)) * Math.Pow(a, 4) / 24)
            + ((61 - (58 * t) + (t * t) + (600 * c) - (330 * ep2)) * Math.Pow(a, 6) / 720))));
        return (east, north < 0 ? north + 10_000_000 : north);
    }
}
