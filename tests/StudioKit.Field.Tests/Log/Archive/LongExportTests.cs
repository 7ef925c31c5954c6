using System.IO.Compression;
using System.Text.Json.Nodes;
using StudioKit.Field.Log;
using StudioKit.Field.Log.Archive;
using StudioKit.Field.Log.Release;

namespace StudioKit.Field.Tests.Log.Archive;

/// <summary>A long log is written a record at a time; the reference here makes each file whole, field by field, after RFC 4180 and RFC 7946.</summary>
public sealed class LongExportTests
{
    private const int Sessions = 300;
    private static readonly DataSetDescription Description = new("Portraits", "", "", "", new DateOnly(2026, 5, 10));
    private static readonly LogRelease Release = LogRelease.Of(LongLogs.Of(Sessions));

    private static readonly string[] FrameFacts = ["exposure time", "f-number", "ISO speed", "focal length", "pixel size at the subject", "lens", "framing", "set-up"];
    private static readonly string[] SubjectFacts = ["hold start", "hold end", "hold limit", "released", "place made coarser"];

    private static IEnumerable<(SessionRelease Session, SubjectRelease Subject)> Subjects => Release.Sessions.SelectMany(session => session.Subjects.Select(subject => (session, subject)));

    [Fact]
    public void Occurrences_of_a_long_log_are_written_as_a_table_made_whole()
    {
        var text = Written.Csv(Release);
        var head = text[..text.IndexOf('\n', StringComparison.Ordinal)].Split(',');

        text.Should().Be(Table([head, .. Subjects.Select(pair => Row(pair.Session, pair.Subject, head))]));
        head.Should().HaveCount(30);
    }

    [Fact]
    public void GeoJson_of_a_long_log_is_written_as_a_document_made_whole()
    {
        var names = Written.Csv(Release).Split('\n')[0].Split(',');
        var features = Subjects.Select(pair => Feature(names, Row(pair.Session, pair.Subject, names)));
        var document = new JsonObject { ["type"] = "FeatureCollection", ["features"] = new JsonArray([.. features]) };

        var written = Written.GeoJson(Release);

        JsonNode.DeepEquals(JsonNode.Parse(written), document).Should().BeTrue();
        written.Should().StartWith("{\n  \"type\"").And.EndWith("}\n").And.NotContain("\r");
    }

    [Fact]
    public void An_archive_of_a_long_log_holds_tables_made_whole()
    {
        using var stream = new MemoryStream();
        DarwinCoreArchive.Write(Release, Description, stream);
        using var zip = new ZipArchive(stream);

        Text(zip, "occurrence.csv").Should().Be(Written.Csv(Release));
        Rest(Text(zip, "multimedia.csv")).Should().Be(Table(
            from pair in Subjects
            from frame in pair.Subject.Frames
            select new[] { "identifier", "type", "format", "created", "title", "creator", "license" }.Select(term => frame.Record[term]).Prepend(pair.Subject.Record.PublishedId)));
        Rest(Text(zip, "measurementorfact.csv")).Should().Be(Table(
        [
            .. from pair in Subjects from one in pair.Subject.Measurements where one["measurementType"].Length > 0
               select new[] { "measurementID", "measurementType", "measurementValue", "measurementUnit", "measurementAccuracy", "measurementMethod" }.Select(term => one[term]).Prepend(pair.Subject.Record.PublishedId).Append(""),
            .. from pair in Subjects from fact in SubjectFacts from row in Fact(pair.Subject, pair.Subject.Facts, fact, "") select row,
            .. from pair in Subjects from frame in pair.Subject.Frames from fact in FrameFacts from row in Fact(pair.Subject, frame.Facts, fact, $"of picture {frame.FileName}") select row,
        ]));
    }

