namespace StudioKit.Field.Log;

/// <summary>The kinds of record that a log holds, each after the one it belongs to.</summary>
public enum LogRecordKind
{
    /// <summary>An outing.</summary>
    Session,

    /// <summary>An animal or plant of a session.</summary>
    Subject,

    /// <summary>A picture of a subject.</summary>
    Frame,

    /// <summary>Something measured on a subject.</summary>
    Measurement,
}
