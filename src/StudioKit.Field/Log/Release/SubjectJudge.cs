namespace StudioKit.Field.Log.Release;

/// <summary>Decides what leaves of a subject with all that hangs on it.</summary>
internal sealed class SubjectJudge(FieldJudge judge, string sessionId, ReleaseChoices choices)
{
    public SubjectRelease Judge(FieldSubject subject, ReleasedRecord session, LogRecords records)
    {
        var published = judge.Judge(subject.Id, "", [RecordedFields.IdentifierOf(subject)]).Fields[0].Published;
        return new SubjectRelease(
            subject, published, judged => Record(judged, session), () => judge.Judge(subject.Id, published, RecordedFields.FactsOf(subject)))
        {
            Frames = new JudgedOnVisit<FieldFrame, FrameRelease>([.. records.FramesOf(subject)], frame => Frame(frame, published)),
            Measurements = new JudgedOnVisit<FieldMeasurement, ReleasedRecord>([.. records.MeasurementsOf(subject)], Measurement),
        };
    }

    private ReleasedRecord Record(SubjectRelease judged, ReleasedRecord session)
    {
        var record = judge.Judge(judged.Subject.Id, judged.PublishedId, RecordedFields.Of(judged.Subject));
        var accounts = new FieldAccounts();
        if (judge.IsSensitive)
        {
            // Elsewhere all of it leaves, and there is nothing to account for.
            foreach (var one in new[] { session, record, judged.Facts }.Concat(judged.Frames.Select(frame => frame.Record)).Concat(judged.Measurements))
            {
                accounts.Add(one.Fields);
            }
        }

        return record with
        {
            Fields = [.. record.Fields, Account("dataGeneralizations", accounts.Generalised(judge.Cell)), Account("informationWithheld", accounts.Withheld())],
        };
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

    private ReleasedField Account(string term, string text) =>
        new(term, "", text, FieldFate.Published, judge.IsSensitive ? FieldReason.TellsNoPlace : FieldReason.NothingSensitive);
}
