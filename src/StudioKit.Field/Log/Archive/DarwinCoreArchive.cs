using System.Globalization;
using System.IO.Compression;
using System.Text;
using System.Xml;
using System.Xml.Linq;
using StudioKit.Field.Log.Release;
using StudioKit.Planning.Tables;

namespace StudioKit.Field.Log.Archive;

/// <summary>Writes a log as a Darwin Core Archive and reads one back.</summary>
/// <remarks>
/// Occurrences are the core, one a subject with its session in the same row; pictures and measurements are extensions. A session without any
/// subject has no row and is not exported. What leaves is decided by <see cref="LogRelease"/> alone; what is coarser comes back coarser. Cells are
/// written as the standard has them, which knows no guard against spreadsheets that take a cell for a formula.
/// </remarks>
public static class DarwinCoreArchive
{
    private const long LargestEntry = 200_000_000;
    private static readonly UTF8Encoding Utf8 = new(encoderShouldEmitUTF8Identifier: false);

    /// <summary>Writes an archive; the same release and description give the same bytes.</summary>
    /// <param name="release">What leaves the log.</param>
    /// <param name="description">What is said of the data set.</param>
    /// <param name="target">Stream for the zip file.</param>
    public static void Write(LogRelease release, DataSetDescription description, Stream target)
    {
        ArgumentNullException.ThrowIfNull(release);
        ArgumentNullException.ThrowIfNull(description);
        var core = OccurrenceTable.Of(release);
        ArchiveTable[] extensions = [MultimediaTable.Of(release), MeasurementTable.Of(release)];
        using var zip = new ZipArchive(target, ZipArchiveMode.Create, leaveOpen: true);
        var stamp = new DateTimeOffset(description.Published.ToDateTime(TimeOnly.MinValue), TimeSpan.Zero);
        Add(zip, "meta.xml", Xml(ArchiveMetadata.Meta(core, extensions)), stamp);
        Add(zip, "eml.xml", Xml(ArchiveMetadata.DataSet(description)), stamp);
        foreach (var table in extensions.Prepend(core))
        {
            Add(zip, table.FileName, Csv(table), stamp);
        }
    }

    /// <summary>The occurrences alone, as comma-separated text with a head.</summary>
    /// <param name="release">What leaves the log.</param>
    public static string OccurrenceCsv(LogRelease release)
    {
        ArgumentNullException.ThrowIfNull(release);
        return Csv(OccurrenceTable.Of(release));
    }

    /// <summary>Reads an archive.</summary>
    /// <param name="name">Name to report faults under.</param>
    /// <param name="source">Stream of the zip file, which can seek.</param>
    /// <returns>What it holds, or why it cannot be read.</returns>
    public static FieldResult<LogSnapshot> Read(string name, Stream source)
    {
        try
        {
            using var zip = new ZipArchive(source, ZipArchiveMode.Read, leaveOpen: true);
            return Read(zip);
        }
        catch (Exception error) when (error is InvalidDataException or XmlException or FormatException or OverflowException or ArgumentException)
        {
            return new FieldDiagnostic("FLD461", name, "The archive cannot be read: " + error.Message);
        }
    }

    private static LogSnapshot Read(ZipArchive zip)
    {
        var meta = XDocument.Parse(Entry(zip, "meta.xml")).Root!;
        var reading = new ArchiveReading();
        var core = meta.Element(ArchiveMetadata.Text + "core") ?? throw new InvalidDataException("meta.xml names no core.");
        foreach (var (_, row) in Rows(zip, core, "id"))
        {
            var (session, subject) = (OccurrenceTable.Session(row), OccurrenceTable.Subject(row));
            reading.Sessions[session.Id] = session;
            reading.Subjects.Add(subject.Id, subject);
        }

        // Pictures before measurements: their settings are among those.
        foreach (var extension in meta.Elements(ArchiveMetadata.Text + "extension").OrderBy(table => RowType(table) == DarwinCoreTerms.MeasurementOrFact))
        {
            ReadExtension(zip, extension, reading);
        }

        return reading.Snapshot;
    }

    private static void ReadExtension(ZipArchive zip, XElement extension, ArchiveReading reading)
    {
        foreach (var (id, row) in Rows(zip, extension, "coreid"))
        {
            if (!reading.Subjects.ContainsKey(id))
            {
                throw new InvalidDataException($"'{id}' is in an extension but not in the core.");
            }

            if (RowType(extension) == DarwinCoreTerms.Multimedia)
            {
                var frame = MultimediaTable.Frame(row, id);
                reading.Frames[frame.Id] = frame;
            }
            else if (RowType(extension) == DarwinCoreTerms.MeasurementOrFact)
            {
                MeasurementTable.Read(row, id, reading);
            }
        }
    }

    private static string RowType(XElement table) => (string?)table.Attribute("rowType") ?? "";

    private static IEnumerable<(string Id, ArchiveRow Row)> Rows(ZipArchive zip, XElement table, string idName)
    {
        var columns = table.Elements(ArchiveMetadata.Text + "field").Where(field => field.Attribute("index") is not null)
            .ToDictionary(TermOf, field => (int)field.Attribute("index")!, StringComparer.Ordinal);
        var idColumn = (int?)table.Element(ArchiveMetadata.Text + idName)?.Attribute("index") ?? throw new InvalidDataException($"meta.xml gives no {idName}.");
        var head = (int?)table.Attribute("ignoreHeaderLines") ?? 0;
        var file = table.Descendants(ArchiveMetadata.Text + "location").FirstOrDefault()?.Value ?? throw new InvalidDataException("meta.xml names no file.");
        foreach (var fields in CsvText.Read(Entry(zip, file)).Skip(head))
        {
            yield return idColumn >= 0 && idColumn < fields.Count
                ? (fields[idColumn].Text, new ArchiveRow(columns, fields))
                : throw new InvalidDataException($"A row of {file} is too short.");
        }
    }

    private static string TermOf(XElement field) => (string?)field.Attribute("term") is { } term
        ? ArchiveTable.ShortName(term)
        : throw new InvalidDataException("meta.xml has a field without a term.");

    private static string Entry(ZipArchive zip, string name)
    {
        var entry = zip.GetEntry(name) ?? throw new InvalidDataException($"It has no {name}.");
        if (entry.Length > LargestEntry)
        {
            throw new InvalidDataException($"{name} is larger than {LargestEntry / 1_000_000} MB.");
        }

        using var reader = new StreamReader(entry.Open(), Utf8);
        return reader.ReadToEnd();
    }

    private static string Csv(ArchiveTable table) => CsvText.Write(table.Rows.Prepend([.. table.Terms.Select(ArchiveTable.ShortName)]), "\n");

    private static string Xml(XDocument document) =>
        string.Create(CultureInfo.InvariantCulture, $"<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n{document.ToString().ReplaceLineEndings("\n")}\n");

    private static void Add(ZipArchive zip, string name, string text, DateTimeOffset stamp)
    {
        var entry = zip.CreateEntry(name);
        entry.LastWriteTime = stamp;
        using var stream = entry.Open();
        stream.Write(Utf8.GetBytes(text));
    }
}
