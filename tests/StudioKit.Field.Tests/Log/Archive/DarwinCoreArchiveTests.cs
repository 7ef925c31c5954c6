using System.Globalization;
using System.IO.Compression;
using System.Text.Json;
using System.Xml.Linq;
using StudioKit.Field.Log;
using StudioKit.Field.Log.Archive;
using StudioKit.Field.Log.Release;
using StudioKit.Planning.Tables;

namespace StudioKit.Field.Tests.Log.Archive;

/// <summary>The rules are those of the Darwin Core text guide (TDWG, 2023-09-13).</summary>
public sealed class DarwinCoreArchiveTests
{
    private static readonly XNamespace Text = "http://rs.tdwg.org/dwc/text/";

    private static readonly DataSetDescription Description = new(
        "Fen portraits", "A. Sedge", "Portraits of small animals of the fen.", "https://creativecommons.org/licenses/by/4.0/", new DateOnly(2026, 5, 10));

    private static readonly Gen<string> AnyText =
        Gen.Char["abc ,\"\n\t;|'<&é蛾=-"].Array[0, 12].Select(characters => new string(characters).Trim());

    private static readonly Gen<LogSnapshot> AnyLog =
        from sessions in Gen.Int[1, 4]
        from subjects in Gen.Int[1, 6]
        from texts in AnyText.Array[30]
        from numbers in Gen.Double[0.001, 80].Array[30]
        from minutes in Gen.Int[0, 500].Array[10]
        select Compose(sessions, subjects, texts, numbers, minutes);

    [Fact]
    public void What_was_exported_comes_back() =>
        AnyLog.Sample(
            log =>
            {
                var back = DarwinCoreArchive.Read("log.zip", Write(log)).Value!;
                back.Subjects.Should().BeEquivalentTo(log.Subjects);
                back.Frames.Should().BeEquivalentTo(log.Frames);
                back.Measurements.Should().BeEquivalentTo(log.Measurements);
                back.Sessions.Should().BeEquivalentTo(log.Sessions.Where(session => log.Subjects.Any(subject => subject.SessionId == session.Id)));
            },
            iter: 60);

    [Fact]
    public void Meta_xml_names_only_terms_of_the_standards_and_indices_that_exist()
    {
        using var zip = new ZipArchive(Write(LogSamples.Snapshot));
        var archive = XDocument.Load(zip.GetEntry("meta.xml")!.Open()).Root!;
        var terms = File.ReadLines(Path.Combine(AppContext.BaseDirectory, "Data", "biodiversity-terms.csv"))
            .Where(line => !line.StartsWith('#')).ToHashSet();

        archive.Name.Should().Be(Text + "archive");
        archive.Elements(Text + "core").Should().ContainSingle();
        zip.GetEntry((string)archive.Attribute("metadata")!).Should().NotBeNull();
        foreach (var table in archive.Elements())
        {
            var rows = Rows(zip, table);
            var fields = table.Elements(Text + "field").ToList();
            terms.Should().Contain((string)table.Attribute("rowType")!);
            fields.Select(field => (string)field.Attribute("term")!).Should().BeSubsetOf(terms).And.OnlyHaveUniqueItems();
            fields.Select(field => (int)field.Attribute("index")!).Should().OnlyContain(index => index >= 0 && index < rows[0].Length);
            rows.Should().OnlyContain(row => row.Length == rows[0].Length);
            fields.Select(field => ((string)field.Attribute("term")!).Split('/')[^1]).Should().Equal(rows[0]);
        }
    }

    [Fact]
    public void Core_identifiers_are_unique_and_every_extension_row_joins_one()
    {
        var log = LogSamples.Snapshot with { Subjects = [LogSamples.Subject, LogSamples.Subject with { Id = "subject-2" }] };
        using var zip = new ZipArchive(Write(log));
        var archive = XDocument.Load(zip.GetEntry("meta.xml")!.Open()).Root!;

        var ids = Ids(zip, archive.Element(Text + "core")!, "id");

        ids.Should().OnlyHaveUniqueItems().And.HaveCount(2);
        foreach (var extension in archive.Elements(Text + "extension"))
        {
            Ids(zip, extension, "coreid").Should().NotBeEmpty().And.BeSubsetOf(ids);
        }
    }

