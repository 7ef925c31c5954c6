using System.IO.Compression;
using System.Text;
using StudioKit.Field.Log;
using StudioKit.Field.Log.Archive;
using StudioKit.Field.Log.Release;

namespace StudioKit.Field.Tests.Log.Archive;

/// <summary>The rules are those of the Darwin Core text guide and its schema (TDWG): one core, fields with an index or a default, UTF-8.</summary>
public sealed class ArchiveReadingTests
{
    private static readonly DataSetDescription Description = new("Portraits", "", "", "", new DateOnly(2026, 5, 10));

    private static readonly string[] Files = ["meta.xml", "eml.xml", "occurrence.csv", "multimedia.csv", "measurementorfact.csv"];

    [Theory]
    [InlineData("meta.xml", "<extension ", "<core rowType=\"http://rs.tdwg.org/dwc/terms/Occurrence\"/><extension ", "FLD463", "cores; an archive has one")]
    [InlineData("meta.xml", "<core ", "<table ", "FLD463", "no XML that can be read")]
    [InlineData("meta.xml", "http://rs.tdwg.org/dwc/text/", "http://example.org/", "FLD463", "<archive>")]
    [InlineData("meta.xml", "<field index=\"6\" term=\"http://rs.tdwg.org/dwc/terms/habitat\" />", "<field term=\"http://rs.tdwg.org/dwc/terms/habitat\" />", "FLD464", "habitat of occurrence.csv neither an index nor a default")]
    [InlineData("meta.xml", "<field index=\"6\"", "<field index=\"six\"", "FLD464", "'six'")]
    [InlineData("meta.xml", "<id index=\"0\" />", "<id />", "FLD464", "no column for the id of occurrence.csv")]
    [InlineData("meta.xml", "terms/habitat\"", "terms/locality\"", "FLD464", "locality of occurrence.csv 2 times")]
    [InlineData("meta.xml", "encoding=\"UTF-8\" fields", "encoding=\"ISO-8859-1\" fields", "FLD465", "ISO-8859-1")]
    [InlineData("meta.xml", "fieldsTerminatedBy=\",\"", "fieldsTerminatedBy=\"\\t\"", "FLD466", "fieldsTerminatedBy")]
    [InlineData("meta.xml", "<location>occurrence.csv</location>", "<location>occurrences.csv</location>", "FLD462", "no file 'occurrences.csv'")]
    [InlineData("meta.xml", "<location>occurrence.csv</location>", "<location>occurrence.csv</location><location>more.csv</location>", "FLD462", "2 files")]
    [InlineData("meta.xml", "http://rs.gbif.org/terms/1.0/Multimedia", "http://rs.gbif.org/terms/1.0/Distribution", "FLD467", "no place for")]
    [InlineData("meta.xml", "terms/habitat\"", "terms/stateProvince\"", "FLD467", "stateProvince")]
    [InlineData("occurrence.csv", "52.61234", "fifty", "FLD468", "occurrence.csv, line 2: decimalLatitude is 'fifty'")]
    [InlineData("occurrence.csv", "EPSG:4326", "EPSG:4277", "FLD468", "geodeticDatum is 'EPSG:4277'")]
    [InlineData("occurrence.csv", "detected", "absent", "FLD468", "occurrenceStatus is 'absent'")]
    [InlineData("occurrence.csv", "2026-05-09T14:00:00+01:00/", "May 2026/", "FLD468", "eventDate")]
    [InlineData("occurrence.csv", "session-1", "", "FLD468", "eventID is missing")]
    [InlineData("measurementorfact.csv", "Hundredth", "99", "FLD468", "measurementValue is '99'")]
    [InlineData("measurementorfact.csv", "Hundredth", "Secret", "FLD468", "measurementValue is 'Secret'")]
    [InlineData("measurementorfact.csv", "exposure time,0.005,s", "exposure time,0.005,min", "FLD468", "measurementUnit is 'min'")]
    [InlineData("measurementorfact.csv", "exposure time,0.005,s", "exposure time,0.005", "FLD468", "cells")]
    [InlineData("multimedia.csv", "StillImage", "MovingImage", "FLD468", "type is 'MovingImage'")]
    public void What_would_be_read_in_part_is_refused_by_name(string file, string was, string becomes, string code, string said)
    {
        var parts = Unpacked();
        parts[file].Should().Contain(was);
        parts[file] = parts[file].Replace(was, becomes);

        var result = Read(parts);

        result.IsSound.Should().BeFalse();
        result.Diagnostics.Single().Code.Should().Be(code);
        result.Diagnostics.Single().ToString().Should().StartWith("fen.zip: ").And.Contain(said);
    }

