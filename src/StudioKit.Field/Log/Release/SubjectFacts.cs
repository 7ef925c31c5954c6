namespace StudioKit.Field.Log.Release;

/// <summary>Names of what is exported as measurements though the log keeps it with the subject.</summary>
internal static class SubjectFacts
{
    public const string HoldStart = "hold start";
    public const string HoldEnd = "hold end";
    public const string HoldLimit = "hold limit";
    public const string Released = "released";
    public const string Sensitivity = "place made coarser";
}
