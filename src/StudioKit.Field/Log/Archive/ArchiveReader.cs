using System.IO.Compression;

namespace StudioKit.Field.Log.Archive;

/// <summary>Reads an archive, all of it or nothing.</summary>
internal static class ArchiveReader
{
    public static (LogSnapshot Log, int WithheldRows) Read(ZipArchive zip)
    {
        var files = new ArchiveZip(zip);
        var layout = ArchiveLayout.Read(files.Text("meta.xml"));
        var reading = new ArchiveReading();
        var withheld = 0;
        foreach (var row in ArchiveRows.Of(layout.Core, files.Text(layout.Core.FileName)))
        {
            withheld += row["informationWithheld"].Length > 0 ? 1 : 0;
            reading.Add(OccurrenceTable.Session(row), OccurrenceTable.Subject(row), row);
        }

        // Pictures before measurements: their settings are among those.
        foreach (var table in layout.Extensions.OrderBy(table => table.RowType == DarwinCoreTerms.MeasurementOrFact))
        {
            foreach (var row in ArchiveRows.Of(table, files.Text(table.FileName)))
            {
                Extend(reading, table.RowType, row);
            }
        }

        return (reading.Snapshot, withheld);
    }

    private static void Extend(ArchiveReading reading, string rowType, ArchiveRow row)
    {
        if (!reading.Subjects.ContainsKey(row.Id))
        {
            throw row.Fault("FLD469", $"'{row.Id}' is in an extension but not in the core.");
        }

        if (rowType == DarwinCoreTerms.MeasurementOrFact)
        {
            MeasurementTable.Read(row, reading);
        }
        else if (MultimediaTable.Frame(row) is var frame && !reading.Frames.TryAdd(frame.Id, frame))
        {
            throw row.Fault("FLD469", $"the picture '{frame.FileName}' of '{row.Id}' is there already.");
        }
    }
}
