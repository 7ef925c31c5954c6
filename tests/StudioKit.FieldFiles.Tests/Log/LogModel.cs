using StudioKit.Field.Log;

namespace StudioKit.FieldFiles.Tests.Log;

/// <summary>A log as a child would keep it: every state written down whole, and a finger on the present one.</summary>
internal sealed class LogModel
{
    private readonly List<LogSnapshot> _states = [LogSnapshot.Empty];
    private int _place;

    public LogSnapshot Now => _states[_place];

    /// <summary>Does a step.</summary>
    /// <returns>Whether it could be done.</returns>
    public bool Do(LogModelTests.Step step) => step.Kind switch
    {
        0 or 1 => Become(Now with { Sessions = [.. Now.Sessions.Where(session => session.Id != step.Session.Id), step.Session] }),
        2 or 3 => Become(Now with { Subjects = [.. Now.Subjects.Where(subject => subject.Id != step.Subject.Id), step.Subject] }),
        4 => Become(Now with { Frames = [.. Now.Frames.Where(frame => frame.Id != step.Frame.Id), step.Frame] }),
        5 => Become(Now with { Measurements = [.. Now.Measurements.Where(measurement => measurement.Id != step.Measurement.Id), step.Measurement] }),
        6 => Now.Records.Any(record => record.Id == step.Gone) && Become(Without(step.Gone)),
        7 => Move(step),
        8 => _place > 0 && Go(-1),
        _ => _place < _states.Count - 1 && Go(1),
    };

    private bool Move(LogModelTests.Step step)
    {
        var isThere = Now.Frames.Any(frame => frame.Id == step.Moved);
        var isTaken = step.Moved != step.Frame.Id && Now.Frames.Any(frame => frame.Id == step.Frame.Id);
        return isThere && !isTaken && Become(Now with { Frames = [.. Now.Frames.Where(frame => frame.Id != step.Moved), step.Frame] });
    }

    private LogSnapshot Without(string id)
    {
        var subjects = Now.Subjects.Where(subject => subject.Id != id && subject.SessionId != id).ToList();
        return new LogSnapshot(
            [.. Now.Sessions.Where(session => session.Id != id)],
            subjects,
            [.. Now.Frames.Where(frame => subjects.Exists(subject => subject.Id == frame.SubjectId))],
            [.. Now.Measurements.Where(measurement => subjects.Exists(subject => subject.Id == measurement.SubjectId))]);
    }

    // What belongs to nothing is refused; what changes nothing is no change.
    private bool Become(LogSnapshot next)
    {
        var isSound = next.Subjects.All(subject => next.Sessions.Any(session => session.Id == subject.SessionId))
            && next.Frames.All(frame => next.Subjects.Any(subject => subject.Id == frame.SubjectId))
            && next.Measurements.All(measurement => next.Subjects.Any(subject => subject.Id == measurement.SubjectId));
        if (isSound && !IsSame(next, Now))
        {
            _states.RemoveRange(_place + 1, _states.Count - _place - 1);
            _states.Add(next);
            _place++;
        }

        return isSound;
    }

    private bool Go(int step)
    {
        _place += step;
        return true;
    }

    private static bool IsSame(LogSnapshot one, LogSnapshot other) =>
        one.Sessions.ToHashSet().SetEquals(other.Sessions) && one.Subjects.ToHashSet().SetEquals(other.Subjects)
        && one.Frames.ToHashSet().SetEquals(other.Frames) && one.Measurements.ToHashSet().SetEquals(other.Measurements);
}