    [Theory]
    [InlineData("meta.xml")]
    [InlineData("occurrence.csv")]
    [InlineData("multimedia.csv")]
    public void A_missing_file_is_named(string file)
    {
        var parts = Unpacked();
        parts.Remove(file);

        Read(parts).Diagnostics.Single().ToString().Should().Contain($"FLD462: It has no file '{file}'.");
    }

    [Fact]
    public void A_default_stands_where_a_column_or_a_cell_is_missing()
    {
        var parts = Unpacked();
        parts["meta.xml"] = parts["meta.xml"].Replace(
            "<field index=\"0\" term=\"http://rs.tdwg.org/dwc/terms/occurrenceID\" />\n    <field index=\"1\" term=\"http://rs.tdwg.org/dwc/terms/basisOfRecord\" />",
            "<field index=\"0\" term=\"http://rs.tdwg.org/dwc/terms/occurrenceID\" />\n    <field default=\"LivingSpecimen\" term=\"http://rs.tdwg.org/dwc/terms/basisOfRecord\" />");

        Read(parts).Value!.Subjects[0].BasisOfRecord.Should().Be("LivingSpecimen");
    }

    [Fact]
    public void Bytes_that_are_no_UTF_8_are_refused() =>
        DarwinCoreArchive.Read("fen.zip", Packed(Unpacked(), bytes => [.. bytes, 0xC3, 0x28], "occurrence.csv")).Diagnostics.Single().Code.Should().Be("FLD465");

    [Fact]
    public void A_file_that_is_there_twice_is_refused()
    {
        var stream = Packed(Unpacked());
        using (var zip = new ZipArchive(stream, ZipArchiveMode.Update, leaveOpen: true))
        {
            using var writer = new StreamWriter(zip.CreateEntry("occurrence.csv").Open());
            writer.Write("other");
        }

        stream.Position = 0;
        DarwinCoreArchive.Read("fen.zip", stream).Diagnostics.Single().ToString().Should().Contain("2 files 'occurrence.csv'");
    }

    [Fact]
    public void A_session_told_in_two_ways_is_refused()
    {
        var log = LogSamples.Snapshot with { Subjects = [LogSamples.Subject, LogSamples.Subject with { Id = "subject-2" }] };
        var parts = Unpacked(log);
        var second = parts["occurrence.csv"].LastIndexOf("alkaline fen", StringComparison.Ordinal);
        parts["occurrence.csv"] = parts["occurrence.csv"].Remove(second, "alkaline".Length).Insert(second, "acid");

        Read(parts).Diagnostics.Single().ToString().Should().Contain("session-1").And.Contain("another way");
    }

    [Fact]
    public void Any_damage_gives_an_archive_or_a_sentence_but_never_a_trace() =>
        Gen.Select(Gen.Int[0, Files.Length - 1], Gen.Int[0, 7], Gen.Int[0, 100_000], Gen.Char["<>\"',;#\n\0 é9-/&"].Array[0, 6]).Array[1, 4].Sample(
            damages =>
            {
                var parts = Unpacked();
                foreach (var (file, kind, place, text) in damages)
                {
                    Damage(parts, Files[file], kind, place, new string(text));
                }

                var result = Read(parts);
                return result.IsSound || result.Diagnostics.All(fault => fault.Message.Length > 10 && fault.Code.StartsWith("FLD46", StringComparison.Ordinal));
            },
            iter: RandomFiles.Count);

    [Fact]
    public void Any_damaged_byte_of_the_zip_file_gives_the_same_records_or_a_sentence()
    {
        var bytes = Packed(Unpacked()).ToArray();
        var sound = Text(Read(Unpacked()).Value!);
        Gen.Select(Gen.Int[0, bytes.Length - 1], Gen.Byte).Sample(
            (place, value) =>
            {
                var damaged = bytes.ToArray();
                damaged[place] = value;
                var result = DarwinCoreArchive.Read("fen.zip", new MemoryStream(damaged));
                return result.IsSound ? Text(result.Value) == sound : result.Diagnostics.Count == 1;
            },
            iter: 10 * RandomFiles.Count);
    }

    [Fact]
    public void An_archive_taken_in_twice_adds_nothing()
    {
        var read = Read(Unpacked()).Value!;

        ArchiveMerge.Of(LogSnapshot.Empty, read).New.Records.Should().HaveCount(4);
        var again = ArchiveMerge.Of(read, Read(Unpacked()).Value!);

        again.New.Records.Should().BeEmpty();
        again.Different.Records.Should().BeEmpty();
        again.Same.Should().Be(4);
    }

