namespace StudioKit.Web.Results;

/// <summary>Everything that can be asked of the worker.</summary>
public static class EngineQuestions
{
    /// <summary>Reads a kit and plans it.</summary>
    public static EngineQuestion<PlanRequest, PlanAnswer> Plan { get; } = new("plan", ResultsJson.Default.PlanRequest, ResultsJson.Default.PlanAnswer, "plan");
}
