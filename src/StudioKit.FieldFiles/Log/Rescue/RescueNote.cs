namespace StudioKit.FieldFiles.Log.Rescue;

/// <summary>One thing that a rescue has to say.</summary>
/// <param name="Kind">What kind of thing.</param>
/// <param name="Subject">Table, or full identifier of the record.</param>
/// <param name="Detail">Number, column or value that it is about; empty where there is none.</param>
public sealed record RescueNote(RescueNoteKind Kind, string Subject, string Detail);
