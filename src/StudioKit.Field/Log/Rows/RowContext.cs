using StudioKit.Planning.Session;

namespace StudioKit.Field.Log.Rows;

/// <summary>What rows are read against.</summary>
public sealed record RowContext
{
    /// <summary>The log that they go into.</summary>
    public required LogSnapshot Log { get; init; }

    /// <summary>Present moment, that no record lies after.</summary>
    public required DateTimeOffset Now { get; init; }

    /// <summary>How far a clock is ahead of universal time at a local time.</summary>
    public required Func<DateTime, TimeSpan> Zone { get; init; }

    /// <summary>Gives identifiers that are unique for good.</summary>
    public required Func<string> NewId { get; init; }

    /// <summary>Session that all rows belong to; none where their dates and places tell.</summary>
    public FieldSession? Session { get; init; }

    /// <summary>Letters of the kit's framings and set-ups; none where no kit was named.</summary>
    public LetterKeys? Keys { get; init; }

    /// <summary>File names that frame numbers stand for.</summary>
    public FrameNumbers Numbers { get; init; } = FrameNumbers.Usual;
}
