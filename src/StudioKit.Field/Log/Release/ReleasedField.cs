namespace StudioKit.Field.Log.Release;

/// <summary>One field of a record and what of it leaves the log.</summary>
/// <param name="Term">Short name of its Darwin Core or Dublin Core term, or of the fact that is exported as a measurement.</param>
/// <param name="Recorded">What the log has.</param>
/// <param name="Published">What leaves it; empty where it is withheld.</param>
/// <param name="Fate">What happened to it.</param>
/// <param name="Reason">Why.</param>
public sealed record ReleasedField(string Term, string Recorded, string Published, FieldFate Fate, FieldReason Reason);