    [Fact]
    public void An_occurrence_says_when_where_what_and_who_as_the_term_list_asks()
    {
        var row = Occurrence(LogSamples.Snapshot);

        row["eventDate"].Should().Be("2026-05-09T14:00:00+01:00/2026-05-09T17:30:00+01:00");
        row["decimalLatitude"].Should().Be("52.61234");
        row["geodeticDatum"].Should().Be("EPSG:4326");
        row["coordinateUncertaintyInMeters"].Should().Be("30");
        row["recordedBy"].Should().Be("A. Sedge | B. Rush");
        row["identificationQualifier"].Should().Be("cf. plantarius");
        row["dataGeneralizations"].Should().BeEmpty();
    }

    /// <summary>SI units, as the term measurementUnit recommends: ten minutes are 600 s.</summary>
    [Fact]
    public void Facts_that_are_exported_as_measurements_say_their_unit()
    {
        using var zip = new ZipArchive(Write(LogSamples.Snapshot), ZipArchiveMode.Read);
        using var reader = new StreamReader(zip.GetEntry("measurementorfact.csv")!.Open());
        var facts = CsvText.Read(reader.ReadToEnd()).Skip(1).Select(row => (row[2].Text, row[3].Text, row[4].Text)).ToList();

        facts.Should().Contain([("hold limit", "600", "s"), ("exposure time", "0.005", "s"), ("focal length", "100", "mm"), ("pixel size at the subject", "5.625", "µm")]);
    }

    /// <summary>
    /// A tenth of a degree at 52.6° N is 11.13 km north to south and 6.76 km east to west; half the cell's diagonal is 6.51 km, and a quarter of it
    /// is added for the uncertainty that the place itself may have: 8.14 km.
    /// </summary>
    [Fact]
    public void A_sensitive_place_is_made_coarser_and_says_so()
    {
        var row = Occurrence(LogSamples.Snapshot with { Subjects = [LogSamples.Subject with { Sensitivity = PlaceSensitivity.Tenth }] });

        (row["decimalLatitude"], row["decimalLongitude"]).Should().Be(("52.65", "-21.55"), "that is the middle of the cell from 52.6 to 52.7 and from -21.6 to -21.5");
        double.Parse(row["coordinateUncertaintyInMeters"], CultureInfo.InvariantCulture).Should().BeInRange(8110, 8170);
        row["dataGeneralizations"].Should().Contain("0.1 degree");
        row["informationWithheld"].Should().Contain("locality");
        row["locality"].Should().BeEmpty();
    }

    [Fact]
    public void An_open_record_of_the_same_session_does_not_give_a_sensitive_place_away()
    {
        var log = LogSamples.Snapshot with
        {
            Subjects = [LogSamples.Subject, LogSamples.Subject with { Id = "subject-2", Sensitivity = PlaceSensitivity.Withheld }],
        };

        using var zip = new ZipArchive(Write(log));
        foreach (var entry in zip.Entries)
        {
            using var reader = new StreamReader(entry.Open());
            reader.ReadToEnd().Should().NotContain("52.61").And.NotContain("Boardwalk");
        }

        Written.GeoJson(LogRelease.Of(log)).Should().NotContain("52.61");
    }

    [Fact]
    public void A_damaged_archive_is_read_or_refused_but_never_crashes_the_reader()
    {
        var bytes = Write(LogSamples.Snapshot).ToArray();
        Gen.Select(Gen.Int[0, bytes.Length - 1], Gen.Byte).Sample(
            (place, value) =>
            {
                var damaged = bytes.ToArray();
                damaged[place] = value;
                var result = DarwinCoreArchive.Read("log.zip", new MemoryStream(damaged));
                return result.IsSound || result.Diagnostics.Count == 1;
            },
            iter: 2000);
    }

