using System.Text.Encodings.Web;
using System.Text.Json;
using StudioKit.Field.Log.Release;

namespace StudioKit.Field.Log.Archive;

/// <summary>Writes a log's occurrences as GeoJSON (RFC 7946), with the same fields as the archive.</summary>
public static class OccurrenceGeoJson
{
    private const int PortionSize = 1 << 15;

    /// <summary>Writes all occurrences as one feature collection; those without a place have no geometry.</summary>
    /// <param name="release">What leaves the log.</param>
    /// <param name="target">Stream for the document.</param>
    public static void Write(LogRelease release, Stream target)
    {
        ArgumentNullException.ThrowIfNull(release);
        ArgumentNullException.ThrowIfNull(target);
        var table = OccurrenceTable.Of(release);
        string[] names = [.. table.Terms.Select(ArchiveTable.ShortName)];
        var options = new JsonWriterOptions { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };
        using (var writer = new Utf8JsonWriter(target, options))
        {
            writer.WriteStartObject();
            writer.WriteString("type", "FeatureCollection");
            writer.WriteStartArray("features");
            foreach (var row in table.Rows)
            {
                Feature(writer, names, row);
                if (writer.BytesPending > PortionSize)
                {
                    writer.Flush();
                }
            }

            writer.WriteEndArray();
            writer.WriteEndObject();
        }

        target.Write("\n"u8);
    }

    private static void Feature(Utf8JsonWriter writer, string[] names, IReadOnlyList<string> row)
    {
        var (latitude, longitude) = (row[Array.IndexOf(names, "decimalLatitude")], row[Array.IndexOf(names, "decimalLongitude")]);
        writer.WriteStartObject();
        writer.WriteString("type", "Feature");
        writer.WritePropertyName("geometry");

        // Longitude first, always on WGS 84.
        writer.WriteRawValue(latitude.Length == 0 ? "null" : $"{{\"type\": \"Point\", \"coordinates\": [{longitude}, {latitude}]}}");
        writer.WriteStartObject("properties");
        foreach (var (name, value) in names.Zip(row).Where(pair => pair.Second.Length > 0))
        {
            writer.WriteString(name, value);
        }

        writer.WriteEndObject();
        writer.WriteEndObject();
    }
}
