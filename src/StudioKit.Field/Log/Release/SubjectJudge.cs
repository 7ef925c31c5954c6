namespace StudioKit.Field.Log.Release;

/// <summary>Decides what leaves of a subject with all that hangs on it.</summary>
internal sealed class SubjectJudge(FieldJudge judge, string sessionId, ReleaseChoices choices)
{
    public SubjectRelease Judge(FieldSubject subject, ReleasedRecord session, LogRecords records)
    {
        var record = judge.Judge(subject.Id, "", RecordedFields.Of(subject));
        var published = record["occurrenceID"];
        var facts = judge.Judge(subject.Id, published, RecordedFields.FactsOf(subject));
        IReadOnlyList<FrameRelease> frames = new JudgedOnVisit<FieldFrame, FrameRelease>([.. records.FramesOf(subject)], frame => Frame(frame, published));
        IReadOnlyList<ReleasedRecord> measurements = new JudgedOnVisit<FieldMeasurement, ReleasedRecord>([.. records.MeasurementsOf(subject)], Measurement);
        List<ReleasedField> all = [];
        if (judge.IsSensitive)
        {
            // Elsewhere all of it leaves, and there is nothing to account for.
            (frames, measurements) = ([.. frames], [.. measurements]);
            all = [.. session.Fields, .. record.Fields, .. facts.Fields, .. frames.SelectMany(frame => frame.Record.Fields), .. measurements.SelectMany(m => m.Fields)];
        }

        record = record with { PublishedId = published, Fields = [.. record.Fields, .. Accounts(all)] };
        return new SubjectRelease(subject, record, facts, frames, measurements);
    }

    private FrameRelease Frame(FieldFrame frame, string publishedSubject)
    {
        string Address() => (choices.HasCleanPictures ? choices.PictureFolder : "") + NeutralName.OfFile(frame, sessionId);
        var record = judge.Judge(frame.Id, "", RecordedFields.Of(frame, choices.PictureFolder, Address), frame.SubjectId);
        var name = record["identifier"][(record["identifier"].LastIndexOf('/') + 1)..];
        record = record with { PublishedId = $"{publishedSubject}:{name}" };
        return new FrameRelease(frame, name, record, () => judge.Judge(frame.Id, record.PublishedId, RecordedFields.FactsOf(frame), frame.SubjectId));
    }

    private ReleasedRecord Measurement(FieldMeasurement measurement)
    {
        var record = judge.Judge(measurement.Id, "", RecordedFields.Of(measurement, sessionId), measurement.SubjectId);
        return record with { PublishedId = record["measurementID"] };
    }

    // Darwin Core asks for both: what was made coarser, and what there is that was not told.
    private IEnumerable<ReleasedField> Accounts(List<ReleasedField> all)
    {
        yield return Account("dataGeneralizations", all.Exists(field => field.Fate == FieldFate.Coarsened) ? Generalised(all) : "");
        var withheld = all.Where(field => field.Fate == FieldFate.Withheld).Select(field => field.Term).Distinct(StringComparer.Ordinal).ToList();
        yield return Account("informationWithheld", withheld.Count > 0 ? $"withheld: {string.Join(", ", withheld)}; ask the recorder" : "");
    }

    private string Generalised(List<ReleasedField> all)
    {
        var cell = judge.Cell is { } used && all.Exists(field => field.Reason == FieldReason.Cell)
            ? $"place told as the middle of a cell of {RecordText.Of(used.Step)} degree"
            : "";
        var rest = all.Where(field => field.Fate == FieldFate.Coarsened && field.Reason != FieldReason.Cell).Select(field => field.Term).Distinct(StringComparer.Ordinal);
        return string.Join("; ", new[] { cell, "coarser: " + string.Join(", ", rest) }.Where(part => part.Length > 0 && part != "coarser: "));
    }

    private ReleasedField Account(string term, string text) =>
        new(term, "", text, FieldFate.Published, judge.IsSensitive ? FieldReason.TellsNoPlace : FieldReason.NothingSensitive);
}
