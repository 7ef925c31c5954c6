namespace StudioKit.Field.Log.Matching;

/// <summary>How it is known whom a picture shows.</summary>
public enum SubjectMatchKind
{
    /// <summary>Somebody said so.</summary>
    Named,

    /// <summary>It was logged before.</summary>
    LoggedBefore,

    /// <summary>Only this one was in hand.</summary>
    InHand,

    /// <summary>Several were in hand; this one was taken up last.</summary>
    LastOfSeveral,

    /// <summary>Not known: the file has no time.</summary>
    NoTime,

    /// <summary>Not known: no subject was in hand then.</summary>
    NobodyInHand,
}
