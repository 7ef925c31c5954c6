using StudioKit.Field.Log.Release;

namespace StudioKit.Field.Log.Rows;

/// <summary>Makes records of rows, one after the other, with what holds from row to row.</summary>
internal sealed class RowEntry(RowContext context)
{
    private readonly RowSessions _sessions = new(context);
    private readonly List<FieldSubject> _subjects = [];
    private readonly List<FieldFrame> _frames = [];
    private readonly List<FieldMeasurement> _measurements = [];
    private readonly HashSet<(string Session, string FileName)> _recorded = Recorded(context.Log);
    private string _framing = "";
    private string _setUp = "";

    public LogSnapshot Snapshot => new([.. _sessions.New], _subjects, _frames, _measurements);

    public void Add(EnteredRow row)
    {
        if (_sessions.Of(row) is not { } session)
        {
            return;
        }

        (_framing, _setUp) = (Key(row, RowColumns.Framing, _framing), Key(row, RowColumns.SetUp, _setUp));
        var time = Time(row, RowColumns.Time, session.Clock);
        var (held, (released, wasReleased)) = (Time(row, RowColumns.Held, session.Clock), Release(row, session.Clock));
        if (row.Has(RowColumns.Animal) || row.Has(RowColumns.Scientific))
        {
            _subjects.Add(SubjectCells.Read(row, new FieldSubject { Id = context.NewId(), SessionId = session.Session.Id }));
            Size(row);
        }
        else if (!Continues(row, session.Session.Id))
        {
            return;
        }

        Hold(row, held, released, wasReleased);
        Pictures(row, time);
        if (row.Has(RowColumns.Animal) || row.Has(RowColumns.Scientific) || released is not null || held is not null)
        {
            LogRules.Check(_subjects[^1], context.Now).ToList().ForEach(row.Fault);
        }
    }

    private static HashSet<(string Session, string FileName)> Recorded(LogSnapshot log)
    {
        var sessions = log.Subjects.ToDictionary(subject => subject.Id, subject => subject.SessionId, StringComparer.Ordinal);
        return [.. log.Frames.Where(frame => sessions.ContainsKey(frame.SubjectId)).Select(frame => (sessions[frame.SubjectId], frame.FileName))];
    }

    private static DateTimeOffset? Time(EnteredRow row, string column, RowClock clock)
    {
        var moment = row.Has(column) ? clock.Read(row[column]) : null;
        if (row.Has(column) && moment is null)
        {
            row.Fault(column, "FLD492", $"'{row[column]}' is no time.", "Write it as 14:05, or with its day as 2026-05-09T14:05.");
        }

        return moment;
    }

    private static (DateTimeOffset? Moment, bool Released) Release(EnteredRow row, RowClock clock)
    {
        var text = row[RowColumns.Released];
        var kept = text.StartsWith(RowWriter.Kept, StringComparison.Ordinal);
        var moment = text.Length == 0 ? null : clock.Read(kept ? text[RowWriter.Kept.Length..].Trim() : text);
        if (text.Length > 0 && moment is null)
        {
            row.Fault(RowColumns.Released, "FLD492", $"'{text}' is no time.", "Write it as 14:12, or as 'kept 14:12' where it was not released there.");
        }

        return (moment, !kept);
    }

    private bool Continues(EnteredRow row, string sessionId)
    {
        if (_subjects.Count == 0 || _subjects[^1].SessionId != sessionId)
        {
            row.Fault(RowColumns.Animal, "FLD493", "the row names no animal, and there is none above it in this session.", "Write its name, or ? where it has none yet.");
            return false;
        }

        foreach (var column in RowColumns.OfTheAnimal.Where(row.Has))
        {
            row.Fault(column, "FLD493", "it belongs into the row that names the animal.");
        }

        if (row.Has(RowColumns.Remarks))
        {
            var remarks = _subjects[^1].Remarks;
            _subjects[^1] = _subjects[^1] with { Remarks = remarks.Length > 0 ? $"{remarks}; {row[RowColumns.Remarks]}" : row[RowColumns.Remarks] };
        }

        return true;
    }

