using System.Globalization;
using StudioKit.Field;
using StudioKit.Field.Log;

namespace StudioKit.Cli.Records;

/// <summary>The session that a command is about: the one named, else the session of the day, which it says.</summary>
internal static class NamedSession
{
    public static FieldResult<FieldSession> Of(CommandHost host, LogSnapshot log, LogIndex index, string? reference)
    {
        if (reference is not null)
        {
            return index.Session(reference);
        }

        var now = host.Clock.GetLocalNow();
        if (SessionOfTheDay.Of(log.Sessions, now) is not { } session)
        {
            var day = now.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
            return new FieldDiagnostic("FLD477", "session", $"The log has no session of today, {day}.", "Start one with 'studiokit log session', or name one; 'last' is the last one put in.");
        }

        host.Error.WriteLine($"session of the day: {index.Entry(session.Id)}");
        return session;
    }
}