    [Fact]
    public void An_exact_record_is_never_replaced_by_the_coarse_copy_that_left()
    {
        var here = LogSamples.Snapshot with { Subjects = [LogSamples.Subject with { Sensitivity = PlaceSensitivity.Tenth }] };

        var merge = ArchiveMerge.Of(here, Read(Unpacked(here)).Value!);

        (merge.New.Records.Count(), merge.Different.Records.Count(), merge.Exported).Should().Be((0, 0, 1));
    }

    [Fact]
    public void A_record_that_differs_stays_and_is_named()
    {
        var here = LogSamples.Snapshot with { Subjects = [LogSamples.Subject with { Behaviour = "jumped" }] };

        ArchiveMerge.Of(here, Read(Unpacked()).Value!).Different.Records.Should().Equal((LogRecordKind.Subject, "subject-1"));
    }

    [Fact]
    public void What_came_in_coarse_leaves_as_coarse_and_under_the_same_names()
    {
        var parts = Unpacked(LogSamples.Snapshot with { Subjects = [LogSamples.Subject with { Sensitivity = PlaceSensitivity.Tenth }] });

        var again = Unpacked(Read(parts).Value!);

        foreach (var term in new[] { "occurrenceID", "eventID", "eventDate", "decimalLatitude", "decimalLongitude", "coordinateUncertaintyInMeters" })
        {
            Cell(again, term).Should().Be(Cell(parts, term), term);
        }

        Cell(again, "dataGeneralizations").Should().Contain("0.1 degree");
        again["multimedia.csv"].Should().Be(parts["multimedia.csv"]);
    }

    private static string Cell(Dictionary<string, string> parts, string term)
    {
        var rows = StudioKit.Planning.Tables.CsvText.Read(parts["occurrence.csv"]);
        return rows[1][rows[0].ToList().FindIndex(head => head.Text == term)].Text;
    }

    private static void Damage(Dictionary<string, string> parts, string file, int kind, int place, string text)
    {
        if (!parts.TryGetValue(file, out var was) || was.Length == 0)
        {
            return;
        }

        var (at, lines) = (place % was.Length, was.Split('\n'));
        var line = place % lines.Length;
        var length = Math.Min(1 + (place % 40), was.Length - at);
        switch (kind)
        {
            case 0:
                parts[file] = was.Insert(at, text);
                break;
            case 1:
                parts[file] = was.Remove(at, length);
                break;
            case 2:
                parts[file] = was[..at];
                break;
            case 3:
                parts[file] = string.Join('\n', lines.Where((_, i) => i != line));
                break;
            case 4:
                parts[file] = string.Join('\n', lines.Append(lines[line]));
                break;
            case 5:
                parts.Remove(file);
                break;
            case 6:
                parts[file] = was.Replace(was[at], text.Length > 0 ? text[0] : ' ');
                break;
            default:
                parts[file] = was.Remove(at, length).Insert(at, was.Substring(place * 7 % was.Length)[..Math.Min(length, was.Length - (place * 7 % was.Length))]);
                break;
        }
    }

    private static string Text(LogSnapshot log) => string.Join('\n', Unpacked(log).Values);

    private static FieldResult<LogSnapshot> Read(Dictionary<string, string> parts) => DarwinCoreArchive.Read("fen.zip", Packed(parts));

    private static Dictionary<string, string> Unpacked() =>
        Unpacked(LogSamples.Snapshot, isSaidToBeSensitive: true);

    private static Dictionary<string, string> Unpacked(LogSnapshot log, bool isSaidToBeSensitive = false)
    {
        using var stream = new MemoryStream();
        DarwinCoreArchive.Write(LogRelease.Of(log), Description, stream);
        using var zip = new ZipArchive(stream);
        var parts = zip.Entries.ToDictionary(
            entry => entry.FullName,
            entry =>
            {
                using var reader = new StreamReader(entry.Open());
                return reader.ReadToEnd();
            });
        if (isSaidToBeSensitive)
        {
            // An open session whose subject is said to be sensitive all the same, so that every kind of fact stands in the archive.
            parts["measurementorfact.csv"] += "subject-1,subject-1#place made coarser,place made coarser,Hundredth,,,,\n";
        }

        return parts;
    }

    private static MemoryStream Packed(Dictionary<string, string> parts, Func<byte[], byte[]>? change = null, string changed = "")
    {
        var stream = new MemoryStream();
        using (var zip = new ZipArchive(stream, ZipArchiveMode.Create, leaveOpen: true))
        {
            foreach (var (name, text) in parts)
            {
                using var entry = zip.CreateEntry(name).Open();
                var bytes = Encoding.UTF8.GetBytes(text);
                entry.Write(name == changed ? change!(bytes) : bytes);
            }
        }

        stream.Position = 0;
        return stream;
    }
}
