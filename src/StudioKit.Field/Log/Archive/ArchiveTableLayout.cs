using System.Xml.Linq;

namespace StudioKit.Field.Log.Archive;

/// <summary>What meta.xml says of one table.</summary>
/// <param name="FileName">File that holds it.</param>
/// <param name="RowType">What a row stands for.</param>
/// <param name="HeadLines">Rows to pass over.</param>
/// <param name="IdColumn">Column of the identifier that joins the tables.</param>
/// <param name="Columns">Its fields.</param>
internal sealed record ArchiveTableLayout(string FileName, string RowType, int HeadLines, int IdColumn, IReadOnlyList<ArchiveColumn> Columns)
{
    private static readonly XNamespace Text = ArchiveMetadata.Text;

    // The standard's own values, and those that it takes where an attribute is missing.
    private static readonly (string Attribute, string[] Read)[] Forms =
    [
        ("fieldsTerminatedBy", [","]), ("fieldsEnclosedBy", ["\""]), ("linesTerminatedBy", ["\\n", "\\r\\n", "\n", "\r\n"]), ("dateFormat", ["YYYY-MM-DD"]),
    ];

    /// <summary>Terms of this table that the log has a place for.</summary>
    public IReadOnlySet<string> Known => RowType switch
    {
        DarwinCoreTerms.Occurrence => DarwinCoreTerms.Of(DarwinCoreTerms.DarwinCore, OccurrenceTable.Columns),
        DarwinCoreTerms.Multimedia => DarwinCoreTerms.Of(DarwinCoreTerms.DublinCore, MultimediaTable.Columns),
        _ => DarwinCoreTerms.Of(DarwinCoreTerms.DarwinCore, MeasurementTable.Columns),
    };

    /// <summary>How many columns there are, as far as meta.xml tells.</summary>
    public int Width => Columns.Max(column => column.Index ?? 0) is var last && last > IdColumn ? last + 1 : IdColumn + 1;

    public static ArchiveTableLayout Read(XElement table, string idName, string[] rowTypes)
    {
        var file = File(table);
        var rowType = (string?)table.Attribute("rowType") ?? "";
        if (!rowTypes.Contains(rowType, StringComparer.Ordinal))
        {
            throw new ArchiveFaultException(
                "FLD467", $"The {table.Name.LocalName} {file} holds rows of '{rowType}', which the log has no place for; nothing was taken in.",
                $"It takes {string.Join(" and ", rowTypes.Select(ArchiveTable.ShortName))}.");
        }

        RefuseForms(table, file);
        var columns = table.Elements(Text + "field").Select(field => Column(field, file)).ToList();
        RefuseTwins(columns, file);
        return new ArchiveTableLayout(
            file, rowType, ArchiveLayout.Number(table, "ignoreHeaderLines") ?? 0,
            table.Element(Text + idName) is { } id && ArchiveLayout.Number(id, "index") is { } column
                ? column
                : throw new ArchiveFaultException("FLD464", $"meta.xml gives no column for the {idName} of {file}."),
            columns);
    }

    private static string File(XElement table)
    {
        var files = table.Elements(Text + "files").Elements(Text + "location").Select(location => location.Value.Trim()).ToList();
        return files is [{ Length: > 0 } file]
            ? file
            : throw new ArchiveFaultException("FLD462", $"meta.xml names {(files.Count == 0 ? "no file" : $"{files.Count} files")} for a table; one is read.");
    }

    private static void RefuseForms(XElement table, string file)
    {
        if ((string?)table.Attribute("encoding") is { } encoding && !encoding.Equals("UTF-8", StringComparison.OrdinalIgnoreCase))
        {
            throw new ArchiveFaultException("FLD465", $"{file} is said to be in {encoding}; only UTF-8 is read.", "Save the file in UTF-8, and say so in meta.xml.");
        }

        foreach (var (attribute, read) in Forms)
        {
            if ((string?)table.Attribute(attribute) is { } form && !read.Contains(form, StringComparer.Ordinal))
            {
                throw new ArchiveFaultException("FLD466", $"{file} has '{form}' for {attribute}, which is not read.", $"Write it with '{read[0]}'.");
            }
        }
    }

    private static ArchiveColumn Column(XElement field, string file)
    {
        var term = (string?)field.Attribute("term") ?? throw new ArchiveFaultException("FLD464", $"meta.xml has a field of {file} without a term.");
        var column = new ArchiveColumn(term, ArchiveLayout.Number(field, "index"), (string?)field.Attribute("default") ?? "");
        return column.Index is null && field.Attribute("default") is null
            ? throw new ArchiveFaultException(
                "FLD464", $"meta.xml gives the field {ArchiveTable.ShortName(term)} of {file} neither an index nor a default, so nothing says where it stands.",
                "Give it one of them, or take it out.")
            : column;
    }

    private static void RefuseTwins(List<ArchiveColumn> columns, string file)
    {
        if (columns.GroupBy(column => column.Term, StringComparer.Ordinal).FirstOrDefault(group => group.Count() > 1) is { } twin)
        {
            throw new ArchiveFaultException("FLD464", $"meta.xml has the field {ArchiveTable.ShortName(twin.Key)} of {file} {twin.Count()} times.");
        }
    }
}
