using System.Globalization;

namespace StudioKit.Field.Log.Rows;

/// <summary>Finds the session that a row belongs to, in the log or among those that the rows begin.</summary>
internal sealed class RowSessions(RowContext context)
{
    private readonly List<(DateOnly Day, string Place, FieldSession Session, RowClock Clock)> _known = [];
    private readonly List<FieldSession> _new = [];
    private DateOnly? _day;
    private string _place = "";

    /// <summary>Sessions that the rows begin.</summary>
    public IReadOnlyList<FieldSession> New => _new;

    /// <summary>The session with its clock; none where the row has a fault.</summary>
    public (FieldSession Session, RowClock Clock)? Of(EnteredRow row)
    {
        if (!Carry(row))
        {
            return null;
        }

        if (context.Session is null && _day is null)
        {
            row.Fault(RowColumns.Date, "FLD492", "no date is given.", "Begin with a column date such as 2026-05-09, or name a session with --session.");
            return null;
        }

        var (day, place) = context.Session is { } named ? (named.Start.Day, named.Locality) : (_day!.Value, _place);
        var known = _known.Find(entry => entry.Day == day && entry.Place == place);
        if (known.Session is not null)
        {
            return (known.Session, known.Clock);
        }

        if ((context.Session ?? Found(row, day, place)) is not { } session)
        {
            return null;
        }

        var clock = new RowClock(day, session.Start.Moment is { } start ? _ => start.Offset : context.Zone);
        _known.Add((day, place, session, clock));
        return (session, clock);
    }

    // Where all rows belong to one session, a date or place of their own would be lost.
    private bool Carry(EnteredRow row)
    {
        foreach (var column in new[] { RowColumns.Date, RowColumns.Place }.Where(column => context.Session is not null && row.Has(column)))
        {
            row.Fault(column, "FLD493", "all rows go into one session, which has its own.", "Leave the column out, or --session.");
            return false;
        }

        _place = row[RowColumns.Place] switch { "" => _place, RowWriter.Nothing => "", var place => place };
        if (!row.Has(RowColumns.Date))
        {
            return true;
        }

        if (DateOnly.TryParseExact(row[RowColumns.Date], "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day))
        {
            // Another day is another outing; its place is said anew.
            _place = _day != day && !row.Has(RowColumns.Place) ? "" : _place;
            _day = day;
            return true;
        }

        row.Fault(RowColumns.Date, "FLD492", $"'{row[RowColumns.Date]}' is no day.", "Write it as 2026-05-09.");
        return false;
    }

    private FieldSession? Found(EnteredRow row, DateOnly day, string place)
    {
        var there = context.Log.Sessions.Where(session => session.Start.Day == day && (place.Length == 0 || IsCalled(session, place))).ToList();
        if (there.Count > 1)
        {
            row.Fault(RowColumns.Place, "FLD493", FormattableString.Invariant($"the log has {there.Count} sessions of this day{(place.Length > 0 ? " and place" : "")}."), "Give its place, or name it with --session.");
            return null;
        }

        return there.Count == 1 ? there[0] : Begun(row, day, place);
    }

    private FieldSession Begun(EnteredRow row, DateOnly day, string place)
    {
        var session = new FieldSession { Id = context.NewId(), Start = FieldDate.OfDay(day), Locality = place };
        _new.Add(session);
        LogRules.Check(session, context.Now).ToList().ForEach(row.Fault);
        return session;
    }

    private static bool IsCalled(FieldSession session, string place) =>
        string.Equals(session.Locality, place, StringComparison.OrdinalIgnoreCase) || string.Equals(session.Name, place, StringComparison.OrdinalIgnoreCase);
}
