namespace StudioKit.Web.Engine.Telling;

/// <summary>A problem as one text.</summary>
internal static class ProblemText
{
    /// <summary>What is wrong, and then what would be accepted where that is known.</summary>
    public static string Of(string message, string? hint) => $"{message} {hint}".TrimEnd();
}
