namespace StudioKit.Field.Log.Release;

/// <summary>A field as the log has it.</summary>
/// <param name="Term">Short name of its term or fact.</param>
/// <param name="Text">Its value as it would be exported.</param>
/// <param name="Clue">How it can tell the place.</param>
/// <param name="CoarseText">What stands for it where it may not be told, worked out when it is asked for; for coordinates, days and identifiers.</param>
internal readonly record struct RecordedField(string Term, string Text, PlaceClue Clue = PlaceClue.None, Func<string>? CoarseText = null)
{
    /// <summary>What stands for it where it may not be told; empty for what then stays in the log.</summary>
    public string Coarse() => CoarseText?.Invoke() ?? "";
}
