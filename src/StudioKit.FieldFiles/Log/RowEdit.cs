using StudioKit.Field.Log;

namespace StudioKit.FieldFiles.Log;

/// <summary>One row to put in, to change or to take out.</summary>
/// <param name="Kind">Kind of record.</param>
/// <param name="BeforeId">Identifier of the row that goes; none where nothing goes.</param>
/// <param name="After">The row that comes; none where nothing comes.</param>
internal sealed record RowEdit(LogRecordKind Kind, string? BeforeId, LogBody? After);
