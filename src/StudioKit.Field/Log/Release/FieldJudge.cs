namespace StudioKit.Field.Log.Release;

/// <summary>Decides for one session what leaves of each field: the only place where that is decided.</summary>
internal sealed class FieldJudge(FieldSession session, PlaceSensitivity sensitivity, ReleaseChoices choices)
{
    private readonly Lazy<PlaceWords> _words = new(() => new PlaceWords(session), isThreadSafe: false);

    /// <summary>The cell that the place is told by; none where it is told exactly or not at all.</summary>
    public PlaceCell? Cell { get; } = (sensitivity, session.Latitude, session.Longitude) switch
    {
        (PlaceSensitivity.Hundredth, >= -90 and <= 90, >= -180 and <= 180) => Of(session, 0.01m),
        (PlaceSensitivity.Tenth, >= -90 and <= 90, >= -180 and <= 180) => Of(session, 0.1m),
        _ => null,
    };

    public bool IsSensitive => sensitivity != PlaceSensitivity.Open;

    public ReleasedRecord Judge(string id, string publishedId, IReadOnlyList<RecordedField> fields, params ReadOnlySpan<string> owners)
    {
        string[] all = IsSensitive ? [id, session.Id, .. owners] : [];
        var judged = new ReleasedField[fields.Count];
        for (var i = 0; i < judged.Length; i++)
        {
            judged[i] = Judge(fields[i], all);
        }

        return new ReleasedRecord(id, publishedId, judged);
    }

    /// <summary>Whether a field may leave as it was recorded, and why.</summary>
    private ReleasedField Judge(RecordedField field, string[] owners)
    {
        if (!IsSensitive)
        {
            return new(field.Term, field.Text, field.Text, FieldFate.Published, FieldReason.NothingSensitive);
        }

        if (field.Clue == PlaceClue.None || field.Text.Length == 0)
        {
            return new(field.Term, field.Text, field.Text, FieldFate.Published, FieldReason.TellsNoPlace);
        }

        return choices.Allows(field.Term, owners) && field.Clue != PlaceClue.Coordinate
            ? new(field.Term, field.Text, field.Text, FieldFate.Published, FieldReason.Released)
            : Guarded(field);
    }

    private ReleasedField Guarded(RecordedField field) => field.Clue switch
    {
        PlaceClue.Coordinate => Cell is not null
            ? Coarse(field, FieldReason.Cell)
            : Withheld(field, sensitivity == PlaceSensitivity.Withheld ? FieldReason.IsThePlace : FieldReason.NoCellHoldsIt),
        PlaceClue.Day => Coarse(field, FieldReason.Day),
        PlaceClue.Identifier => Coarse(field, FieldReason.NeutralName),
        PlaceClue.Place => Withheld(field, FieldReason.IsThePlace),
        PlaceClue.Moment => Withheld(field, FieldReason.TimeMayTell),
        PlaceClue.Names => WithoutPlace(field, field.Text),
        PlaceClue.Taxon => WithoutPlace(field, field.Text.Contains(' ', StringComparison.Ordinal) ? field.Text[field.Text.IndexOf(' ', StringComparison.Ordinal)..] : ""),
        _ => Withheld(field, FieldReason.WordsMayTell),
    };

    private ReleasedField WithoutPlace(RecordedField field, string text) => _words.Value.In(text) is null
        ? new(field.Term, field.Text, field.Text, FieldFate.Published, FieldReason.TellsNoPlace)
        : Withheld(field, FieldReason.HoldsPlaceWord);

    // What is coarse already, such as a record that came out of an archive, leaves as it is; a place is said to be coarse every time.
    private static ReleasedField Coarse(RecordedField field, FieldReason reason) => field.Coarse() is var coarse && coarse == field.Text && reason != FieldReason.Cell
        ? new(field.Term, field.Text, field.Text, FieldFate.Published, FieldReason.TellsNoPlace)
        : new(field.Term, field.Text, coarse, FieldFate.Coarsened, reason);

    private static ReleasedField Withheld(RecordedField field, FieldReason reason) => new(field.Term, field.Text, "", FieldFate.Withheld, reason);

    private static PlaceCell? Of(FieldSession session, decimal leastStep) =>
        PlaceCell.Of(session.Latitude!.Value, session.Longitude!.Value, session.CoordinateUncertainty, leastStep);
}