    private void Hold(EnteredRow row, DateTimeOffset? held, DateTimeOffset? released, bool wasReleased)
    {
        var subject = _subjects[^1];
        if (held is not null && subject.HoldStart is not null)
        {
            row.Fault(RowColumns.Held, "FLD493", "a row above says already since when it was held.");
        }
        else if (released is not null && (subject.HoldEnd is not null || (held ?? subject.HoldStart) is null))
        {
            row.Fault(RowColumns.Released, "FLD493", subject.HoldEnd is null ? "nothing says since when it was held." : "a row above says already when it was let go.");
        }
        else
        {
            _subjects[^1] = subject with
            {
                HoldStart = held ?? subject.HoldStart,
                HoldEnd = released ?? subject.HoldEnd,
                Released = released is null ? subject.Released : wasReleased,
            };
        }
    }

    private void Pictures(EnteredRow row, DateTimeOffset? time)
    {
        var (names, problem) = context.Numbers.Read(row[RowColumns.Frames]);
        if (problem.Length > 0)
        {
            row.Fault(RowColumns.Frames, "FLD492", problem);
        }

        var known = names.Where(name => !_recorded.Add((_subjects[^1].SessionId, name))).ToList();
        if (known.Count > 0)
        {
            row.Fault(
                RowColumns.Frames, "FLD495", FormattableString.Invariant($"{known.Count} of {names.Count} are recorded already for this session, '{known[0]}' first."),
                "'studiokit log frame' reads a picture again, 'studiokit log undo' takes rows back.");
        }

        foreach (var name in names)
        {
            var frame = new FieldFrame { SubjectId = _subjects[^1].Id, FileName = name, Taken = time is { } taken ? taken : (FieldDate?)null, Framing = _framing, SetUp = _setUp };
            _frames.Add(frame);
            LogRules.Check(frame, context.Now).ToList().ForEach(row.Fault);
        }

        if (names.Count == 0 && time is { } seen)
        {
            Measure(RowWriter.TimeSeen, ((FieldDate)seen).ToString(), "");
        }
    }

    private void Size(EnteredRow row)
    {
        if (!row.Has(RowColumns.Size))
        {
            return;
        }

        if (SubjectCells.Millimetres(row[RowColumns.Size]) is { } millimetres)
        {
            Measure(RowWriter.BodyLength, RecordText.Of(millimetres), "mm");
        }
        else
        {
            row.Fault(RowColumns.Size, "FLD492", $"'{row[RowColumns.Size]}' is no length.", "Write the body's length in mm as 18.5, or with its unit as 1.8 cm.");
        }
    }

    private void Measure(string type, string value, string unit) =>
        _measurements.Add(new FieldMeasurement { Id = context.NewId(), SubjectId = _subjects[^1].Id, Type = type, Value = value, Unit = unit });

    private string Key(EnteredRow row, string column, string carried)
    {
        var text = row[column];
        if (text.Length == 0)
        {
            return carried;
        }

        if (text == RowWriter.Nothing)
        {
            return "";
        }

        var keys = column == RowColumns.Framing ? context.Keys?.Framings : context.Keys?.SetUps;
        if (keys is null)
        {
            if (text.Length <= 2)
            {
                row.Fault(column, "FLD494", $"'{text}' looks like a letter of the printed sheet, which only its kit can tell.", "Name the kit with --kit, or write the name in full.");
            }

            return text;
        }

        var found = keys.FirstOrDefault(key => key.Name == text) ?? keys.FirstOrDefault(key => string.Equals(key.Letter, text, StringComparison.OrdinalIgnoreCase));
        if (found is null)
        {
            row.Fault(column, "FLD494", $"the kit has no '{text}'.", $"It has {string.Join(", ", keys.Select(key => $"{key.Letter} = {key.Name}"))}.");
        }

        return found?.Name ?? text;
    }
}
