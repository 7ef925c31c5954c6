using StudioKit.Physics;

namespace StudioKit.Field.Log;

/// <summary>What a change did to one record.</summary>
/// <param name="Kind">Kind of record.</param>
/// <param name="ShortId">Its short identifier.</param>
/// <param name="BeforeId">Its full identifier before; none where the record was new.</param>
/// <param name="AfterId">Its full identifier after; none where it was taken out.</param>
/// <param name="Fields">The fields that differ.</param>
public sealed record RecordChange(LogRecordKind Kind, string ShortId, string? BeforeId, string? AfterId, ValueList<FieldChange> Fields);
