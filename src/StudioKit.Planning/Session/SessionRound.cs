using StudioKit.Physics;
using UnitsNet;

namespace StudioKit.Planning.Session;

/// <summary>Once through the subjects and set-ups of a block.</summary>
/// <param name="Steps">The steps in order.</param>
public sealed record SessionRound(ValueList<SessionStep> Steps)
{
    /// <summary>How long it takes.</summary>
    public Duration Time => Duration.FromSeconds(Steps.Sum(step => step.Time.Seconds));

    /// <summary>Frames taken [1].</summary>
    public int Frames => Steps.Sum(step => step.Frames);

    /// <summary>Flashes fired, every head counted [1].</summary>
    public int Flashes => Steps.Sum(step => step.Flashes);

    /// <summary>Changes of set-up [1].</summary>
    public int Changes => Steps.Count(step => step.Kind == SessionStepKind.Changing);

    /// <summary>Longest that an animal of a subject is held, from fetching it to letting it go.</summary>
    /// <param name="subject">Name of the subject.</param>
    public Duration LongestHold(string subject)
    {
        var (longest, now) = (0.0, 0.0);
        foreach (var step in Steps.Where(step => step.Held && step.Subject == subject))
        {
            now = step.Kind == SessionStepKind.Settling ? step.Time.Seconds : now + step.Time.Seconds;
            longest = Math.Max(longest, now);
        }

        return Duration.FromSeconds(longest);
    }
}
