using System.Globalization;
using System.IO.Compression;
using System.Text;
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
    private const int PortionSize = 1 << 15;
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
        Add(zip, "meta.xml", stream => stream.Write(Utf8.GetBytes(Xml(ArchiveMetadata.Meta(core, extensions)))), stamp);
        Add(zip, "eml.xml", stream => stream.Write(Utf8.GetBytes(Xml(ArchiveMetadata.DataSet(description)))), stamp);
        foreach (var table in extensions.Prepend(core))
        {
            Add(zip, table.FileName, stream => Csv(table, stream), stamp);
        }
    }

    /// <summary>Writes the occurrences alone, as comma-separated text with a head.</summary>
    /// <param name="release">What leaves the log.</param>
    /// <param name="target">Stream for the text, in UTF-8.</param>
    public static void WriteOccurrences(LogRelease release, Stream target)
    {
        ArgumentNullException.ThrowIfNull(release);
        ArgumentNullException.ThrowIfNull(target);
        Csv(OccurrenceTable.Of(release), target);
    }

    /// <summary>Reads an archive.</summary>
    /// <param name="name">Name to report faults under.</param>
    /// <param name="source">Stream of the zip file, which can seek.</param>
    /// <returns>What it holds, with what of it the log cannot keep; or why it cannot be read.</returns>
    public static FieldResult<LogSnapshot> Read(string name, Stream source)
    {
        try
        {
            using var zip = new ZipArchive(source, ZipArchiveMode.Read, leaveOpen: true);
            var (log, withheld) = ArchiveReader.Read(zip);
            return withheld == 0 ? log : FieldResult<LogSnapshot>.Sound(log, [Unkept(name, withheld)]);
        }
        catch (ArchiveFaultException fault)
        {
            return new FieldDiagnostic(fault.Code, name, fault.Message, fault.Hint);
        }
        catch (Exception error) when (error is InvalidDataException or IOException or NotSupportedException or ArgumentException or FormatException or OverflowException)
        {
            return new FieldDiagnostic("FLD461", name, "The archive cannot be read: " + error.Message, "It is a zip file, as 'studiokit log export --archive' writes it.");
        }
    }

    // The log keeps what there is, and no account of what others kept back.
    private static FieldDiagnostic Unkept(string name, int rows) => new(
        "FLD480", name,
        $"{(rows == 1 ? "1 record says" : FormattableString.Invariant($"{rows} records say"))} that something of it was withheld; the log does not keep that, and an export of its own will not say so.",
        "Keep the archive, too.");

    private static void Csv(ArchiveTable table, Stream target)
    {
        using var text = new StreamWriter(target, Utf8, PortionSize, leaveOpen: true);
        CsvText.Write(text, table.Terms.Select(ArchiveTable.ShortName), "\n");
        foreach (var row in table.Rows)
        {
            CsvText.Write(text, row, "\n");
        }
    }

    private static string Xml(XDocument document) =>
        string.Create(CultureInfo.InvariantCulture, $"<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n{document.ToString().ReplaceLineEndings("\n")}\n");

    private static void Add(ZipArchive zip, string name, Action<Stream> write, DateTimeOffset stamp)
    {
        var entry = zip.CreateEntry(name);
        entry.LastWriteTime = stamp;
        using var stream = entry.Open();
        write(stream);
    }
}