    /// <summary>What is allocated counts the records that are visited: four times the log is four times that, where looking through all for each would be sixteen times.</summary>
    [Theory]
    [InlineData("csv")]
    [InlineData("geojson")]
    [InlineData("archive")]
    [InlineData("index")]
    public void What_an_export_visits_grows_with_the_log_and_not_with_its_square(string form)
    {
        // The first time makes what every export shares.
        Cost(form, 40);

        (Cost(form, 4 * Sessions) / (double)Cost(form, Sessions)).Should().BeInRange(3, 5);
    }

    /// <summary>Kept, what leaves would hold the log many times over: a record has a score of fields, each as recorded and as published.</summary>
    [Fact]
    public void What_leaves_is_judged_when_it_is_looked_at_and_not_kept()
    {
        Release.Sessions[7].Should().NotBeSameAs(Release.Sessions[7]);
        Release.Sessions[7].Subjects[0].Record.Should().BeEquivalentTo(Release.Sessions[7].Subjects[0].Record);
    }

    private static long Cost(string form, int sessions)
    {
        var log = LongLogs.Of(sessions);
        var before = GC.GetAllocatedBytesForCurrentThread();
        if (form == "index")
        {
            var index = new LogIndex(log, ShortLabel.For(log));
            log.Records.Count(record => index.ShortId(record.Id).Length > 0 && index.Entry(record.Id) is not null).Should().Be(11 * sessions);
            return GC.GetAllocatedBytesForCurrentThread() - before;
        }

        var release = LogRelease.Of(log);
        Action write = form switch
        {
            "csv" => () => DarwinCoreArchive.WriteOccurrences(release, Stream.Null),
            "geojson" => () => OccurrenceGeoJson.Write(release, Stream.Null),
            _ => () =>
            {
                using var stream = new MemoryStream();
                DarwinCoreArchive.Write(release, Description, stream);
            }
            ,
        };
        write();
        return GC.GetAllocatedBytesForCurrentThread() - before;
    }

    private static string[] Row(SessionRelease session, SubjectRelease subject, string[] head) =>
        [.. head.Select(term => session.Record.Fields.Any(field => field.Term == term) ? session.Record[term] : subject.Record[term])];

    private static IEnumerable<IEnumerable<string>> Fact(SubjectRelease subject, ReleasedRecord facts, string fact, string remarks)
    {
        var unit = fact switch { "hold limit" or "exposure time" => "s", "focal length" => "mm", "pixel size at the subject" => "µm", _ => "" };
        return facts[fact].Length > 0 ? [[subject.Record.PublishedId, $"{facts.PublishedId}#{fact}", fact, facts[fact], unit, "", "", remarks]] : [];
    }

    private static JsonObject Feature(string[] names, string[] row)
    {
        var place = names.Zip(row).ToDictionary(pair => pair.First, pair => pair.Second);
        return new JsonObject
        {
            ["type"] = "Feature",
            ["geometry"] = place["decimalLatitude"].Length == 0 ? null
                : JsonNode.Parse($"{{\"type\":\"Point\",\"coordinates\":[{place["decimalLongitude"]},{place["decimalLatitude"]}]}}"),
            ["properties"] = new JsonObject(place.Where(pair => pair.Value.Length > 0).Select(pair => KeyValuePair.Create(pair.Key, (JsonNode?)JsonValue.Create(pair.Value)))),
        };
    }

    private static string Table(IEnumerable<IEnumerable<string>> rows) => string.Concat(rows.Select(row => string.Join(',', row.Select(Quoted)) + "\n"));

    private static string Quoted(string field) => field.Any(sign => sign is ',' or '"' or '\n' or '\r') || field.Trim() != field ? $"\"{field.Replace("\"", "\"\"")}\"" : field;

    private static string Rest(string table) => table[(table.IndexOf('\n', StringComparison.Ordinal) + 1)..];

    private static string Text(ZipArchive zip, string name)
    {
        using var reader = new StreamReader(zip.GetEntry(name)!.Open());
        return reader.ReadToEnd();
    }
}