    [Fact]
    public void The_same_log_gives_the_same_bytes() =>
        Write(LogSamples.Snapshot).ToArray().Should().Equal(Write(LogSamples.Snapshot).ToArray());

    /// <summary>RFC 7946: longitude comes first.</summary>
    [Fact]
    public void GeoJSON_gives_points_with_the_longitude_first()
    {
        using var json = JsonDocument.Parse(Written.GeoJson(LogRelease.Of(LogSamples.Snapshot)));

        var feature = json.RootElement.GetProperty("features")[0];
        feature.GetProperty("geometry").GetProperty("coordinates").EnumerateArray().Select(number => number.GetDouble())
            .Should().Equal(-21.54321, 52.61234);
        feature.GetProperty("properties").GetProperty("scientificName").GetString().Should().Be("Dolomedes");
    }

    private static LogSnapshot Compose(int sessions, int subjects, string[] texts, double[] numbers, int[] minutes)
    {
        var start = LogSamples.Session.Start.Moment!.Value;
        var kept = Enumerable.Range(0, sessions).Select(i => LogSamples.Session with
        {
            Id = $"session-{i}",
            Name = texts[i],
            Start = i == 1 ? FieldDate.OfDay(LogSamples.Session.Start.Day) : start.AddMinutes(-minutes[i] - 600),
            End = i % 2 == 0 ? null : i == 1 ? FieldDate.OfDay(LogSamples.Session.Start.Day) : start.AddMinutes(-minutes[i] - 500),
            Locality = texts[i + 4],
            Remarks = texts[i + 8],
            Latitude = i == 2 ? null : numbers[i],
            Longitude = i == 2 ? null : -numbers[i + 4],
            CoordinateUncertainty = i == 3 ? null : numbers[i + 8],
        }).ToList();
        var portrayed = Enumerable.Range(0, subjects).Select(i => LogSamples.Subject with
        {
            Id = $"subject-{i}",
            SessionId = kept[i % sessions].Id,
            Behaviour = texts[i + 12],
            VernacularName = texts[i + 18],
            IndividualCount = i == 0 ? null : i,
            Released = i % 3 == 0 ? null : i % 3 == 1,
            HoldLimit = i % 2 == 0 ? null : TimeSpan.FromSeconds(minutes[i]),
        }).ToList();
        var frames = portrayed.Select((subject, i) => LogSamples.Frame with
        {
            SubjectId = subject.Id,
            FileName = $"a#{i} b.jpg",
            Caption = texts[i + 24],
            ExposureTime = numbers[i + 12],
            Iso = i == 1 ? null : numbers[i + 18],
            Taken = i == 2 ? null : start.AddMinutes(minutes[i]),
            Lens = i == 3 ? "" : "reed 50",
            Framing = i == 3 ? "" : "reed 50 at 1:2",
            SetUp = i == 3 ? "" : "white",
        });
        return new LogSnapshot(kept, portrayed, [.. frames], [.. portrayed.Select((subject, i) => LogSamples.Measurement with { Id = $"m{i}", SubjectId = subject.Id })]);
    }

    private static MemoryStream Write(LogSnapshot log)
    {
        var stream = new MemoryStream();
        DarwinCoreArchive.Write(LogRelease.Of(log), Description, stream);
        stream.Position = 0;
        return stream;
    }

    private static Dictionary<string, string> Occurrence(LogSnapshot log)
    {
        var rows = CsvText.Read(Written.Csv(LogRelease.Of(log)));
        return rows[0].Zip(rows[1]).ToDictionary(pair => pair.First.Text, pair => pair.Second.Text);
    }

    private static List<string[]> Rows(ZipArchive zip, XElement table)
    {
        using var reader = new StreamReader(zip.GetEntry(table.Element(Text + "files")!.Element(Text + "location")!.Value)!.Open());
        return [.. CsvText.Read(reader.ReadToEnd()).Select(row => row.Select(field => field.Text).ToArray())];
    }

    private static List<string> Ids(ZipArchive zip, XElement table, string name) =>
        [.. Rows(zip, table).Skip(1).Select(row => row[(int)table.Element(Text + name)!.Attribute("index")!])];
}
