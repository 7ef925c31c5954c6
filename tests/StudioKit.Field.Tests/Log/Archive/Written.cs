using System.Text;
using StudioKit.Field.Log.Archive;
using StudioKit.Field.Log.Release;

namespace StudioKit.Field.Tests.Log.Archive;

/// <summary>What leaves a log, as text.</summary>
internal static class Written
{
    public static string Csv(LogRelease release) => Text(stream => DarwinCoreArchive.WriteOccurrences(release, stream));

    public static string GeoJson(LogRelease release) => Text(stream => OccurrenceGeoJson.Write(release, stream));

    private static string Text(Action<Stream> write)
    {
        using var stream = new MemoryStream();
        write(stream);
        return Encoding.UTF8.GetString(stream.ToArray());
    }
}
