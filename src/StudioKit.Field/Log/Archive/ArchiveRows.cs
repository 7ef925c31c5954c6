using StudioKit.Planning.Tables;

namespace StudioKit.Field.Log.Archive;

/// <summary>Reads the rows of an archive's table.</summary>
internal static class ArchiveRows
{
    public static IEnumerable<ArchiveRow> Of(ArchiveTableLayout table, string text)
    {
        var (known, seen) = (table.Known, new HashSet<string>(StringComparer.Ordinal));
        foreach (var fields in CsvText.Read(text).Skip(table.HeadLines))
        {
            var line = fields[0].Line;
            if (fields.Count != table.Width)
            {
                throw new ArchiveFaultException("FLD468", $"{table.FileName}, line {line}: it has {fields.Count} cells, and meta.xml tells of {table.Width}.");
            }

            var cells = table.Columns.ToDictionary(column => column.Term, column => Cell(column, fields), StringComparer.Ordinal);
            if (cells.FirstOrDefault(cell => cell.Value.Length > 0 && !known.Contains(cell.Key)) is { Key: { } stranger })
            {
                throw new ArchiveFaultException(
                    "FLD467", $"{table.FileName}, line {line}: the log has no place for {ArchiveTable.ShortName(stranger)} ({stranger}); nothing was taken in.",
                    "Take the field out of the archive to leave it behind.");
            }

            var id = fields[table.IdColumn].Text;
            var row = new ArchiveRow(
                table.FileName, line, id, cells.Where(cell => known.Contains(cell.Key)).ToDictionary(cell => ArchiveTable.ShortName(cell.Key), cell => cell.Value, StringComparer.Ordinal));
            yield return id.Length == 0 ? throw row.Fault("FLD469", "it has no identifier.")
                : table.RowType == DarwinCoreTerms.Occurrence && !seen.Add(id) ? throw row.Fault("FLD469", $"the identifier '{id}' is there already.")
                : row;
        }
    }

    private static string Cell(ArchiveColumn column, IReadOnlyList<CsvField> fields) =>
        column.Index is { } index && fields[index].Text.Length > 0 ? fields[index].Text : column.Default;
}
